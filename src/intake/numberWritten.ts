import type { DecimalMark } from "./numberText.ts";

/** What separates the cells where numbers have the given decimal mark, as spreadsheets expect it. */
export function separatorFor(mark: DecimalMark): string {
  return mark === "," ? ";" : ",";
}

/** A number with every digit that it takes to read the same number back. */
export function numberWritten(value: number, mark: DecimalMark): string {
  const text = Object.is(value, -0) ? "-0" : String(value);
  if (mark === ".") return text;
  // Three digits behind a comma could be thousands; one more digit says that they are not.
  return text.replace(/^(-?[1-9]\d{0,2}\.\d{3})(?=e|$)/, "$10").replace(".", ",");
}
