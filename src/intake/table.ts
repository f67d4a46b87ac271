import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { readCell, shown } from "./cell.ts";
import { BLANK, BLANKS, type Separator } from "./cut.ts";
import { dataLineOf } from "./dataLines.ts";
import { columnUnit, type Heading, parseHeading } from "./heading.ts";
import { isHeadingRow } from "./layout.ts";
import { type Cursor, carriesNothing, firstRows, type Row } from "./rows.ts";

/** A log cut into its parts. Blank lines, comments and rules among them are left out. */
export interface Table {
  readonly text: string;
  readonly separator: Separator;
  /** Titles and data lines above the headings. */
  readonly above: readonly Row[];
  /** The row of headings; undefined where the log has none. */
  readonly headingRow: Row | undefined;
  /** The headings as written, a number for a column that has none. */
  readonly written: readonly string[];
  readonly headings: readonly Heading[];
  /** Where the rows of data begin. */
  readonly dataFrom: Cursor;
  /** The first rows of data. */
  readonly sample: readonly Row[];
  /** Whether the headings name what is needed. */
  readonly isHeaded: boolean;
}

const SEPARATORS: readonly Separator[] = [",", ";", "\t", "|", BLANKS, BLANK];

/** Headings stand this near to the beginning, and so many rows show what a column holds. */
const ROWS_LOOKED_AT = 1000;

/** A first line that spreadsheet programs write and read: `sep=;`. */
const STATED_SEPARATOR = /^"?sep=(\\t|.)[^\n]*(?=\n|$)/i;

type Found = ReturnType<typeof firstRows>[number];

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
    rows: firstRows(text, separator, ROWS_LOOKED_AT).filter(({ row }) => !carriesNothing(row)),
  }));
  const headed = cuts.flatMap(({ separator, rows }) => headedTable(text, separator, rows) ?? []);
  const best = mostBy(headed, plausibility);
  if (best !== undefined) return succeeded(best);
  const ofFigures = cuts.flatMap(({ separator, rows }) => tableOfFigures(text, separator, rows) ?? []);
  const fullest = mostBy(ofFigures, ({ sample }) => sample.filter(hasFigures).length);
  return fullest === undefined ? noHeadings(cuts.map(({ rows }) => rows)) : succeeded(fullest);
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

function headedTable(text: string, separator: Separator, rows: readonly Found[]): Table | undefined {
  const index = rows.findIndex(
    ({ row }) => isHeadingRow(row.cells.map(parseHeading)) && dataLineOf(row) === undefined,
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
  rows: readonly Found[],
  index: number,
  isHeaded: boolean,
): Table {
  const at = rows[index];
  const below = rows.slice(index + 1);
  const headings = at?.row.cells.map(parseHeading) ?? [];
  const table = {
    text,
    separator,
    above: rows.slice(0, index).map(({ row }) => row),
    headingRow: at?.row,
    written: at?.row.cells ?? [],
    headings,
    dataFrom: at?.next ?? { at: text.length, line: 1 },
    sample: below.map(({ row }) => row),
    isHeaded,
  };
  return withUnitsBelow(withBlankHeadings(table), below);
}

/** Takes in a row of nothing but units under the headings. */
function withUnitsBelow(table: Table, below: readonly Found[]): Table {
  const [first] = below;
  const cells = first?.row.cells ?? [];
  const units = cells.map((cell) => columnUnit(cell.toLowerCase().replace(/^[([]|[)\]]$/g, "")));
  const hasUnits = units.some((unit) => unit !== undefined);
  const onlyUnits = cells.every((cell, column) => cell === "" || units[column] !== undefined);
  if (first === undefined || !hasUnits || !onlyUnits) return table;
  const headings = table.headings.map((heading, column) => {
    const unit = units[column];
    return unit === undefined ? heading : { ...heading, unit };
  });
  return { ...table, headings, dataFrom: first.next, sample: table.sample.slice(1) };
}

/** A heading over several columns, as spreadsheets merge it: the columns beside it without one are its repeats. */
function withBlankHeadings(table: Table): Table {
  const headings = [...table.headings];
  for (const [column, heading] of table.headings.entries()) {
    const before = headings[column - 1];
    const isBlank = table.written[column] === "" && before?.role === "backlash" && heading.role === undefined;
    const cells = table.sample.map(({ cells }) => cells[column] ?? "").filter((cell) => cell !== "");
    const figures = cells.filter((cell) => readCell(cell, "none").kind !== "fault").length;
    if (isBlank && before && figures > 0 && figures * 2 > cells.length) headings[column] = before;
  }
  return { ...table, headings };
}

/** A table without headings that are known: what stands right above the figures is taken for them. */
function tableOfFigures(text: string, separator: Separator, rows: readonly Found[]): Table | undefined {
  const index = rows.findIndex(({ row }) => hasFigures(row));
  const first = rows[index]?.row;
  if (first === undefined) return undefined;
  const above = rows[index - 1]?.row;
  if (above !== undefined && above.cells.length === first.cells.length && looksLikeHeadings(above)) {
    return tableAt(text, separator, rows, index - 1, false);
  }
  const numbered = first.cells.map((_, column) => `${column + 1}`);
  return {
    text,
    separator,
    above: rows.slice(0, index).map(({ row }) => row),
    headingRow: undefined,
    written: numbered,
    headings: numbered.map((words) => ({ rank: 0, words })),
    dataFrom: rows[index - 1]?.next ?? { at: 0, line: 1 },
    sample: rows.slice(index).map(({ row }) => row),
    isHeaded: false,
  };
}

/** Two figures or more, as a row of readings has at least. */
function hasFigures({ cells }: Row): boolean {
  return cells.filter((cell) => cell !== "" && readCell(cell, "none").kind === "number").length >= 2;
}

function noHeadings(cuts: readonly (readonly Found[])[]): Outcome<never> {
  const wordy = cuts.flatMap((rows) => rows.map(({ row }) => row).filter(looksLikeHeadings));
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
