import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { readCell, shown } from "./cell.ts";
import { BLANK, BLANKS, carriesNothing, firstRows, type Row, type Separator } from "./cutting/rows.ts";
import { dataLineOf } from "./dataLines.ts";
import { parseHeading } from "./heading.ts";
import { withRowsBelow } from "./headingRows.ts";
import { isHeadingRow } from "./layout.ts";
import type { Table } from "./tableParts.ts";

const SEPARATORS: readonly Separator[] = [",", ";", "\t", "|", BLANKS, BLANK];

/** Headings stand this near to the beginning, and so many rows show what a column holds. */
const ROWS_LOOKED_AT = 1000;

/** A first line that spreadsheet programs write and read: `sep=;`. */
const STATED_SEPARATOR = /^"?sep=(\\t|[^"\n])[^\n]*(?=\n|$)/i;

/**
 * Finds the row of headings, and with it what separates the columns: only the right separator cuts the headings so
 * that they can be told. Where no row names what is needed, finds the rows of figures, whose columns have then to be
 * named by the reader.
 */
export function findTable(source: string): Outcome<Table> {
  const [line = "", stated] = STATED_SEPARATOR.exec(source) ?? [];
  const text = line === "" ? source : `${" ".repeat(line.length)}${source.slice(line.length)}`;
  const separators = stated === undefined ? SEPARATORS : [stated === "\\t" ? "\t" : stated];
  const cuts = separators.map((separator) => ({
    separator,
    rows: firstRows(text, separator, ROWS_LOOKED_AT).filter((row) => !carriesNothing(row)),
  }));
  const headed = cuts.flatMap(({ separator, rows }) => headedTable(text, separator, rows) ?? []);
  const best = mostBy(headed, plausibility);
  if (best !== undefined) return succeeded(best);
  const ofFigures = cuts.flatMap(({ separator, rows }) => tableOfFigures(text, separator, rows) ?? []);
  const fullest = mostBy(ofFigures, ({ sample }) => sample.filter(hasFigures).length);
  // Words of a sentence are no columns.
  const columns = cuts.filter(({ separator }) => separator !== BLANK);
  return fullest === undefined ? noHeadings(columns.map(({ rows }) => rows)) : succeeded(fullest);
}

/** How many headings are known, where the rows below hold figures; where they do not, they are cut wrongly. */
function plausibility({ headings, sample }: Table): number {
  const known = headings.filter(({ role }) => role !== undefined).length;
  return sample.filter(hasFigures).length * 2 > sample.length ? known * 100 : known;
}

/** The first of those with the most. */
function mostBy<Item>(items: readonly Item[], count: (item: Item) => number): Item | undefined {
  const [first, ...others] = items;
  if (first === undefined) return undefined;
  return others.reduce((best, item) => (count(item) > count(best) ? item : best), first);
}

function headedTable(text: string, separator: Separator, rows: readonly Row[]): Table | undefined {
  const index = rows.findIndex(
    (row) => isHeadingRow(row.cells.map(parseHeading)) && dataLineOf(row) === undefined,
  );
  if (index === -1) return undefined;
  const table = tableAt(text, separator, rows, index, true);
  return separator !== BLANK || isEven(table) ? table : undefined;
}

/** Whether most rows have as many cells as there are headings: words of a title are no headings. */
function isEven({ headings, sample }: Table): boolean {
  const even = sample.filter(({ cells }) => cells.length === headings.length).length;
  return even > 0 && even * 2 > sample.length;
}

/** The table whose headings are the row of that index, or which begins with it where it is a row of figures. */
function tableAt(
  text: string,
  separator: Separator,
  rows: readonly Row[],
  index: number,
  isHeaded: boolean,
): Table {
  const headingRow = rows[index];
  const written = headingRow?.cells ?? [];
  const table = {
    text,
    separator,
    above: rows.slice(0, index),
    headingRow,
    written,
    headings: written.map(parseHeading),
    headingsEnd: headingRow?.line ?? 0,
    sample: rows.slice(index + 1),
    isHeaded,
  };
  return withRowsBelow(table);
}

/** A table without headings that are known: what stands right above the figures is taken for them. */
function tableOfFigures(text: string, separator: Separator, rows: readonly Row[]): Table | undefined {
  const index = rows.findIndex(hasFigures);
  const first = rows[index];
  if (first === undefined) return undefined;
  const above = rows[index - 1];
  if (above !== undefined && above.cells.length === first.cells.length && looksLikeHeadings(above)) {
    return tableAt(text, separator, rows, index - 1, false);
  }
  const numbered = first.cells.map((_, column) => `${column + 1}`);
  return {
    text,
    separator,
    above: rows.slice(0, index),
    headingRow: undefined,
    written: numbered,
    headings: numbered.map((words) => ({ rank: 0, words })),
    headingsEnd: above?.line ?? 0,
    sample: rows.slice(index),
    isHeaded: false,
  };
}

/** Two figures or more, as a row of readings has at least. */
function hasFigures({ cells }: Row): boolean {
  return cells.filter((cell) => cell !== "" && readCell(cell, "none").kind === "number").length >= 2;
}

function noHeadings(cuts: readonly (readonly Row[])[]): Outcome<never> {
  const wordy = cuts.flatMap((rows) => rows.filter(looksLikeHeadings));
  const row = mostBy(
    wordy,
    ({ cells }) => cells.filter((cell) => parseHeading(cell).role !== undefined).length,
  );
  if (row === undefined) return failed("", "there is no row of headings", HEADINGS_NEEDED);
  return failed(`line ${row.line}`, headingsUnknown(row.cells), HEADINGS_NEEDED);
}

export const HEADINGS_NEEDED =
  "Head the columns with position and backlash, or with position, advancing and retracting (notes and times may have columns too).";

/** Tells which columns there are, where none of them is what is needed. */
export function headingsUnknown(cells: readonly string[]): string {
  const found = cells.filter((cell) => cell !== "").map((cell) => `"${shown(cell)}"`);
  return `no row of headings names what is needed; the columns found are ${found.join(", ")}`;
}

function looksLikeHeadings({ cells }: Row): boolean {
  return cells.filter((cell) => /\p{L}/u.test(cell)).length >= 2;
}
