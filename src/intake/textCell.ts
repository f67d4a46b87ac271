/** A cell left blank, or marked as such by a dash or `n/a`. */
const EMPTY = /^(?:[-–—]*|n\/?a)$/i;

/** What a spreadsheet takes for the beginning of a formula, in half and in full width. */
const FORMULA = /^[=+\-@＝＋－＠]/;

/** What would not come back from a cell or a line as it went in: controls, halves of characters, separators. */
const UNSAFE = /[\p{Cc}\u2028\u2029\uFEFF\uD800-\uDFFF]/u;

/** Whether a cell holds nothing. */
export function isEmpty(cell: string): boolean {
  return EMPTY.test(cell.trim());
}

/**
 * A text as it is written into a cell. One that a spreadsheet could take for a formula, or that would not be read
 * back as it was, is put into quotation marks with escapes as in JSON: `"=1+2"`, `"first line\nsecond line"`.
 *
 * @param isText whether the text, written plainly, would be read as a text at all
 */
export function textWritten(text: string, isText: (plain: string) => boolean): string {
  const isSafe = !FORMULA.test(text) && !UNSAFE.test(text) && text.trim() === text;
  return isSafe && isText(text) && textRead(text, isText) === text ? text : inJson(text);
}

/** The text that a cell holds, out of its quotation marks where `textWritten` would have put it into them. */
export function textRead(cell: string, isText: (plain: string) => boolean): string {
  if (!cell.startsWith('"') || !cell.endsWith('"') || cell.length < 2) return cell;
  try {
    const text: unknown = JSON.parse(cell);
    return typeof text === "string" && textWritten(text, isText) === cell ? text : cell;
  } catch {
    return cell;
  }
}

/** JSON in one line, with every character escaped that does not survive in a text file as it is. */
export function inJson(value: unknown): string {
  return JSON.stringify(value).replace(
    /[\u007f-\u009f\u2028\u2029\uFEFF]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/** A cell as CSV writes it: in quotes where it holds the separator, a quote or blanks at an end. */
export function csvCell(text: string, separator: string): string {
  const isBare = !text.includes('"') && !text.includes(separator) && !/^\s|\s$|[\r\n]/.test(text);
  return isBare ? text : `"${text.replaceAll('"', '""')}"`;
}
