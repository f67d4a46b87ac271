const FIGURE = /^\s*"?\s*[-+−]?(?:\d[\d.,' ]*|[.,]\d+)\s*"?\s*$/;

/** A row whose quotes pair. */
export interface QuotedRow {
  /** Index of the line feed that ends the row, or of the end of the text. */
  readonly end: number;
  /** The row without blanks before its opening quotes, as RFC 4180 writes it. */
  readonly text: string;
}

/**
 * Looks through the quotes of the row that begins at `start`. A quoted cell may hold the separator, doubled quotes and
 * line feeds. Undefined where the quotes do not pair, as inch marks and ditto marks do not: then they mean nothing.
 *
 * @param separator one character
 */
export function quotedRow(text: string, start: number, separator: string): QuotedRow | undefined {
  let tidied = "";
  let from = start;
  for (let at = start; ; at++) {
    const cell = at;
    at = afterBlanks(text, at, separator);
    if (text[at] === '"') {
      if (at > cell) {
        tidied += text.slice(from, cell);
        from = at;
      }
      const closing = closingQuote(text, at, separator);
      if (closing === undefined) return undefined;
      at = afterBlanks(text, closing + 1, separator);
    } else {
      while (at < text.length && text[at] !== separator && text[at] !== "\n") at++;
    }
    if (at >= text.length || text[at] === "\n") return { end: at, text: tidied + text.slice(from, at) };
    if (text[at] !== separator) return undefined;
  }
}

function afterBlanks(text: string, start: number, separator: string): number {
  let at = start;
  while (text[at] === " " || (text[at] === "\t" && separator !== "\t")) at++;
  return at;
}

/** The quote that closes the one at `opening`; undefined if what they enclose cannot be one cell. */
function closingQuote(text: string, opening: number, separator: string): number | undefined {
  let at = text.indexOf('"', opening + 1);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  if (at === -1) return undefined;
  const enclosed = text.slice(opening + 1, at);
  if (!enclosed.includes("\n")) return at;
  return enclosed.split("\n").some((line, index) => looksLikeRow(line, index > 0, separator))
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
