import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { fromMillimetres, type Units } from "../../inspection/units.ts";
import { readCell } from "../../intake/cell.ts";
import { convertLength, plainUnit } from "../../intake/lengthUnit.ts";

/** What a figure is expected to count: a length in the slide's unit, a dial's divisions, or no unit at all. */
export type Counts = Units | "divisions" | "plain";

/** Nothing on a machine slide is longer than ten metres, in millimetres: what is, was mistyped. */
const LONGEST = 10_000;
/** A hundred turns of a dial of a hundred divisions; a million hours or runs. */
const MOST = { divisions: 10_000, plain: 1_000_000 } as const;

/** Reads a figure as it is typed: `0.21`, `0,21`, `3 1/2`; a length may have a unit of its own beside it, `8 thou`. */
export function readFigure(text: string, counts: Counts): Outcome<number> {
  const cell = readCell(text, "none");
  if (cell.kind === "empty") return failed("", "is empty", "Type a figure.");
  if (cell.kind === "fault") return failed("", cell.fault, cell.cure);
  if (cell.unit === undefined || cell.unit === counts) return withinReason(cell.value, counts);
  if (cell.unit === "divisions" || counts === "divisions" || counts === "plain") {
    return failed("", `is “${text}”, which has a unit that does not belong here`, "Type the figure alone.");
  }
  return withinReason(convertLength(cell.value, cell.unit, plainUnit(counts)), counts);
}

function withinReason(value: number, counts: Counts): Outcome<number> {
  const isLength = counts === "mm" || counts === "in";
  const most = isLength ? fromMillimetres(LONGEST, counts) : MOST[counts];
  if (Math.abs(value) <= most) return succeeded(value);
  return failed(
    "",
    "is too large",
    isLength ? "No slide is longer than 10 m." : `It can be ${most} at most.`,
  );
}
