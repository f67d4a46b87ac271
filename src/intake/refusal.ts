import { shown } from "./cell.ts";
import type { Row } from "./cutting/rows.ts";
import type { Asks, Fault } from "./question.ts";

/** A row, or a cell of one, that could not be read. */
export interface Refusal {
  /** The line of the file, counted from 1. */
  readonly row: number;
  readonly text: string;
  readonly reason: string;
  readonly cure: string;
  /** What the reader could be asked, for it to be read. */
  readonly asks?: Asks;
}

export function refusal(row: Row, { fault, cure, asks }: Fault): Refusal {
  return { row: row.line, text: shown(row.text), reason: fault, cure, ...(asks && { asks }) };
}
