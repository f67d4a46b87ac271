/** A name that a file can have on any system, from a text that may be anything; without its ending. */
export function fileNameFor(text: string, otherwise: string): string {
  const plain = text.trim().replace(/[^\p{L}\p{N}]+/gu, "-");
  return plain.replace(/^-|-$/g, "").slice(0, 100) || otherwise;
}
