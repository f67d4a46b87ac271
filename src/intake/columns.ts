import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { shown } from "./cell.ts";
import { type Layout, layoutOf, numberColumns } from "./layout.ts";
import type { Table } from "./table.ts";

/**
 * Chooses the columns that are read, and refuses a table whose columns would be misread.
 *
 * @param singleReadings whether only single readings, not pairs, fit the method
 */
export function chooseColumns(table: Table, singleReadings: boolean): Outcome<Layout> {
  const where = `line ${table.headingRow.line}`;
  const layout = layoutOf(table.headings, singleReadings);
  if ("unclear" in layout) {
    return failed(
      where,
      layout.unclear,
      "Head the columns with position and backlash, or with position, advancing and retracting.",
    );
  }
  const unreadable = numberColumns(layout).find((column) => hasUnreadableUnit(table, layout, column));
  if (unreadable !== undefined) {
    const heading = shown(table.headingRow.cells[unreadable] ?? "");
    return failed(where, `the unit in "${heading}" cannot be read`, "Use mm, µm, in or thou.");
  }
  if (commasCutNumbers(table, layout)) {
    return failed(
      where,
      "commas seem to separate the columns and to be the decimal mark as well",
      "Separate the columns with semicolons, or write the numbers with a decimal point.",
    );
  }
  return succeeded(layout);
}

/** A unit that is none of length, or a position counted in divisions. */
function hasUnreadableUnit({ headings }: Table, layout: Layout, column: number): boolean {
  const unit = headings[column]?.unit;
  if (unit === "divisions") return column === layout.position;
  return unit !== undefined && "unknown" in unit;
}

/**
 * Whether decimal commas were cut as if they separated columns: no number has a decimal point, and a row has cells
 * to spare or a bare 0 followed by digits in a column that holds no numbers.
 */
function commasCutNumbers({ delimiter, headings, data }: Table, layout: Layout): boolean {
  if (delimiter !== ",") return false;
  const columns = new Set(numberColumns(layout));
  const hasPoint = data.some(({ cells }) =>
    cells.some((cell, column) => columns.has(column) && cell.includes(".")),
  );
  const cutOff = (cell: string, column: number, cells: readonly string[]): boolean =>
    /^\d+$/.test(cell) && (column >= headings.length || (!columns.has(column) && cells[column - 1] === "0"));
  return !hasPoint && data.some(({ cells }) => cells.some(cutOff));
}
