import type { Reading } from "../inspection/schema.ts";
import { halfPairer } from "./halves.ts";
import { columnsOf, type ValueColumns } from "./layout.ts";
import { convertLength, plainUnit } from "./lengthUnit.ts";
import { ROWS_AT_ONCE } from "./lookThrough.ts";
import { markColumns, marksRead, withMarks } from "./marks.ts";
import type { DecimalMark, MarkEvidence } from "./numberText.ts";
import { type PlainColumn, plainRows } from "./plainRow.ts";
import { type RowMemory, readRow } from "./readRow.ts";
import type { Refusal } from "./refusal.ts";
import { carriesNothing, goThrough, type Row } from "./rows.ts";
import type { Table } from "./tableParts.ts";
import type { Understanding } from "./understanding.ts";

/** What a stretch of rows came to. */
export interface RowRange {
  /** Where in the text it ends. */
  readonly at: number;
  readonly readings: readonly Reading[];
  readonly refused: readonly Refusal[];
}

/** Reads the rows of data, stretch by stretch. */
export function* readRows(table: Table, how: Understanding): Generator<RowRange, void> {
  const { text, separator } = table;
  const memory: RowMemory = { nextRun: runCounter(), halves: halfPairer() };
  let readings: Reading[] = [];
  let refused: Refusal[] = [];
  const takesPlain = plainReader(table, how, (reading) => readings.push(reading)) ?? (() => false);
  const take = (row: Row): void => {
    if (carriesNothing(row) || isHeadingsAgain(row, table)) return;
    const read = readRow(row, how, memory);
    readings.push(...read.readings);
    refused.push(...read.refused);
  };
  let cursor = table.dataFrom;
  while (cursor.at < text.length) {
    cursor = goThrough(text, cursor, separator, ROWS_AT_ONCE, { takesPlain, take });
    yield { at: cursor.at, readings, refused };
    readings = [];
    refused = [];
  }
  yield { at: text.length, readings, refused: memory.halves.left() };
}

/** Logs put together from several files carry their headings more than once. */
function isHeadingsAgain({ cells }: Row, { headingRow }: Table): boolean {
  return headingRow !== undefined && cells.every((cell, column) => cell === headingRow.cells[column]);
}

function runCounter(): RowMemory["nextRun"] {
  const runs = new Map<string, number>();
  return (target, direction) => {
    const place = `${target} ${direction}`;
    const run = (runs.get(place) ?? 0) + 1;
    runs.set(place, run);
    return run;
  };
}

/** What reads rows of plain figures at once, or nothing where that cannot be done. It agrees with `readRow`. */
function plainReader(
  { separator }: Table,
  how: Understanding,
  tell: (reading: Reading) => void,
): ((text: string, start: number, end: number) => boolean) | undefined {
  const [way] = how.layout.ways;
  const columns = way.flatMap(columnsIn);
  const isUnsettled =
    columns.some((column) => how.units.get(column)?.unit === undefined) && how.target !== undefined;
  const hasDirections = way.some((value) => "direction" in value);
  if (isUnsettled || hasDirections || how.needsEveryCell || how.evidence === "both") return undefined;
  const names = markColumns(how.layout.marks).toSorted((a, b) => a.column - b.column);
  const wanted = new Set(columns);
  const texts = new Set(names.map(({ column }) => column));
  const kinds = how.written.map((_, column): PlainColumn => {
    if (wanted.has(column)) return "figure";
    return texts.has(column) ? "text" : "skipped";
  });
  const rows = plainRows(kinds, separator, marksOf(how.evidence));
  const order = [...wanted].toSorted((a, b) => a - b);
  const figureAt = (column: number): (() => number) =>
    figureReader(rows.figures, order.indexOf(column), column, how);
  const composers = way.map((value) => composer(value, figureAt));
  return (text, start, end) => {
    if (!rows.read(text, start, end)) return false;
    const marks = marksRead(names, rows.texts);
    if ("fault" in marks) return false;
    for (const compose of composers) tell(withMarks(compose(), marks));
    return true;
  };
}

function marksOf(evidence: MarkEvidence): readonly DecimalMark[] {
  return evidence === "," ? [","] : ["."];
}

function columnsIn(value: ValueColumns): readonly number[] {
  return [value.at, ...columnsOf(value)];
}

function composer(value: ValueColumns, figureAt: (column: number) => () => number): () => Reading {
  const position = figureAt(value.at);
  if ("backlash" in value) {
    const backlash = figureAt(value.backlash);
    return () => ({ position: position(), backlash: backlash() });
  }
  if ("direction" in value) throw new Error("Readings with a direction are not read as plain rows.");
  const advancing = figureAt(value.advancing);
  const retracting = figureAt(value.retracting);
  return () => ({ position: position(), advancing: advancing(), retracting: retracting() });
}

/** Gives the figure of a slot, in the unit that lengths are brought to. */
function figureReader(figures: Float64Array, slot: number, column: number, how: Understanding): () => number {
  const unit = how.units.get(column)?.unit;
  const read = (): number => figures[slot] ?? 0;
  if (unit === undefined || unit === "divisions" || how.target === undefined) return read;
  const target = plainUnit(how.target);
  if (unit.base === target.base && unit.scale === target.scale) return read;
  return () => convertLength(read(), unit, target);
}
