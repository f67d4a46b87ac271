import type { PlainObject } from "../inspection/plainData.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Method, Reading } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { readCell } from "./cell.ts";
import { type ColumnTaken, columnsTaken } from "./columnsTaken.ts";
import { dataLineOf, readDataLines, type SlideData } from "./dataLines.ts";
import { decodeText } from "./decode.ts";
import type { Unsettled } from "./question.ts";
import { readRows } from "./readRows.ts";
import { type Refusal, refusal } from "./refusal.ts";
import type { Row } from "./rows.ts";
import { findTable } from "./table.ts";
import type { Table } from "./tableParts.ts";
import { type CsvOptions, understand } from "./understanding.ts";

/** A log read: its readings in one unit, what it says of the slide, and what could not be read. */
export interface CsvReadings {
  /** In the order of the rows; a row of repeats gives one reading for each. */
  readonly readings: readonly Reading[];
  readonly method: Method;
  /** The unit of the readings and of the data; undefined where neither the log nor the caller tells it. */
  readonly units: Units | undefined;
  readonly slideData: SlideData;
  readonly refused: readonly Refusal[];
  readonly columns: readonly ColumnTaken[];
}

/** How far the reading of a log has come, and the readings since this was last told. */
export interface Progress {
  /** From 0 to 1. */
  readonly done: number;
  readonly readings: readonly Reading[];
}

/** A log read, but for its readings, which were told on the way. */
export type CsvRest = Omit<CsvReadings, "readings">;

/**
 * Reads a log of readings: a text, or the bytes of one in whatever encoding.
 *
 * Every row of data gives its readings or a refusal that names it. It fails where the source is no text, where the
 * columns or their units cannot be told, and where no row can be read; where an answer of the reader would cure that,
 * the failure says which (`asks`). It never throws.
 */
export function readCsv(
  source: Uint8Array | string,
  options: CsvOptions = {},
): Outcome<CsvReadings> | Unsettled {
  const steps = readingCsv(source, options);
  const readings: Reading[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value.ok ? succeeded({ readings, ...step.value.value }) : step.value;
    for (const reading of step.value.readings) readings.push(reading);
  }
}

/** The same, step by step, for logs so long that it must be told how far it has come. */
export function* readingCsv(
  source: Uint8Array | string,
  options: CsvOptions,
): Generator<Progress, Outcome<CsvRest> | Unsettled> {
  const text = decodeText(source);
  const found = text.ok ? findTable(text.value) : text;
  if (!found.ok) return found;
  const table = found.value;
  const said = table.above.flatMap((row) => dataLineOf(row) ?? []);
  // The text is gone through twice: to understand its columns, then to read them.
  const understanding = understand(table, said, options);
  let step = understanding.next();
  for (; step.done !== true; step = understanding.next()) {
    yield { done: step.value / table.text.length / 2, readings: [] };
  }
  if (!step.value.ok) return step.value;
  const how = step.value.value;
  const lines = readDataLines(said, how.unlabelled, how.target, how.evidence);
  const refused: Refusal[] = [];
  let count = 0;
  for (const stretch of readRows(table, how)) {
    count += stretch.readings.length;
    for (const each of stretch.refused) refused.push(each);
    yield { done: (1 + stretch.at / table.text.length) / 2, readings: stretch.readings };
  }
  if (count === 0 && !isWithoutReadings(refused, lines.data.survey)) return noReadings(table, refused);
  return succeeded({
    method: how.method,
    units: how.target,
    slideData: lines.data,
    refused: [...lines.refused, ...figuresAbove(table), ...refused].sort((a, b) => a.row - b.row),
    columns: columnsTaken(how),
  });
}

/** A log that tells of its survey and has no rows holds a survey without readings. */
function isWithoutReadings(refused: readonly Refusal[], survey: PlainObject): boolean {
  return refused.length === 0 && Object.keys(survey).length > 0;
}

/** Rows of nothing but figures above the headings, which cannot be readings there. */
function figuresAbove({ above }: Table): readonly Refusal[] {
  const fault = "it stands above the headings";
  return above.filter(hasOnlyFigures).map((row) => refusal(row, { fault, cure: "Move it below them." }));
}

function hasOnlyFigures({ cells }: Row): boolean {
  const kinds = cells.map((cell) => readCell(cell, "none").kind).filter((kind) => kind !== "empty");
  return kinds.length >= 2 && kinds.every((kind) => kind === "number");
}

function noReadings({ headingRow }: Table, refused: readonly Refusal[]): Outcome<never> | Unsettled {
  const [first, ...others] = refused;
  if (first === undefined) {
    return failed(
      `line ${headingRow?.line ?? 1}`,
      "there are no rows below the headings",
      "Add the readings, a row for each.",
    );
  }
  const more = others.length === 0 ? "" : ` (and ${others.length} more rows or cells)`;
  const failure = failed(`line ${first.row}`, `no row can be read: ${first.reason}${more}`, first.cure);
  return first.asks === undefined || failure.ok ? failure : { ...failure, asks: first.asks };
}
