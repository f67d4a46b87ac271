/**
 * Downloads a text as a file.
 *
 * @param text whole, or in parts if it may exceed a browser's longest string
 */
export function download(
  name: string,
  text: string | readonly string[],
  type: "application/json" | "text/csv",
): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob(typeof text === "string" ? [text] : [...text], { type }));
  link.download = name;
  link.click();
  // The download reads the address after this returns.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** The decimal mark of the user's language, which spreadsheet programs expect in a CSV. */
export function decimalMark(): "." | "," {
  const parts = new Intl.NumberFormat(navigator.language).formatToParts(1.5);
  return parts.find(({ type }) => type === "decimal")?.value === "," ? "," : ".";
}
