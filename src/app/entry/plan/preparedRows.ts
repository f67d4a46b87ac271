import { SAME_PLACE } from "../../../analysis/correct/samePlace.ts";
import type { Survey } from "../../../inspection/schema.ts";
import { toMillimetres, type Units } from "../../../inspection/units.ts";
import type { Plan } from "../../../intake/plan/measuringPlan.ts";
import { awaitsReading } from "../../../records/editorState.ts";
import { positionFigures } from "../../../report/plan/listedRounds.ts";
import { columnsOf } from "../../editing/columns.ts";
import { blankRow, exclusionReason, type Row } from "../../editing/rows.ts";

/**
 * Rows for the readings of the first so many rounds of a plan that are not among the rows yet, in the order in which they are to be taken, with
 * their positions filled in. A struck reading is to be taken again.
 */
export function preparedRows(
  plan: Plan,
  rounds: number,
  rows: readonly Row[],
  survey: Survey,
  units: Units,
): readonly Row[] {
  const present = positionsOf(rows, survey, units);
  const figures = positionFigures(plan);
  return plan.readings.flatMap(({ station, position, round }) => {
    if (round >= rounds) return [];
    const at = present.findIndex((each) => toMillimetres(Math.abs(each - position), units) <= SAME_PLACE);
    if (at !== -1) {
      present.splice(at, 1);
      return [];
    }
    return [{ ...blankRow(), cells: { position: figures[station] ?? "" } }];
  });
}

/** The rows without those that were prepared, as far as their readings are still to be taken. */
export function withoutPrepared(rows: readonly Row[], prepared: readonly Row[]): readonly Row[] {
  const left = prepared.map(({ cells }) => cells.position);
  return rows.filter((row) => {
    const at = awaitsReading(row) ? left.indexOf(row.cells.position) : -1;
    if (at === -1) return true;
    left.splice(at, 1);
    return false;
  });
}

function positionsOf(rows: readonly Row[], survey: Survey, units: Units): number[] {
  const column = columnsOf(survey, units).find(({ name }) => name === "position");
  return rows
    .filter((row) => exclusionReason(row) === null)
    .flatMap(({ cells }) => {
      const read = column?.read(cells.position ?? "");
      return read?.ok && typeof read.value === "number" ? [read.value] : [];
    });
}
