import type { Column, ColumnName } from "../../editing/columns.ts";
import type { Row } from "../../editing/rows.ts";

/** How the table is looked at. The rows keep their order in the file. */
export interface Sorting {
  readonly column: ColumnName;
  readonly isFalling: boolean;
  /** The rows' keys as they were sorted: rows stay where they are while they are typed in, and new ones come last. */
  readonly keys: readonly number[];
}

/** What pressing a column's heading leads to: sorted, sorted the other way, in the order of reading again. */
export function sortedNext(sorting: Sorting | null, column: Column, rows: readonly Row[]): Sorting | null {
  if (sorting?.column === column.name && sorting.isFalling) return null;
  const isFalling = sorting?.column === column.name;
  const values = new Map(rows.map((row) => [row.key, figureIn(row, column)]));
  const keys = [...rows].sort((a, b) => compare(values.get(a.key), values.get(b.key), isFalling));
  return { column: column.name, isFalling, keys: keys.map(({ key }) => key) };
}

/** The rows in the order in which they are looked at. */
export function inView(rows: readonly Row[], sorting: Sorting | null): readonly Row[] {
  if (sorting === null) return rows;
  const places = new Map(sorting.keys.map((key, place) => [key, place]));
  const placeOf = ({ key }: Row): number => places.get(key) ?? Number.POSITIVE_INFINITY;
  return [...rows].sort((a, b) => (placeOf(a) === placeOf(b) ? 0 : placeOf(a) - placeOf(b)));
}

function figureIn({ cells }: Row, { name, read }: Column): number | string | undefined {
  const value = read(cells[name] ?? "");
  return value.ok ? value.value : undefined;
}

/** What cannot be read comes last, whichever way the rest is sorted. */
function compare(a: number | string | undefined, b: number | string | undefined, isFalling: boolean): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  const rising = typeof a === "number" && typeof b === "number" ? a - b : String(a).localeCompare(String(b));
  return isFalling ? -rising : rising;
}
