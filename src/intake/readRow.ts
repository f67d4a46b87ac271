import type { Reading } from "../inspection/schema.ts";
import { readCell, shown } from "./cell.ts";
import type { Row } from "./cutting/rows.ts";
import { dataLineOf } from "./dataLines.ts";
import { type Direction, directionRead } from "./direction.ts";
import type { HalfPairer } from "./halves.ts";
import { columnsOf, type Layout, type ValueColumns } from "./layout.ts";
import { convertLength, type LengthUnit, plainUnit } from "./lengthUnit.ts";
import { type Marks, marksRead, withMarks } from "./marks.ts";
import { plainNumber } from "./numberText.ts";
import type { Fault } from "./question.ts";
import { type Refusal, refusal } from "./refusal.ts";
import { isTenths, TENTHS, type Understanding } from "./understanding.ts";

/** What rows gave. */
export interface RowsRead {
  readonly readings: Reading[];
  readonly refused: Refusal[];
}

/** What reading a row takes from the rows before it. */
export interface RowMemory {
  /** Counts the runs at a target in one direction, where no column does. */
  readonly nextRun: (target: number, direction: Direction) => number;
  readonly halves: HalfPairer;
}

type Value = number | Fault | "empty";

/**
 * Reads a row: its reading, or one for each repeat, and a refusal for each cell that gives none but should.
 *
 * @param into gets what the row gives
 */
export function readRow(row: Row, how: Understanding, memory: RowMemory, into: RowsRead): void {
  const fault = faultOf(row, how) ?? readingsOf(row, how, memory, into);
  if (fault !== undefined) into.refused.push(refusal(row, fault));
}

/** Why a row as a whole cannot be read. */
function faultOf(row: Row, how: Understanding): Fault | undefined {
  const columns = how.written.length;
  if (row.cells.length > columns && row.cells.slice(columns).some((cell) => cell !== "")) {
    return {
      fault: `there are more cells than the ${columns} columns`,
      cure: "Where commas are decimal, separate the columns with semicolons; put a note with commas in quotes.",
    };
  }
  if (how.needsEveryCell && row.cells.length < columns) {
    return {
      fault: `there are fewer cells than the ${columns} columns, and blanks do not show which are missing`,
      cure: "Put a dash where a cell is empty, or separate the columns with tabs or semicolons.",
    };
  }
  return dataLineOf(row) === undefined
    ? undefined
    : { fault: "it says something of the slide or survey", cure: "Move it above the headings." };
}

function readingsOf(row: Row, how: Understanding, memory: RowMemory, into: RowsRead): Fault | undefined {
  const way = wayOf(row, how.layout.ways);
  const at = way[0]?.at ?? 0;
  const place = valueIn(row, at, how);
  if (place === "empty") {
    return { fault: `"${nameOf(at, how)}" is empty`, cure: "Write the position on every row." };
  }
  if (typeof place !== "number") return place;
  const marks = marksRead(how.layout.marks, row.cells);
  if ("fault" in marks) return marks;
  let isEmpty = true;
  for (const columns of way) {
    const values =
      "half" in columns
        ? halfIn(row, columns, place, how, marks, memory)
        : valuesIn(row, columns, place, how, memory);
    if (values === "empty") continue;
    isEmpty = false;
    if (values === "waiting") continue;
    if ("fault" in values) into.refused.push(refusal(row, values));
    else into.readings.push("half" in columns ? values.reading : withMarks(values.reading, marks));
  }
  return isEmpty
    ? { fault: "it has a position but no reading", cure: "Write the reading, or take the row out." }
    : undefined;
}

/** The first way of giving readings that the row has anything in. */
function wayOf(row: Row, ways: Layout["ways"]): readonly ValueColumns[] {
  const [first, ...others] = ways;
  if (others.length === 0) return first;
  return ways.find((values) => values.some((value) => hasSomething(row, value))) ?? first;
}

function hasSomething(row: Row, value: ValueColumns): boolean {
  return columnsOf(value).some((column) => readCell(row.cells[column] ?? "", "none").kind !== "empty");
}

type Read = { readonly reading: Reading } | Fault | "empty";

