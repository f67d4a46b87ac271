/** A file name without extension that is valid on any system; `otherwise` if nothing of the text can be used. */
export function fileNameFor(text: string, otherwise: string): string {
  const plain = text.trim().replace(/[^\p{L}\p{N}]+/gu, "-");
  return plain.replace(/^-|-$/g, "").slice(0, 100) || otherwise;
}
