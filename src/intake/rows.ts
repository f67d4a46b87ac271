import { cutRow, endOfLine, type Separator } from "./cut.ts";

/** A row of a log: where it begins, its text as written, and its cells. */
export interface Row {
  /** The line of the file that the row begins on, counted from 1. */
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** A row, and the place behind it. */
export interface PlacedRow {
  readonly row: Row;
  readonly next: Cursor;
}

/** How far a text was gone through. */
export interface Cursor {
  /** Where the next row begins. */
  readonly at: number;
  /** The line it begins on, counted from 1. */
  readonly line: number;
}

/** What goes through the rows of a text. */
export interface Visitor {
  /** Is shown every row that stands on one line, and says whether it was taken as it is. */
  readonly takesPlain: (text: string, start: number, end: number) => boolean;
  /** Is given the others, cut into cells. */
  readonly take: (row: Row) => void;
}

/** Goes on through at most so many rows, and says how far it came. */
export function goThrough(
  text: string,
  from: Cursor,
  separator: Separator,
  most: number,
  { takesPlain, take }: Visitor,
): Cursor {
  let { at, line } = from;
  for (let count = 0; count < most && at < text.length; count++) {
    const end = endOfLine(text, at);
    if (takesPlain(text, at, end)) {
      at = end + 1;
      line++;
      continue;
    }
    const { row, next } = rowAt(text, { at, line }, separator);
    take(row);
    ({ at, line } = next);
  }
  return { at, line };
}

/** The first rows of a text, each with the place behind it. */
export function firstRows(text: string, separator: Separator, most: number): readonly PlacedRow[] {
  const rows: PlacedRow[] = [];
  let cursor: Cursor = { at: 0, line: 1 };
  while (rows.length < most && cursor.at < text.length) {
    const found = rowAt(text, cursor, separator);
    rows.push(found);
    cursor = found.next;
  }
  return rows;
}

function rowAt(text: string, { at, line }: Cursor, separator: Separator): PlacedRow {
  const { cells, end } = cutRow(text, at, separator);
  const written = text.slice(at, end);
  const lines = 1 + (written.includes("\n") ? written.split("\n").length - 1 : 0);
  return { row: { line, text: written, cells }, next: { at: end + 1, line: line + lines } };
}

/** Blank rows, comments and rules (`---|---`) carry nothing. A `#` alone in its cell heads a column of numbers. */
export function carriesNothing({ text, cells }: Row): boolean {
  const isComment = text.trimStart().startsWith("#") && cells[0] !== "#";
  return isComment || cells.every((cell) => /^[-–—=_:+*]*$/.test(cell));
}
