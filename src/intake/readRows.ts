import { type Outcome, succeeded } from "../inspection/problem.ts";
import { carriesNothing, cutRows, type Row } from "./cutting/rows.ts";
import { halfPairer } from "./halves.ts";
import type { Unsettled } from "./question.ts";
import { type RowMemory, type RowsRead, readRow } from "./readRow.ts";
import { type Seen, SeenCells } from "./seenCells.ts";
import type { Table } from "./tableParts.ts";
import type { Understanding } from "./understanding.ts";

/** The rows of a log, and how they were understood. */
export interface LogRows extends RowsRead {
  readonly how: Understanding;
}

/**
 * Reads the rows of data as the first of them are understood. If later cells show another decimal mark or unit, reads
 * all rows again as all cells together are understood.
 *
 * @param columns the columns of figures, counted from 0
 * @param understood how the rows are to be read, from what their cells show
 * @returns yields, block by block, the share of the text that was read, from 0 to 1
 */
export function* readRows(
  table: Table,
  columns: readonly number[],
  understood: (seen: Seen) => Outcome<Understanding> | Unsettled,
): Generator<number, Outcome<LogRows> | Unsettled> {
  const seen = new SeenCells(columns);
  for (const row of table.sample) seen.add(row);
  for (;;) {
    const before = seen.found;
    const how = understood(seen);
    const read: RowsRead = { readings: [], refused: [] };
    const memory: RowMemory = { nextRun: runCounter(), halves: halfPairer() };
    for (const { rows, end } of cutRows(table.text, table.separator)) {
      for (const row of rows) {
        if (row.line <= table.headingsEnd || carriesNothing(row)) continue;
        seen.add(row);
        if (how.ok && !isHeadingsAgain(row, table)) readRow(row, how.value, memory, read);
      }
      yield end / table.text.length;
    }
    if (seen.found > before) continue;
    if (!how.ok) return how;
    for (const refusal of memory.halves.left()) read.refused.push(refusal);
    return succeeded({ ...read, how: how.value });
  }
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
