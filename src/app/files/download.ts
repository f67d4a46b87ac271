/**
 * Hands a text to the reader as a file.
 *
 * @param text whole, or in parts where it is longer than a browser's longest text
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