/** What one repeat holds. A pair of which one half is missing is a fault; a repeat left out altogether is not. */
function valuesIn(
  row: Row,
  columns: Exclude<ValueColumns, { half: number }>,
  place: number,
  how: Understanding,
  memory: RowMemory,
): Read {
  if ("backlash" in columns) {
    const backlash = valueIn(row, columns.backlash, how);
    return typeof backlash === "number" ? { reading: { position: place, backlash } } : backlash;
  }
  if ("reading" in columns) return positioningIn(row, columns, place, how, memory);
  const advancing = valueIn(row, columns.advancing, how);
  const retracting = valueIn(row, columns.retracting, how);
  if (advancing === "empty" && retracting === "empty") return "empty";
  if (advancing === "empty" || retracting === "empty") {
    const missing = advancing === "empty" ? columns.advancing : columns.retracting;
    return {
      fault: `"${nameOf(missing, how)}" is empty beside its other half`,
      cure: "Write both readings of the pair, or neither.",
    };
  }
  if (typeof advancing !== "number") return advancing;
  if (typeof retracting !== "number") return retracting;
  return { reading: { position: place, advancing, retracting } };
}

/** The pair that the half in the row completes. */
function halfIn(
  row: Row,
  { half, direction: column }: Extract<ValueColumns, { half: number }>,
  position: number,
  how: Understanding,
  marks: Marks,
  { halves }: RowMemory,
): Read | "waiting" {
  const value = valueIn(row, half, how);
  if (typeof value !== "number") return value;
  const direction = directionIn(row, column, how);
  if (typeof direction !== "string") return direction;
  const pair = halves.take({ row, column: half, position, direction, value, marks });
  return pair === undefined ? "waiting" : { reading: pair };
}

function positioningIn(
  row: Row,
  columns: Extract<ValueColumns, { reading: number }>,
  target: number,
  how: Understanding,
  { nextRun }: RowMemory,
): Read {
  const reading = valueIn(row, columns.reading, how);
  if (typeof reading !== "number") return reading;
  const direction = directionIn(row, columns.direction, how);
  if (typeof direction !== "string") return direction;
  const run = columns.run === undefined ? undefined : runIn(row, columns.run, how);
  if (typeof run === "object") return run;
  const counted = run ?? columns.repeat ?? nextRun(target, direction);
  return { reading: { target, direction, reading, run: counted } };
}

function directionIn(row: Row, column: number | Direction, how: Understanding): Direction | Fault {
  if (typeof column === "string") return column;
  const cell = row.cells[column] ?? "";
  const direction = directionRead(cell);
  if (direction !== undefined) return direction;
  const what = cell === "" ? "is empty" : `is "${shown(cell)}", which is no direction`;
  return { fault: `"${nameOf(column, how)}" ${what}`, cure: "Write advancing or retracting." };
}

function runIn(row: Row, column: number, how: Understanding): number | Fault {
  const cell = readCell(row.cells[column] ?? "", how.evidence);
  const isCount =
    cell.kind === "number" && cell.unit === undefined && Number.isInteger(cell.value) && cell.value > 0;
  return isCount
    ? cell.value
    : { fault: `"${nameOf(column, how)}" is no count of runs`, cure: "Count the runs from 1." };
}

function valueIn(row: Row, column: number, how: Understanding): Value {
  const text = row.cells[column] ?? "";
  const ofColumn = how.units.get(column)?.unit;
  let value: number | Fault | undefined = plainNumber(text, how.evidence);
  if (value !== undefined) value = inTarget(value, ofColumn, ofColumn, how);
  else {
    const cell = readCell(text, how.evidence);
    if (cell.kind === "empty") return "empty";
    value = cell.kind === "fault" ? cell : inTarget(cell.value, cell.unit ?? ofColumn, ofColumn, how);
  }
  return typeof value === "number" ? value : faultIn(column, value, how);
}

function faultIn(column: number, fault: Fault, how: Understanding): Fault {
  return { ...fault, fault: `"${nameOf(column, how)}" ${fault.fault}` };
}

/** A figure as a length in the unit that all are brought to, or as divisions in a column of divisions. */
function inTarget(
  value: number,
  unit: LengthUnit | "divisions" | undefined,
  ofColumn: LengthUnit | "divisions" | undefined,
  { target }: Understanding,
): number | Fault {
  if (unit === "divisions" || ofColumn === "divisions") {
    return unit === ofColumn
      ? value
      : { fault: "is not in the unit of its column", cure: "Give all readings in one kind of unit." };
  }
  if (target === undefined) return value;
  if (unit === undefined) {
    return {
      fault: "has no unit, where others have different ones",
      cure: "Write its unit beside it.",
      asks: "columns",
    };
  }
  if (isTenths(unit) && target === "mm")
    return { fault: `is in tenths: ${TENTHS}`, cure: "Write it in µm, mm or thou." };
  return convertLength(value, unit, plainUnit(target));
}

function nameOf(column: number, how: Understanding): string {
  return shown(how.written[column] ?? "");
}
