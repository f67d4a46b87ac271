import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Method } from "../inspection/schema.ts";
import { shown } from "./cell.ts";
import { type ColumnSaid, headingsAsSaid } from "./columnSaid.ts";
import type { Heading } from "./heading.ts";
import { type Layout, layoutOf, numberColumns, placeColumns } from "./layout.ts";
import { asking, type Unsettled } from "./question.ts";
import { HEADINGS_NEEDED, headingsUnknown } from "./table.ts";
import type { Table } from "./tableParts.ts";

/** The columns that are read, with their headings as found or as said. */
export interface Columns {
  readonly layout: Layout;
  readonly headings: readonly Heading[];
}

/** Chooses the columns that are read, and refuses a table whose columns would be misread. */
export function chooseColumns(
  table: Table,
  method: Method | undefined,
  said: readonly ColumnSaid[],
): Outcome<Columns> | Unsettled {
  const where = table.headingRow === undefined ? "" : `line ${table.headingRow.line}`;
  if (said.length === 0 && !table.isHeaded) return unheaded(table, where);
  const headings = headingsAsSaid(table.headings, table.written, said);
  if (!headings.ok) return headings;
  const layout = layoutOf(headings.value, method);
  if ("unclear" in layout) {
    const cure =
      layout.asks === "method"
        ? "Say by which method they were taken, or give each pair one row with columns for advancing and retracting."
        : "Head the columns with position and backlash, or with position, advancing and retracting.";
    return asking(layout.asks, failed(where, layout.unclear, cure));
  }
  const unreadable = numberColumns(layout).find((column) =>
    hasUnreadableUnit(headings.value, layout, column),
  );
  if (unreadable !== undefined) {
    const heading = shown(table.written[unreadable] ?? "");
    return asking(
      "columns",
      failed(where, `the unit in "${heading}" cannot be read`, "Use mm, µm, in or thou."),
    );
  }
  if (commasCutNumbers(table, layout)) {
    return failed(
      where,
      "commas seem to separate the columns and to be the decimal mark as well",
      "Separate the columns with semicolons, or write the numbers with a decimal point.",
    );
  }
  return succeeded({ layout, headings: headings.value });
}

function unheaded({ headingRow }: Table, where: string): Outcome<never> | Unsettled {
  const what = headingRow === undefined ? "there is no row of headings" : headingsUnknown(headingRow.cells);
  return asking("columns", failed(where, what, HEADINGS_NEEDED));
}

/** A unit that is none of length, or a position counted in divisions. */
function hasUnreadableUnit(headings: readonly Heading[], layout: Layout, column: number): boolean {
  const unit = headings[column]?.unit;
  if (unit === "divisions") return placeColumns(layout).includes(column);
  return unit !== undefined && "unknown" in unit;
}

/**
 * Whether decimal commas were cut as if they separated columns: no number has a decimal point, and a row has cells
 * to spare or a bare 0 followed by digits in a column that holds no numbers.
 */
function commasCutNumbers({ separator, headings, sample }: Table, layout: Layout): boolean {
  if (separator !== ",") return false;
  const columns = new Set(numberColumns(layout));
  const rows = sample.map((row) => row.cells);
  const hasPoint = rows.some((cells) =>
    cells.some((cell, column) => columns.has(column) && cell.includes(".")),
  );
  const cutOff = (cell: string, column: number, cells: readonly string[]): boolean =>
    /^\d+$/.test(cell) && (column >= headings.length || (!columns.has(column) && cells[column - 1] === "0"));
  return !hasPoint && rows.some((cells) => cells.some(cutOff));
}
