/** The decimal mark of the reader's language, which a spreadsheet program here expects, too. */
export function decimalMark(): "." | "," {
  const parts = new Intl.NumberFormat(navigator.language).formatToParts(1.5);
  return parts.find(({ type }) => type === "decimal")?.value === "," ? "," : ".";
}
