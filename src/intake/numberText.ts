/** What stands between the whole and the fraction of a number: 0.21 or 0,21. */
export type DecimalMark = "." | ",";

/** What a log's numbers show of its decimal mark: one, both, or nothing beyond doubt. */
export type MarkEvidence = DecimalMark | "both" | "none";

export type ParsedNumber = { readonly value: number } | { readonly fault: "not a number" | "ambiguous" };

const NUMBER = /^([+-]?)([\d.,][\d., ']*)(e[+-]?\d+)?$/i;
/** A binary fraction of an inch, alone or after whole inches: 1/2, 3 1/2, 3-1/2. */
const FRACTION = /^([+-]?)(?:(\d+)[ -]+)?(\d+)\/(2|4|8|16|32|64|128)$/;
const SPACED_GROUPS = /^[1-9]\d{0,2}([ '])\d{3}(?:\1\d{3})*(?:[.,]\d*)?$/;
const GROUPS_AND_DECIMALS = /^[1-9]\d{0,2}([.,])\d{3}(?:\1\d{3})*(?!\1)([.,])\d*$/;
const GROUPS_ONLY = /^[1-9]\d{0,2}([.,])\d{3}(?:\1\d{3})+$/;
const ONE_MARK = /^(?:\d+([.,])\d*|([.,])\d+)$/;
/** One mark with three digits after it and one to three before: thousands set off, or thousandths. */
const GROUP_OR_DECIMALS = /^[1-9]\d{0,2}([.,])\d{3}$/;

const POINT = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)$/;
/** Plain digits whose decimal mark, if any, cannot be taken for another. Most cells of a long log hold such. */
const PLAIN: Readonly<Record<MarkEvidence, RegExp>> = {
  ".": POINT,
  none: POINT,
  ",": /^[+-]?(?:\d+(?:,\d+)?|,\d+)$/,
  both: /^[+-]?\d+$/,
};

/** Whether a number is in plain digits, such as `0.21`, with a mark that the evidence settles. */
export function isPlainNumber(text: string, evidence: MarkEvidence): boolean {
  return PLAIN[evidence].test(text);
}

/** The number in plain digits such as `0.21`; undefined if `parseNumber` has to look at it more closely. */
export function plainNumber(text: string, evidence: MarkEvidence): number | undefined {
  if (!isPlainNumber(text, evidence)) return undefined;
  return Number(evidence === "," ? text.replace(",", ".") : text);
}

/**
 * Reads a number as people and spreadsheets write it: with a decimal point or comma, thousands set off, an exponent,
 * or a binary fraction.
 *
 * @param evidence what the log's other numbers show; it decides whether 1,234 is 1.234 or 1234
 */
export function parseNumber(text: string, evidence: MarkEvidence): ParsedNumber {
  const written = tidy(text);
  const fraction = FRACTION.exec(written);
  if (fraction) {
    const [, sign, whole = 0, numerator, denominator] = fraction;
    const size = Number(whole) + Number(numerator) / Number(denominator);
    return { value: sign === "-" ? -size : size };
  }
  const [, sign = "", digits = "", exponent = ""] = partsOf(written);
  const mark = decimalMark(digits, evidence);
  if (mark === "not a number" || mark === "ambiguous") return { fault: mark };
  const plain =
    mark === "none"
      ? digits.replace(/[.,]/g, "")
      : digits.replaceAll(mark === "." ? "," : ".", "").replace(",", ".");
  const value = Number(`${sign}${plain}${exponent}`);
  return Number.isFinite(value) ? { value } : { fault: "not a number" };
}

/** What the given numbers show of the decimal mark that they share. */
export function markEvidence(texts: Iterable<string>): MarkEvidence {
  const shown = marksIn(texts);
  if (shown.size > 1) return "both";
  return [...shown][0] ?? "none";
}

/** The decimal marks of the given numbers, but for those that may set off thousands. */
export function marksIn(texts: Iterable<string>): ReadonlySet<DecimalMark> {
  const marks = new Set<DecimalMark>();
  for (const text of texts) {
    const [, , digits = ""] = partsOf(tidy(text));
    if (GROUP_OR_DECIMALS.test(digits)) continue;
    const mark = decimalMark(digits, "none");
    if (mark === "." || mark === ",") marks.add(mark);
  }
  return marks;
}

/** Written as one character: 3½. */
const ONE_CHARACTER_FRACTIONS: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

function tidy(text: string): string {
  return text
    .replace(/[\u00a0\u2007\u2009\u202f]/g, " ")
    .replace(/[−–]/g, "-")
    .replaceAll("’", "'")
    .replaceAll("⁄", "/")
    .replace(/ ?[¼½¾⅛⅜⅝⅞]/g, (found) => ` ${ONE_CHARACTER_FRACTIONS[found.trim()]}`)
    .trim()
    .replace(/^([+-]) +/, "$1");
}

/** Sign, digits and exponent, with spaces and apostrophes between thousands taken out. */
function partsOf(written: string): readonly string[] {
  const parts = NUMBER.exec(written);
  if (parts === null) return [];
  const [all, sign = "", digits = "", exponent = ""] = parts;
  return [all, sign, SPACED_GROUPS.test(digits) ? digits.replace(/[ ']/g, "") : digits, exponent];
}

function decimalMark(digits: string, evidence: MarkEvidence): DecimalMark | "none" | ParsedFault {
  if (/^\d+$/.test(digits) || GROUPS_ONLY.test(digits)) return "none";
  const [, , afterGroups] = GROUPS_AND_DECIMALS.exec(digits) ?? [];
  if (afterGroups !== undefined) return afterGroups as DecimalMark;
  const [, inside, leading] = ONE_MARK.exec(digits) ?? [];
  const mark = (inside ?? leading) as DecimalMark | undefined;
  if (mark === undefined) return "not a number";
  if (!GROUP_OR_DECIMALS.test(digits) || mark === evidence) return mark;
  if (evidence === "none") return mark === "." ? mark : "ambiguous";
  return evidence === "both" ? "ambiguous" : "none";
}

type ParsedFault = Extract<ParsedNumber, { fault: string }>["fault"];
