import { readingInUnits, slideLengths, surveyLengths } from "../../../inspection/metric.ts";
import { type PlainObject, valueAt } from "../../../inspection/plainData.ts";
import type { Inspection } from "../../../inspection/schema.ts";
import { fromMillimetres, toMillimetres, type Units } from "../../../inspection/units.ts";
import type { CsvReadings } from "../../../intake/readCsv.ts";
import { type UnitDoubt, unitDoubts } from "../../../intake/unitDoubts.ts";
import { withWaitingReadings } from "../../editing/importReadings.ts";
import type { ImportMode, InspectionEditor } from "../../editing/inspectionEditor.ts";
import { notify } from "../../ui/notice.ts";

/** Whether the user must answer a question before a log can be imported. */
export function needsAnswers(csv: CsvReadings, editor: InspectionEditor): boolean {
  const isUnclear = csv.units === undefined || csv.refused.length > 0;
  return isUnclear || editor.rows.length > 0 || unitDoubtsOf(csv, editor.inspection).length > 0;
}

/** Imports a log and says so. Before the slide is described, its readings wait. */
export function importLog(
  from: EventTarget,
  name: string,
  csv: CsvReadings,
  editor: InspectionEditor,
  mode: ImportMode,
): void {
  if (editor.inspection === null) {
    editor.setPendingInput(withWaitingReadings(editor.state.draft, csv));
    return;
  }
  const undo = editor.importReadings(inSlideUnits(csv, editor.inspection.slide.units), mode);
  const counted = csv.readings.length === 1 ? "One reading was" : `${csv.readings.length} readings were`;
  notify(from, {
    tone: "done",
    text: `${counted} imported from ${name}.`,
    action: { label: "Undo", act: undo },
  });
}

/** A log with its lengths in the slide's units; unchanged if either has no units. */
export function inSlideUnits(csv: CsvReadings, slideUnits: Units | undefined): CsvReadings {
  const { units: from } = csv;
  if (from === undefined || slideUnits === undefined || from === slideUnits) return csv;
  const { slide, survey, ...others } = csv.slideData;
  return {
    ...csv,
    units: slideUnits,
    readings: csv.readings.map((reading) => readingInUnits(reading, csv.method, from, slideUnits)),
    slideData: {
      ...others,
      slide: slideLengths(slide, from, slideUnits),
      survey: surveyLengths(survey, from, slideUnits),
    },
  };
}

/** The doubts about a log's units: its figures make no sense on the slide, or on the one that the log describes. */
export function unitDoubtsOf(csv: CsvReadings, inspection: Inspection | null): readonly UnitDoubt[] {
  const { units } = csv;
  if (units === undefined) return [];
  if (inspection === null) return unitDoubts(csv, travelIn(csv.slideData.slide));
  const { travel, units: slideUnits } = inspection.slide;
  const inLog = (length: number): number => fromMillimetres(toMillimetres(length, slideUnits), units);
  return unitDoubts(csv, { from: inLog(travel.from), to: inLog(travel.to) });
}

function travelIn(slide: PlainObject): { readonly from: number; readonly to: number } | undefined {
  const from = valueAt(slide, "travel.from");
  const to = valueAt(slide, "travel.to");
  return typeof from === "number" && typeof to === "number" && from < to ? { from, to } : undefined;
}
