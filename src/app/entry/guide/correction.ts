import type { ColumnName } from "../../editing/columns.ts";
import type { Row } from "../../editing/rows.ts";
import type { Asked } from "./askedFigures.ts";

/** A figure that was taken, and is being corrected. */
export interface Correction {
  readonly key: number;
  readonly column: ColumnName;
  /** What stood there, for Escape. */
  readonly original: string;
}

/** To the first figure of a reading, or to a column of it. */
export function correctionOf(row: Row, asked: readonly Asked[], column?: ColumnName): Correction {
  const name = column ?? asked[0]?.column ?? "backlash";
  return { key: row.key, column: name, original: row.cells[name] ?? "" };
}

/** To the figure after, of the same reading; null where that was the last. */
export function figureAfter(correction: Correction, row: Row, asked: readonly Asked[]): Correction | null {
  const at = asked.findIndex(({ column }) => column === correction.column);
  const next = at === -1 ? undefined : asked[at + 1];
  return next === undefined ? null : correctionOf(row, asked, next.column);
}

/** The row before the one being corrected, or after it; before a new reading stands the last row. */
export function rowBeside(
  rows: readonly Row[],
  correction: Correction | null,
  way: "before" | "after",
): Row | null {
  const at = correction === null ? rows.length : rows.findIndex(({ key }) => key === correction.key);
  return rows[at + (way === "before" ? -1 : 1)] ?? null;
}
