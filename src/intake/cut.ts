/** What separates the cells of a row: one character, or blanks. */
export type Separator = string;

/** Columns set out with blanks; one blank alone may stand within a cell. */
export const BLANKS: Separator = "  ";
/** Columns set out with one blank or more. */
export const BLANK: Separator = " ";

/** Whether a cell left empty cannot be told from none: then every row must have all its cells. */
export function isBlank(separator: Separator): boolean {
  return separator === BLANKS || separator === BLANK;
}

export interface Cut {
  /** As written, without quotes around them and blanks at their ends. */
  readonly cells: readonly string[];
  /** Where the row ends: at its line feed, or at the end of the text. */
  readonly end: number;
}

const FIGURE = /^\s*"?\s*[-+−]?(?:\d[\d.,' ]*|[.,]\d+)\s*"?\s*$/;

/**
 * Cuts the row that begins at a place of a text. A cell in quotes may hold the separator, quotes written twice, and
 * line feeds. Where the quotes do not pair up (inch marks, slips), the line is read as if they had no meaning, so
 * that none can swallow the lines after it.
 */
export function cutRow(text: string, start: number, separator: Separator): Cut {
  const end = endOfLine(text, start);
  const line = text.slice(start, end);
  if (isBlank(separator)) return { cells: line.trim().split(separator === BLANK ? /\s+/ : /\s{2,}|\t/), end };
  const quoted = line.includes('"') ? cutQuoted(text, start, separator) : undefined;
  return quoted ?? { cells: line.split(separator).map((cell) => cell.trim()), end };
}

export function endOfLine(text: string, start: number): number {
  const feed = text.indexOf("\n", start);
  return feed === -1 ? text.length : feed;
}

function cutQuoted(text: string, start: number, separator: Separator): Cut | undefined {
  const cells: string[] = [];
  for (let at = start; ; at++) {
    at = afterBlanks(text, at, separator);
    if (text[at] === '"') {
      const closing = closingQuote(text, at, separator);
      if (closing === undefined) return undefined;
      cells.push(
        text
          .slice(at + 1, closing)
          .replaceAll('""', '"')
          .trim(),
      );
      at = afterBlanks(text, closing + 1, separator);
    } else {
      const end = endOfPlainCell(text, at, separator);
      cells.push(text.slice(at, end).trim());
      at = end;
    }
    if (at >= text.length || text[at] === "\n") return { cells, end: at };
    if (text[at] !== separator) return undefined;
  }
}

function afterBlanks(text: string, start: number, separator: Separator): number {
  let at = start;
  while (text[at] === " " || (text[at] === "\t" && separator !== "\t")) at++;
  return at;
}

function endOfPlainCell(text: string, start: number, separator: Separator): number {
  let at = start;
  while (at < text.length && text[at] !== separator && text[at] !== "\n") at++;
  return at;
}

/** The quote that closes the one at the given place; none where what it encloses can be no cell. */
function closingQuote(text: string, opening: number, separator: Separator): number | undefined {
  let at = text.indexOf('"', opening + 1);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  if (at === -1) return undefined;
  const lines = text.slice(opening + 1, at).split("\n");
  return lines.length > 1 && lines.some((line, index) => looksLikeRow(line, index > 0, separator))
    ? undefined
    : at;
}

/**
 * Whether a line of a cell over several lines looks like a row of readings, which shows that the quote before it was
 * never closed: figures in two cells, or in the first of several where the line begins within the cell.
 */
function looksLikeRow(line: string, isWhole: boolean, separator: Separator): boolean {
  const cells = line.split(separator);
  const figures = cells.filter((cell) => FIGURE.test(cell)).length;
  return figures >= 2 || (isWhole && cells.length > 1 && FIGURE.test(cells[0] ?? ""));
}
