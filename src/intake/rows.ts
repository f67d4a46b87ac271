import Papa from "papaparse";

/** A row of a log: where it begins, its text as written, and its cells. */
export interface Row {
  /** The line of the file that the row begins on, counted from 1. */
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** A quote character that no text holds: quotes then have no meaning. */
const NO_QUOTES = "\0";

/**
 * Cuts a text with line feeds into rows. A cell in quotes may hold the delimiter and line feeds. Where the quotes do
 * not pair up (inch marks, slips), each line is read by itself, so that none can swallow those after it.
 */
export function rowsOf(text: string, delimiter: string): readonly Row[] {
  const whole = parse(text, delimiter, '"', 1);
  if (whole !== undefined) return whole;
  return text.split("\n").flatMap((line, index) => {
    const row = parse(line, delimiter, '"', index + 1) ?? parse(line, delimiter, NO_QUOTES, index + 1);
    return row ?? [];
  });
}

/** The rows, or nothing where a quoted cell is not closed as it should be. */
function parse(text: string, delimiter: string, quoteChar: string, firstLine: number): Row[] | undefined {
  const rows: Row[] = [];
  let sound = true;
  let start = 0;
  let line = firstLine;
  Papa.parse<string[]>(text, {
    delimiter,
    quoteChar,
    newline: "\n",
    step: ({ data, errors, meta }, parser) => {
      if (errors.some(({ type }) => type === "Quotes")) {
        sound = false;
        parser.abort();
        return;
      }
      const written = text.slice(start, meta.cursor).replace(/\n$/, "");
      rows.push({ line, text: written, cells: data.map((cell) => cell.trim()) });
      line += 1 + (written.match(/\n/g)?.length ?? 0);
      start = meta.cursor;
    },
  });
  return sound ? rows : undefined;
}
