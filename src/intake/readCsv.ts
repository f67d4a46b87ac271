import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Method, Reading } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { type ColumnTaken, columnsTaken } from "./columnsTaken.ts";
import { dataLineOf, readDataLines, type SlideData } from "./dataLines.ts";
import { decodeText } from "./decode.ts";
import { readRow } from "./readRow.ts";
import type { Refusal } from "./refusal.ts";
import { findTable } from "./table.ts";
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

/**
 * Reads a log of readings: a text, or the bytes of one in whatever encoding.
 *
 * Every row of data gives its readings or a refusal that names it. It fails where the source is no text, where the
 * columns or their units cannot be told, and where no row can be read. It never throws.
 */
export function readCsv(source: Uint8Array | string, options: CsvOptions = {}): Outcome<CsvReadings> {
  const text = decodeText(source);
  const table = text.ok ? findTable(text.value) : text;
  if (!table.ok) return table;
  const said = table.value.above.flatMap((row) => dataLineOf(row) ?? []);
  const understood = understand(table.value, said, options);
  if (!understood.ok) return understood;
  const how = understood.value;
  const lines = readDataLines(said, how.unlabelled, how.target, how.evidence);
  const rows = table.value.data.map((row) => readRow(row, how));
  const readings = rows.flatMap((row) => row.readings);
  const refused = rows.flatMap((row) => row.refused);
  if (readings.length === 0) return noReadings(table.value.headingRow.line, refused);
  return succeeded({
    readings,
    method: how.method,
    units: how.target,
    slideData: lines.data,
    refused: [...lines.refused, ...refused],
    columns: columnsTaken(table.value.headings, how),
  });
}

function noReadings(headingLine: number, refused: readonly Refusal[]): Outcome<never> {
  const [first, ...others] = refused;
  if (first === undefined) {
    return failed(
      `line ${headingLine}`,
      "there are no rows below the headings",
      "Add the readings, a row for each.",
    );
  }
  const more = others.length === 0 ? "" : ` (and ${others.length} more rows or cells)`;
  return failed(`line ${first.row}`, `no row can be read: ${first.reason}${more}`, first.cure);
}
