import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { fromMillimetres, type Units } from "../inspection/units.ts";
import { type Cell, readCell } from "./cell.ts";
import { convertLength, type LengthUnit, lengthUnit, plainUnit } from "./lengthUnit.ts";

/** What a figure is expected to count: a length in the slide's unit, a dial's divisions, or no unit at all. */
export type Counts = Units | "divisions" | "plain";

/** Nothing on a machine slide is longer than ten metres, in millimetres: what is, was mistyped. */
const LONGEST = 10_000;
/** A hundred turns of a dial of a hundred divisions; a million hours or runs. */
const MOST = { divisions: 10_000, plain: 1_000_000 } as const;

const TENTHS = lengthUnit("tenths");

const LENGTH = "Type it in digits, such as 0.25 or 12 thou.";
const COUNT = "Type the figure alone, in digits.";

/**
 * Reads a figure as a machinist writes it: `0.21`, `0,21`, `.012`, `3 1/2`, `3-1/2"`, `12 thou`, `5 tenths`.
 *
 * @param counts what the figure is brought to; lengths may have a unit of their own beside them
 * @param shown the unit that a bare number is in, where that is not the plain one: an indicator in thousandths of an
 * inch on a slide kept in inches. A tenth is a tenth of a thousandth of an inch; where millimetres are shown it is
 * refused, as it would be taken for a tenth of a millimetre.
 */
export function readTypedFigure(text: string, counts: Counts, shown?: LengthUnit): Outcome<number> {
  const cell = readCell(text, "none");
  if (cell.kind === "empty") return failed("", "is empty", "Type a figure.");
  if (counts !== "mm" && counts !== "in") return countRead(text, cell, counts);
  if (cell.kind === "fault") return failed("", cell.fault, cell.in === "number" ? LENGTH : cell.cure);
  const bare = shown ?? plainUnit(counts);
  if (cell.unit === "divisions") {
    return failed("", `is "${text.trim()}", which is no length`, `Type it in ${bare.name}.`);
  }
  if (cell.unit === TENTHS && bare.base === "mm") {
    return failed(
      "",
      `is "${text.trim()}", and a tenth is a tenth of a thousandth of an inch`,
      `Among millimetres it may mean something else: type it in ${bare.name}, or in thou.`,
    );
  }
  return withinReason(convertLength(cell.value, cell.unit ?? bare, plainUnit(counts)), counts);
}

/**
 * Reads several figures with spaces, semicolons or line ends between them. A unit goes with the figure before it, a
 * fraction with the whole number before it: `12 thou  11 thou`, `3 1/2  3-1/2`.
 */
export function readTypedFigures(text: string, counts: Counts): Outcome<readonly number[]> {
  const values: number[] = [];
  for (const part of figuresIn(text)) {
    const read = readTypedFigure(part, counts);
    if (!read.ok) return read;
    values.push(read.value);
  }
  return values.length === 0 ? failed("", "is empty", "Type one figure or more.") : succeeded(values);
}

function figuresIn(text: string): readonly string[] {
  const figures: string[] = [];
  for (const word of text.split(/[\s;]+/).filter((piece) => piece !== "")) {
    const last = figures.at(-1);
    const isUnit = !/[\d¼½¾⅛⅜⅝⅞]/.test(word);
    const isFraction = /^(?:\d+\/\d+|[¼½¾⅛⅜⅝⅞])/.test(word) && /^[+-]?\d+$/.test(last ?? "");
    if (last !== undefined && (isUnit || isFraction)) figures[figures.length - 1] = `${last} ${word}`;
    else figures.push(word);
  }
  return figures;
}

/** What counts anything but a length takes no unit of length, nor one that is not known. */
function countRead(
  text: string,
  cell: Exclude<Cell, { readonly kind: "empty" }>,
  counts: Exclude<Counts, Units>,
): Outcome<number> {
  if (cell.kind === "number" && (cell.unit === undefined || cell.unit === counts))
    return withinReason(cell.value, counts);
  if (cell.kind === "number" || cell.in === "unit")
    return failed("", `is "${text.trim()}", which has a unit that does not belong here`, COUNT);
  return failed("", cell.fault, cell.in === "number" ? COUNT : cell.cure);
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
