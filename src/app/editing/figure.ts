import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import { readCell } from "../../intake/cell.ts";
import { convertLength, plainUnit } from "../../intake/lengthUnit.ts";

/** What a figure is expected to count: a length in the slide's unit, a dial's divisions, or no unit at all. */
export type Counts = Units | "divisions" | "plain";

/** Reads a figure as it is typed: `0.21`, `0,21`, `3 1/2`; a length may have a unit of its own beside it, `8 thou`. */
export function readFigure(text: string, counts: Counts): Outcome<number> {
  const cell = readCell(text, "none");
  if (cell.kind === "empty") return failed("", "is empty", "Type a figure.");
  if (cell.kind === "fault") return failed("", cell.fault, cell.cure);
  if (cell.unit === undefined || cell.unit === counts) return succeeded(cell.value);
  if (cell.unit === "divisions" || counts === "divisions" || counts === "plain") {
    return failed("", `is “${text}”, which has a unit that does not belong here`, "Type the figure alone.");
  }
  return succeeded(convertLength(cell.value, cell.unit, plainUnit(counts)));
}
