const TAB = 9;
const FEED = 10;
const BLANK = 32;
const QUOTE = 34;

const FIGURE = /^\s*"?\s*[-+−]?(?:\d[\d.,' ]*|[.,]\d+)\s*"?\s*$/;

/** A row whose quotes pair. */
export interface QuotedRow {
  /** Index of the line feed that ends the row, or of the end of the text. */
  readonly end: number;
  /**
   * The row without blanks before its opening quotes, as RFC 4180 writes it; undefined if it is on one line and has
   * none, as nearly all are.
   */
  readonly text: string | undefined;
}

/**
 * Looks through the quotes of the row that begins at `start`. A quoted cell may hold the separator, doubled quotes and
 * line feeds. Undefined where the quotes do not pair, as inch marks and ditto marks do not: then they mean nothing.
 *
 * @param separator one character
 */
export function quotedRow(text: string, start: number, separator: string): QuotedRow | undefined {
  const between = separator.charCodeAt(0);
  const feed = text.indexOf("\n", start);
  const lineEnd = feed === -1 ? text.length : feed;
  let tidied = "";
  let from = start;
  for (let at = start; ; at++) {
    const cell = at;
    at = afterBlanks(text, at, between);
    if (text.charCodeAt(at) === QUOTE) {
      if (at > cell) {
        tidied += text.slice(from, cell);
        from = at;
      }
      const closing = closingQuote(text, at, lineEnd, separator);
      if (closing === undefined) return undefined;
      at = afterBlanks(text, closing + 1, between);
    } else {
      while (at < text.length && text.charCodeAt(at) !== between && text.charCodeAt(at) !== FEED) at++;
    }
    if (at >= text.length || text.charCodeAt(at) === FEED) {
      const isPlain = at === lineEnd && from === start;
      return { end: at, text: isPlain ? undefined : tidied + text.slice(from, at) };
    }
    if (text.charCodeAt(at) !== between) return undefined;
  }
}

function afterBlanks(text: string, start: number, between: number): number {
  let at = start;
  while (text.charCodeAt(at) === BLANK || (text.charCodeAt(at) === TAB && between !== TAB)) at++;
  return at;
}

/** The quote that closes the one at `opening`; undefined if what they enclose cannot be one cell. */
function closingQuote(text: string, opening: number, lineEnd: number, separator: string): number | undefined {
  let at = text.indexOf('"', opening + 1);
  while (at !== -1 && text.charCodeAt(at + 1) === QUOTE) at = text.indexOf('"', at + 2);
  if (at === -1) return undefined;
  if (at < lineEnd) return at;
  const lines = text.slice(opening + 1, at).split("\n");
  return lines.length > 1 && lines.some((line, index) => looksLikeRow(line, index > 0, separator))
    ? undefined
    : at;
}

/**
 * Whether a line within a quoted cell looks like a row of readings, which shows that the quote was never closed:
 * figures in two cells, or in the first of several if the line begins within the quotes.
 */
function looksLikeRow(line: string, isWhole: boolean, separator: string): boolean {
  const cells = line.split(separator);
  const figures = cells.filter((cell) => FIGURE.test(cell)).length;
  return figures >= 2 || (isWhole && cells.length > 1 && FIGURE.test(cells[0] ?? ""));
}
