/** The text with every figure kept on one line with its unit. */
export function unitsKept(text: string): string {
  return text.replace(/(\d) (?=(?:mm|in|°C|h)\b)/g, "$1\u00a0").replaceAll("± ", "±\u00a0");
}
