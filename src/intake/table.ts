import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { columnUnit, type Heading, parseHeading } from "./heading.ts";
import { isHeadingRow } from "./layout.ts";
import { type Row, rowsOf } from "./rows.ts";

/** A log cut into its parts, with blank lines, comments and rules left out. */
export interface Table {
  /** Titles and data lines above the headings. */
  readonly above: readonly Row[];
  readonly headingRow: Row;
  readonly headings: readonly Heading[];
  readonly delimiter: string;
  readonly data: readonly Row[];
}

const DELIMITERS = [",", ";", "\t", "|"];

/** A first line that spreadsheet programs write and read: `sep=;`. */
const STATED_DELIMITER = /^"?sep=(.)[^\n]*\n/i;

/**
 * Finds the row of headings, and with it what separates the columns: only the right delimiter cuts the headings so
 * that they can be told.
 */
export function findTable(text: string): Outcome<Table> {
  const stated = STATED_DELIMITER.exec(text);
  const body = stated ? text.replace(STATED_DELIMITER, "\n") : text;
  const delimiters = stated?.[1] === undefined ? DELIMITERS : [stated[1]];
  const cuts = delimiters.map((delimiter) => rowsOf(body, delimiter).filter(carriesData));
  const tables = delimiters.flatMap((delimiter, index) => tableIn(cuts[index] ?? [], delimiter) ?? []);
  const [first, ...others] = tables;
  if (first === undefined) return noHeadings(cuts);
  return succeeded(others.reduce((best, table) => (known(table) > known(best) ? table : best), first));
}

/** Blank rows, comments and rules (`---|---`) carry none. A `#` alone in its cell heads a column of numbers. */
function carriesData({ text, cells }: Row): boolean {
  const comment = text.trimStart().startsWith("#") && cells[0] !== "#";
  return !comment && !cells.every((cell) => /^[-–—=_:+*]*$/.test(cell));
}

function tableIn(rows: readonly Row[], delimiter: string): Table | undefined {
  for (const [index, headingRow] of rows.entries()) {
    const headings = headingRow.cells.map(parseHeading);
    if (!isHeadingRow(headings)) continue;
    const table = {
      above: rows.slice(0, index),
      headingRow,
      headings,
      delimiter,
      data: rows.slice(index + 1),
    };
    return withUnitsBelow(table);
  }
  return undefined;
}

/** Takes in a row of nothing but units under the headings. */
function withUnitsBelow(table: Table): Table {
  const [first, ...data] = table.data;
  const units = first?.cells.map((cell) => columnUnit(cell.toLowerCase().replace(/^[([]|[)\]]$/g, "")));
  const onlyUnits = first?.cells.every((cell, column) => cell === "" || units?.[column] !== undefined);
  if (!units || !onlyUnits) return table;
  const headings = table.headings.map((heading, column) => {
    const unit = units[column];
    return unit === undefined ? heading : { ...heading, unit };
  });
  return { ...table, headings, data };
}

function known({ headings }: Table): number {
  return headings.filter(({ role }) => role !== undefined).length;
}

function noHeadings(cuts: readonly (readonly Row[])[]): Outcome<never> {
  const wordy = cuts.flatMap((rows) => rows.filter(looksLikeHeadings));
  const [first, ...others] = wordy;
  const needed =
    "Head the columns with position and backlash, or with position, advancing and retracting (notes and times may have columns too).";
  if (first === undefined) return failed("", "there is no row of headings", needed);
  const row = others.reduce((best, other) => (rolesIn(other) > rolesIn(best) ? other : best), first);
  const found = row.cells.filter((cell) => cell !== "").map((cell) => `"${cell}"`);
  return failed(
    `line ${row.line}`,
    `no row of headings names what is needed; the columns found are ${found.join(", ")}`,
    needed,
  );
}

function looksLikeHeadings({ cells }: Row): boolean {
  return cells.filter((cell) => /\p{L}/u.test(cell)).length >= 2;
}

function rolesIn({ cells }: Row): number {
  return cells.filter((cell) => parseHeading(cell).role !== undefined).length;
}
