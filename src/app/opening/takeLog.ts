import type { CsvReadings } from "../../intake/readCsv.ts";
import type { Desk, HowToTake } from "../editing/desk.ts";
import { takeIntoDraft } from "../editing/taking.ts";
import { notify } from "../shell/notice.ts";
import { doubtsOf, inSlideUnits } from "./readLog.ts";

/** Whether the reader has to be asked something before a log can be taken in. */
export function asks(csv: CsvReadings, desk: Desk): boolean {
  const isUnclear = csv.units === undefined || csv.refused.length > 0;
  return isUnclear || desk.rows.length > 0 || doubtsOf(csv, desk.inspection).length > 0;
}

/** Takes a log in and says so; before the slide is described, its readings wait for that. */
export function takeLog(from: EventTarget, name: string, csv: CsvReadings, desk: Desk, how: HowToTake): void {
  if (desk.inspection === null) {
    desk.draftAs(takeIntoDraft(desk.work.draft, csv));
    return;
  }
  const undo = desk.take(inSlideUnits(csv, desk.inspection.slide.units), how);
  const counted = csv.readings.length === 1 ? "One reading was" : `${csv.readings.length} readings were`;
  notify(from, {
    tone: "done",
    text: `${counted} taken from ${name}.`,
    action: { label: "Undo", act: undo },
  });
}
