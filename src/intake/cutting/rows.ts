import Papa from "papaparse";
import { quotedRow } from "./quotedRow.ts";

/** What separates the cells of a row: one character, or blanks. */
export type Separator = string;

/** Columns set out with blanks; one blank alone may stand within a cell. */
export const BLANKS: Separator = "  ";
/** Columns set out with one blank or more. */
export const BLANK: Separator = " ";

/** Whether an empty cell cannot be seen between the separators: then every row must have all its cells. */
export function isBlank(separator: Separator): boolean {
  return separator === BLANKS || separator === BLANK;
}

/** A row of a log. */
export interface Row {
  /** The line of the file that the row begins on, counted from 1. */
  readonly line: number;
  /** As written. */
  readonly text: string;
  /** Without quotes around them and blanks at their ends. */
  readonly cells: readonly string[];
}

/** Some rows that follow each other. */
export interface RowBlock {
  readonly rows: readonly Row[];
  /** Index in the text of what follows the rows. */
  readonly end: number;
}

/** About so many characters are cut at once; fewer if only the first rows are wanted. */
const BLOCK_SIZE = 50_000;
const FIRST_BLOCK_SIZE = 20_000;

/** Lines that are cut in the same way. */
interface Lines {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Whether quotes enclose cells. */
  readonly isQuoted: boolean;
  /** Whether the lines are one row, of which a cell holds line feeds. */
  readonly isOneRow: boolean;
}

/**
 * Cuts a text into rows and cells, block by block.
 *
 * PapaParse cuts them. Rows whose quotes do not pair are cut with quoting off, so that no quote can swallow the rows
 * after it.
 *
 * @param text with line feeds at the ends of its lines
 */
export function* cutRows(text: string, separator: Separator, size = BLOCK_SIZE): Generator<RowBlock, void> {
  const whole = text.endsWith("\n") ? text.slice(0, -1) : text;
  let line = 1;
  for (let at = 0; at < whole.length; ) {
    const lines = nextLines(whole, at, separator, size);
    const cut = Papa.parse<string[]>(
      `${isBlank(separator) ? withTabs(lines.text, separator) : lines.text}\n`,
      {
        delimiter: isBlank(separator) ? "\t" : separator,
        newline: "\n",
        fastMode: !lines.isQuoted,
      },
    ).data;
    // What follows the last line feed is no row.
    cut.pop();
    const written = new WrittenLines(whole.slice(lines.start, lines.end), lines.isOneRow);
    const first = line;
    yield {
      rows: cut.map((cells, index) => new CutRow(first + index, cells, written, index)),
      end: lines.end,
    };
    line += lines.isOneRow ? written.count : cut.length;
    at = lines.end + 1;
  }
}

/** The first rows of a text, at most `most`. */
export function firstRows(text: string, separator: Separator, most: number): readonly Row[] {
  const found: Row[] = [];
  for (const { rows } of cutRows(text, separator, FIRST_BLOCK_SIZE)) {
    for (const row of rows) found.push(row);
    if (found.length >= most) break;
  }
  return found.length > most ? found.slice(0, most) : found;
}

const RULE = /^[-–—=_:+*]*$/;

/** Whether a row is blank, a comment or a rule (`---|---`). A `#` alone in its cell heads a column of numbers. */
export function carriesNothing(row: Row): boolean {
  const [first = ""] = row.cells;
  if (first.startsWith("#") && first !== "#" && row.text.trimStart().startsWith("#")) return true;
  return RULE.test(first) && row.cells.every((cell) => RULE.test(cell));
}

class CutRow implements Row {
  readonly line: number;
  readonly cells: readonly string[];
  readonly #written: WrittenLines;
  readonly #index: number;

  constructor(line: number, cells: string[], written: WrittenLines, index: number) {
    for (let column = 0; column < cells.length; column++) cells[column] = (cells[column] ?? "").trim();
    this.line = line;
    this.cells = cells;
    this.#written = written;
    this.#index = index;
  }

  get text(): string {
    return this.#written.textOf(this.#index);
  }
}

/** The text of rows, split only if it is asked for: few rows need theirs. */
class WrittenLines {
  readonly #text: string;
  readonly #isOneRow: boolean;
  #lines: readonly string[] | undefined;

  constructor(text: string, isOneRow: boolean) {
    this.#text = text;
    this.#isOneRow = isOneRow;
  }

  get count(): number {
    this.#lines ??= this.#text.split("\n");
    return this.#lines.length;
  }

  textOf(index: number): string {
    if (this.#isOneRow) return this.#text;
    this.#lines ??= this.#text.split("\n");
    return this.#lines[index] ?? "";
  }
}

/** The lines from `start` on that can be cut together. */
function nextLines(text: string, start: number, separator: Separator, size: number): Lines {
  const limit = endOfLine(text, start + size);
  const within = text.slice(start, limit);
  const upTo = (end: number, isQuoted: boolean): Lines => ({
    start,
    end,
    text: end === limit ? within : text.slice(start, end),
    isQuoted,
    isOneRow: false,
  });
  if (isBlank(separator)) return upTo(limit, false);
  let isQuoted: boolean | undefined;
  for (let at = start; ; ) {
    const quote = within.indexOf('"', at - start);
    if (quote === -1) return upTo(limit, isQuoted ?? false);
    const line = within.lastIndexOf("\n", quote) + 1 + start;
    const row = quotedRow(text, line, separator);
    const end = row?.end ?? endOfLine(text, line);
    const apart = row?.text;
    const isOther = isQuoted !== undefined && isQuoted !== (row !== undefined);
    if (line > start && (apart !== undefined || isOther)) return upTo(line - 1, isQuoted ?? false);
    if (apart !== undefined) return { start, end, text: apart, isQuoted: true, isOneRow: true };
    if (end >= limit) return upTo(end, row !== undefined);
    isQuoted = row !== undefined;
    at = end + 1;
  }
}

function endOfLine(text: string, start: number): number {
  const feed = text.indexOf("\n", start);
  return feed === -1 ? text.length : feed;
}

/** Lines set out with blanks, with tabs between their cells. */
function withTabs(lines: string, separator: Separator): string {
  const between = separator === BLANK ? /\s+/g : /\s{2,}|\t/g;
  return lines
    .split("\n")
    .map((line) => line.trim().replace(between, "\t"))
    .join("\n");
}
