import { type LengthUnit, lengthUnit, meansDivisions } from "./lengthUnit.ts";
import { meaningOf, type Role } from "./vocabulary.ts";

/** What a column's values are counted in; `unknown` holds what looks like a unit but is none that is read. */
export type ColumnUnit = LengthUnit | "divisions" | { readonly unknown: string };

/** What a column's heading says, or what the reader says of it. */
export interface Heading {
  readonly role?: Role;
  /** How plainly the words say it, 0 most: of columns for one role the plainest are taken. */
  readonly rank: number;
  /** The words that it was known by: repeats share them, two different quantities do not. */
  readonly words: string;
  /** The number of a repeat: 2 in `backlash 2`. */
  readonly repeat?: number;
  readonly unit?: ColumnUnit;
  /** Whether it was said by the reader, and not found. */
  readonly isSaid?: true;
  /** Whether its unit was said by the reader. */
  readonly isUnitSaid?: true;
}

type Known = Required<Pick<Heading, "role" | "rank" | "words">> & Pick<Heading, "repeat">;

/** Rank of a heading that is only a repeat's number: 1, 2, 3. */
export const BARE_NUMBER_RANK = 3;

const FOREIGN_UNIT = /^(°|deg|degree|degrees|turn|turns|rev|revs|revolutions|%)$/;

/** Finds in a heading what its column holds, which repeat it is, and its unit: `Backlash 2 [thou]`. */
export function parseHeading(cell: string): Heading {
  const { outside, asides, unit } = separateUnit(foldHeading(cell));
  const known = asides === "" ? undefined : knownBy(`${outside} ${asides}`);
  return { rank: 0, words: outside, ...(known ?? knownBy(outside)), ...(unit && { unit }) };
}

/** The unit that a word or a bracket's content stands for, if it stands for one. */
export function columnUnit(text: string): ColumnUnit | undefined {
  const word = text.trim().replace(/^in (?=.)/, "");
  if (meansDivisions(word)) return "divisions";
  const scaled = /^\d*[./]\d+ ?(.+)$/.exec(word)?.[1];
  const foreign = FOREIGN_UNIT.test(word) || (scaled !== undefined && lengthUnit(scaled) !== undefined);
  return lengthUnit(word) ?? (foreign ? { unknown: word } : undefined);
}

function foldHeading(cell: string): string {
  return cell
    .normalize("NFKC")
    .toLowerCase()
    .replace(/(?<=\p{L})-(?=\p{L})/gu, " ")
    .replace(/[_\s]+/g, " ")
    .trim();
}

/** Takes the unit out of a heading: from brackets first, else from its last words. */
function separateUnit(heading: string): { outside: string; asides: string; unit: ColumnUnit | undefined } {
  let unit: ColumnUnit | undefined;
  const asides: string[] = [];
  const outside = heading.replace(/[([{]([^()[\]{}]*)[)\]}]/g, (_, bracket: string) => {
    for (const part of bracket.split(/[,;]/)) {
      const found = unit === undefined ? (columnUnit(part) ?? firstWordAsUnit(part)) : undefined;
      if (found === undefined) asides.push(part);
      else unit = found;
    }
    return " ";
  });
  return { asides: asides.join(" "), ...(unit === undefined ? lastWordsAsUnit(outside) : { outside, unit }) };
}

/** `mm from the left`. */
function firstWordAsUnit(text: string): ColumnUnit | undefined {
  const [, word = ""] = /^\s*(\S+) (?:from|along|of) /.exec(text) ?? [];
  return columnUnit(word);
}

/** `position, mm`, `position / mm`, `position/mm`, `backlash in thou`, `backlash 1/100 mm`. */
function lastWordsAsUnit(text: string): { outside: string; unit: ColumnUnit | undefined } {
  const tokens = text.split(/[\s,:;]+/).filter((token) => token !== "" && token !== "/");
  for (const count of [2, 1]) {
    const unit = columnUnit(tokens.slice(-count).join(" "));
    if (unit === undefined || tokens.length <= count) continue;
    const before = tokens.slice(0, -count);
    return { outside: (before.at(-1) === "in" ? before.slice(0, -1) : before).join(" "), unit };
  }
  const [, before, last = ""] = /^(.*\p{L})\/([^/]+)$/u.exec(text.trim()) ?? [];
  const unit = columnUnit(last);
  return before === undefined || unit === undefined
    ? { outside: text, unit: undefined }
    : { outside: before, unit };
}

function knownBy(phrase: string): Known | undefined {
  const numbers = phrase.match(/\d+/g) ?? [];
  if (numbers.length > 1) return undefined;
  const repeat = numbers.length === 1 ? { repeat: Number(numbers[0]) } : {};
  const words = phrase
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/\d+(st|nd|rd|th)?/, " ")
    .replace(/\+\s*$/, " plus")
    .replace(/[-−]\s*$/, " minus")
    .replace(/[^\p{L}]+/gu, " ")
    .replace(/ n[or] $/, " ")
    .trim();
  if (words === "") {
    return numbers.length === 1 ? { role: "backlash", rank: BARE_NUMBER_RANK, words, ...repeat } : undefined;
  }
  const known = meaningOf(words);
  return known && { ...known, ...repeat };
}
