import { numberTextOf, unitBeside } from "./cell.ts";
import { isBlank } from "./cut.ts";
import type { LengthUnit } from "./lengthUnit.ts";
import { type DecimalMark, type MarkEvidence, marksIn } from "./numberText.ts";
import { plainRows } from "./plainRow.ts";
import { carriesNothing, goThrough, type Visitor } from "./rows.ts";
import type { Table } from "./tableParts.ts";

/** What the columns of figures show when all of their cells are looked at together. */
export interface Seen {
  readonly evidence: MarkEvidence;
  /** The units written in the cells of each column. */
  readonly units: ReadonlyMap<number, ReadonlySet<LengthUnit | "divisions">>;
}

/** So many rows are gone through at once, before it is told how far it came. */
export const ROWS_AT_ONCE = 20_000;

/** Looks at every cell of the columns given; tells after every stretch of rows where in the text it is. */
export function* lookThrough(table: Table, columns: readonly number[]): Generator<number, Seen> {
  const { text, separator, written } = table;
  const wanted = new Set(columns);
  const marks = new Set<DecimalMark>();
  const units = new Map(columns.map((column) => [column, new Set<LengthUnit | "divisions">()]));
  const plain = plainRows(
    written.map((_, column) => (wanted.has(column) ? "figure" : "skipped")),
    separator,
    [".", ","],
  );
  const visitor: Visitor = {
    takesPlain: isBlank(separator) ? () => false : plain.read,
    take: (row) => {
      if (carriesNothing(row)) return;
      for (const column of columns) {
        const cell = row.cells[column] ?? "";
        for (const mark of marksIn([numberTextOf(cell)])) marks.add(mark);
        const unit = unitBeside(cell);
        if (unit !== undefined) units.get(column)?.add(unit);
      }
    },
  };
  let cursor = table.dataFrom;
  while (cursor.at < text.length) {
    cursor = goThrough(text, cursor, separator, ROWS_AT_ONCE, visitor);
    yield cursor.at;
  }
  const all = new Set([...marks, ...plain.marksMet()]);
  const [only] = all;
  return { evidence: all.size > 1 ? "both" : (only ?? "none"), units };
}
