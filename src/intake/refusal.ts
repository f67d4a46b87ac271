import { shown } from "./cell.ts";
import type { Row } from "./rows.ts";

/** A row, or a cell of one, that could not be read. */
export interface Refusal {
  /** The line of the file, counted from 1. */
  readonly row: number;
  readonly text: string;
  readonly reason: string;
  readonly cure: string;
}

export function refusal(row: Row, reason: string, cure: string): Refusal {
  return { row: row.line, text: shown(row.text), reason, cure };
}
