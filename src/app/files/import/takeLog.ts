import type { CsvReadings } from "../../../intake/readCsv.ts";
import { withWaitingReadings } from "../../editing/importReadings.ts";
import type { ImportMode, InspectionEditor } from "../../editing/inspectionEditor.ts";
import { notify } from "../../ui/notice.ts";
import { inSlideUnits, unitDoubtsOf } from "./readLog.ts";

/** Whether the reader has to be asked something before a log can be taken in. */
export function needsAnswers(csv: CsvReadings, editor: InspectionEditor): boolean {
  const isUnclear = csv.units === undefined || csv.refused.length > 0;
  return isUnclear || editor.rows.length > 0 || unitDoubtsOf(csv, editor.inspection).length > 0;
}

/** Takes a log in and says so; before the slide is described, its readings wait for that. */
export function importLog(
  from: EventTarget,
  name: string,
  csv: CsvReadings,
  editor: InspectionEditor,
  how: ImportMode,
): void {
  if (editor.inspection === null) {
    editor.setPendingInput(withWaitingReadings(editor.state.draft, csv));
    return;
  }
  const undo = editor.importReadings(inSlideUnits(csv, editor.inspection.slide.units), how);
  const counted = csv.readings.length === 1 ? "One reading was" : `${csv.readings.length} readings were`;
  notify(from, {
    tone: "done",
    text: `${counted} taken from ${name}.`,
    action: { label: "Undo", act: undo },
  });
}
