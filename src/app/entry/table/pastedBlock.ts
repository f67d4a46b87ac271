import { readCell } from "../../../intake/cell.ts";
import { firstRows } from "../../../intake/cutting/rows.ts";
import { decodeText } from "../../../intake/decode.ts";
import { markEvidence, parseNumber } from "../../../intake/numberText.ts";
import type { ColumnName } from "../../editing/columns.ts";
import { blankRow, type Row } from "../../editing/rows.ts";

/**
 * The cells of a block that was copied from a spreadsheet; null where it has headings, or is no block: a log then, to
 * be read as one. Decimal commas become points; what a block's other figures settle is written as they settle it.
 */
export function blockOf(text: string): readonly (readonly string[])[] | null {
  const decoded = decodeText(text);
  if (!decoded.ok) return null;
  const cells = firstRows(decoded.value, "\t", Number.POSITIVE_INFINITY)
    .map(({ cells }) => cells.slice(0, cells.findLastIndex((cell) => cell !== "") + 1))
    .filter((row) => row.length > 0);
  const hasFigure = cells[0]?.some((cell) => readCell(cell, "none").kind === "number") ?? false;
  const isAmbiguous = (cell: string): boolean => {
    const read = parseNumber(cell, "none");
    return "fault" in read && read.fault === "ambiguous";
  };
  if (!hasFigure && !cells[0]?.some(isAmbiguous)) return null;
  const evidence = markEvidence(cells.flat());
  return cells.map((row) =>
    row.map((cell) => {
      const settled = parseNumber(cell, evidence);
      if (isAmbiguous(cell) && "value" in settled) return String(settled.value);
      return /^[+-]?\d*,\d+$/.test(cell) && "value" in settled ? cell.replace(",", ".") : cell;
    }),
  );
}

/**
 * The rows with a block put over them, as a spreadsheet does: from one cell on to the right and down, with new rows at
 * the end as needed. Null where the block is wider than the columns that there are.
 *
 * @param shown the rows as they are looked at, which the block goes down along
 * @param at the row to begin with, among those shown; one past the last begins a new one
 */
export function withBlock(
  rows: readonly Row[],
  shown: readonly Row[],
  block: readonly (readonly string[])[],
  at: number,
  columns: readonly ColumnName[],
): readonly Row[] | null {
  if (block.some((cells) => cells.length > columns.length)) return null;
  const put = (row: Row, cells: readonly string[]): Row => {
    const pasted = cells.map((cell, index) => [columns[index], cell] as const);
    return { ...row, cells: { ...row.cells, ...Object.fromEntries(pasted) } };
  };
  const over = new Map(shown.slice(at, at + block.length).map((row, index) => [row.key, block[index] ?? []]));
  const changed = rows.map((row) => {
    const cells = over.get(row.key);
    return cells === undefined ? row : put(row, cells);
  });
  return [...changed, ...block.slice(over.size).map((cells) => put(blankRow(), cells))];
}
