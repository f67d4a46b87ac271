import type { DecimalMark } from "./numberText.ts";

/** What a column of a plain row holds: a figure, a text that is wanted, or what is not read. */
export type PlainColumn = "figure" | "text" | "skipped";

/** Reads rows of plain figures quickly; what it cannot take whole it leaves to the way that can read anything. */
export interface PlainRows {
  /**
   * Reads the row between two places of a text: whether every column is there and every figure is plain digits with at
   * most one decimal mark, in single quotes or none. Anything else, such as a unit, is left alone.
   */
  readonly read: (text: string, start: number, end: number) => boolean;
  /** The figures of the row that was read last, in the order of their columns. */
  readonly figures: Float64Array;
  /** Its texts, in the order of their columns. */
  readonly texts: readonly string[];
  /** The decimal marks met since the beginning that cannot be marks of thousands. */
  readonly marksMet: () => ReadonlySet<DecimalMark>;
}

const QUOTE = 34;
const COMMENT = 35;
const PLUS = 43;
const COMMA = 44;
const MINUS = 45;
const POINT = 46;
const ZERO = 48;
const NINE = 57;
const BLANK = 32;
/** More digits than this may not be exact as one whole number. */
const MOST_DIGITS = 15;
const POWERS = Float64Array.from({ length: MOST_DIGITS + 1 }, (_, power) => 10 ** power);
/** Beginnings of lines that say something of the slide, which are not for here: inspection, slide, survey. */
const MAY_BE_DATA_LINE = /^["\sis]/i;

/**
 * @param separator one character
 * @param marks the marks that may stand before decimals
 */
export function plainRows(
  columns: readonly PlainColumn[],
  separator: string,
  marks: readonly DecimalMark[],
): PlainRows {
  const between = separator.charCodeAt(0);
  const takesPoint = marks.includes(".");
  const takesComma = marks.includes(",") && between !== COMMA;
  const figures = new Float64Array(columns.filter((column) => column === "figure").length);
  const texts: string[] = columns.filter((column) => column === "text").map(() => "");
  const beginsWithText = columns[0] !== "figure";
  let metPoint = false;
  let metComma = false;
  let figure = 0;

  /** Reads a figure into `figure`; gives the place behind its cell, or -1. */
  const readFigure = (text: string, start: number, end: number): number => {
    let at = start;
    while (at < end && text.charCodeAt(at) === BLANK) at++;
    const quoted = text.charCodeAt(at) === QUOTE;
    if (quoted) at++;
    const sign = text.charCodeAt(at);
    if (sign === MINUS || sign === PLUS) at++;
    let whole = 0;
    let digits = 0;
    let mark = 0;
    let markedAt = 0;
    const first = at;
    for (; at < end; at++) {
      const code = text.charCodeAt(at);
      if (code >= ZERO && code <= NINE) {
        whole = whole * 10 + (code - ZERO);
        digits++;
      } else if (
        mark === 0 &&
        ((code === POINT && takesPoint) ||
          (code === COMMA && (takesComma || (quoted && marks.includes(",")))))
      ) {
        mark = code;
        markedAt = digits;
      } else break;
    }
    if (digits === 0 || digits > MOST_DIGITS) return -1;
    const decimals = mark === 0 ? 0 : digits - markedAt;
    if (mark !== 0 && !mayBeThousands(markedAt, decimals, text.charCodeAt(first))) {
      if (mark === POINT) metPoint = true;
      else metComma = true;
    }
    const size = whole / (POWERS[decimals] ?? 1);
    figure = sign === MINUS ? -size : size;
    if (quoted && text.charCodeAt(at++) !== QUOTE) return -1;
    while (at < end && text.charCodeAt(at) === BLANK) at++;
    return at === end || text.charCodeAt(at) === between ? at : -1;
  };

  /** The place behind a cell of text, or -1 where its quotes need more care. */
  const endOfText = (text: string, start: number, end: number): number => {
    if (text.charCodeAt(start) !== QUOTE) {
      let at = start;
      while (at < end && text.charCodeAt(at) !== between) at++;
      return text.charCodeAt(start) === BLANK && text.slice(start, at).trimStart().startsWith('"') ? -1 : at;
    }
    let at = start + 1;
    while (at < end && text.charCodeAt(at) !== QUOTE) at++;
    const after = at + 1;
    return at < end && (after === end || text.charCodeAt(after) === between) ? after : -1;
  };

  const read = (text: string, start: number, end: number): boolean => {
    if (beginsWithText && (text.charCodeAt(start) === COMMENT || MAY_BE_DATA_LINE.test(text[start] ?? ""))) {
      return false;
    }
    let at = start;
    let nextFigure = 0;
    let nextText = 0;
    for (let column = 0; column < columns.length; column++) {
      const kind = columns[column];
      const cell = at;
      at = kind === "figure" ? readFigure(text, at, end) : endOfText(text, at, end);
      if (at === -1) return false;
      if (kind === "figure") figures[nextFigure++] = figure;
      if (kind === "text") texts[nextText++] = textBetween(text, cell, at);
      if (at === end) return column === columns.length - 1;
      at++;
    }
    return false;
  };

  const marksMet = (): ReadonlySet<DecimalMark> => {
    const met: DecimalMark[] = [...(metPoint ? ["." as const] : []), ...(metComma ? ["," as const] : [])];
    return new Set(met);
  };
  return { read, figures, texts, marksMet };
}

/** One to three digits, the first not 0, and three behind the mark. */
function mayBeThousands(before: number, after: number, first: number): boolean {
  return after === 3 && before >= 1 && before <= 3 && first !== ZERO;
}

function textBetween(text: string, start: number, end: number): string {
  const isQuoted = text.charCodeAt(start) === QUOTE;
  return (isQuoted ? text.slice(start + 1, end - 1) : text.slice(start, end)).trim();
}
