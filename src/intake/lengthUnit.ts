import { fromMillimetres, roundTo, toMillimetres, type Units } from "../inspection/units.ts";

/** A unit of length as people write it in a log: so many of the millimetre or the inch. */
export interface LengthUnit {
  readonly name: string;
  readonly base: Units;
  readonly scale: number;
}

const unit = (name: string, base: Units, scale: number): LengthUnit => ({ name, base, scale });

const MILLIMETRE = unit("mm", "mm", 1);
const INCH = unit("in", "in", 1);

/** Micro signs and typographic marks are folded before the look-up, so one spelling of each is enough. */
const SPELLINGS: readonly (readonly [LengthUnit, readonly string[]])[] = [
  [MILLIMETRE, ["mm", "millimetre", "millimetres", "millimeter", "millimeters", "mms"]],
  [unit("cm", "mm", 10), ["cm", "centimetre", "centimetres", "centimeter", "centimeters"]],
  [unit("m", "mm", 1000), ["m", "metre", "metres", "meter", "meters"]],
  [unit("mm/100", "mm", 0.01), ["mm/100", "1/100 mm", "1/100mm", "hundredths mm", "hundredths of a mm"]],
  [
    unit("µm", "mm", 0.001),
    ["μm", "um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"],
  ],
  [INCH, ["in", "ins", "inch", "inches", '"', "zoll", "pouce", "pouces", "pulgada", "pulgadas", "pollici"]],
  [unit("ft", "in", 12), ["ft", "feet"]],
  [
    unit("thou", "in", 0.001),
    ["thou", "thous", "mil", "mils", "thousandth", "thousandths", "in/1000", "1/1000 in", '1/1000"'],
  ],
  [unit("tenths", "in", 0.0001), ["tenth", "tenths", "in/10000", "1/10000 in", '1/10000"']],
];

const BY_SPELLING = new Map(
  SPELLINGS.flatMap(([value, words]) => words.map((word) => [word, value] as const)),
);

/** The plain millimetre or inch. */
export function plainUnit(units: Units): LengthUnit {
  return units === "mm" ? MILLIMETRE : INCH;
}

/** The unit of length that a word such as `mm`, `thou` or `"` stands for. */
export function lengthUnit(word: string): LengthUnit | undefined {
  return BY_SPELLING.get(folded(word));
}

/** Millimetres in one of the unit. */
export function millimetresIn({ base, scale }: LengthUnit): number {
  return toMillimetres(scale, base);
}

/** Whether a word stands for the divisions of a handwheel's dial. */
export function meansDivisions(word: string): boolean {
  return /^(div|divs|division|divisions|graduation|graduations)$/.test(folded(word));
}

/** A length in `from` as a length in `to`, without the traces of binary fractions that conversion leaves. */
export function convertLength(length: number, from: LengthUnit, to: LengthUnit): number {
  if (from.base === to.base && from.scale === to.scale) return length;
  const inBase = length * from.scale;
  const converted =
    from.base === to.base ? inBase : fromMillimetres(toMillimetres(inBase, from.base), to.base);
  return rounded(converted / to.scale);
}

/** To nine decimals; by plain arithmetic where the figure is small enough for that to be exact. */
function rounded(value: number): number {
  const shifted = Math.abs(value) * 1e9;
  if (shifted > Number.MAX_SAFE_INTEGER) return roundTo(value, 9);
  const size = Math.round(shifted) / 1e9;
  return value < 0 ? -size || 0 : size;
}

function folded(word: string): string {
  return word
    .normalize("NFKC")
    .toLowerCase()
    .replace(/''|′′|[″”“]/g, '"')
    .replace(/\s+/g, " ")
    .trim()
    .replace(/(?<=[a-z])\.$/, "");
}
