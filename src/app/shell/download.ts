/** Hands a text to the reader as a file. */
export function download(name: string, text: string, type: "application/json" | "text/csv"): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  // The download reads the address after this returns.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
