import { type LengthUnit, lengthUnit, meansDivisions } from "./lengthUnit.ts";

/** What a column may be taken as. */
export type Role =
  | "position"
  | "backlash"
  | "advancing"
  | "retracting"
  | "direction"
  | "note"
  | "time"
  | "excluded";

/** What a column's values are counted in; `unknown` holds what looks like a unit but is none that is read. */
export type ColumnUnit = LengthUnit | "divisions" | { readonly unknown: string };

/** What a column's heading says. */
export interface Heading {
  readonly role?: Role;
  /** How plainly the words say it, 0 most: of columns for one role the plainest are taken. */
  readonly rank: number;
  /** The words that it was known by: repeats share them, two different quantities do not. */
  readonly words: string;
  /** The number of a repeat: 2 in `backlash 2`. */
  readonly repeat?: number;
  readonly unit?: ColumnUnit;
}

type Known = Required<Pick<Heading, "role" | "rank" | "words">> & Pick<Heading, "repeat">;

/** What people call the columns, the plain words before those that may mean something else. */
const VOCABULARY: readonly (readonly [Role, rank: number, words: string])[] = [
  ["position", 0, "position, positions, pos, location, coordinate, coord"],
  ["position", 0, "x position, y position, z position"],
  ["position", 1, "x, y, z, travel, distance, place, dro, scale"],
  ["position", 2, "station"],
  ["backlash", 0, "backlash, lash, lost motion, lost travel, play, free play, slop, looseness, sweep"],
  ["backlash", 1, "reading, readings, measurement, measured, value, indicator, dti, dial, clearance, b"],
  ["backlash", 2, "run, r, trial, test, repeat, rep, pass"],
  ["advancing", 0, "advancing, advance, adv, forward, forwards, fwd, positive, plus, up, left"],
  ["advancing", 0, "clockwise, cw"],
  ["retracting", 0, "retracting, retract, retr, ret, backward, backwards, back, reverse, rev"],
  ["retracting", 0, "return, returning, negative, minus, down, right"],
  ["retracting", 0, "counterclockwise, counter clockwise, anticlockwise, anti clockwise, ccw"],
  ["direction", 0, "direction, dir, approach"],
  ["note", 0, "note, notes, remark, remarks, comment, comments"],
  ["time", 0, "time, timestamp, date time, datetime"],
  ["time", 1, "date"],
  ["excluded", 0, "excluded, struck, left out"],
];

const BY_WORDS = new Map(
  VOCABULARY.flatMap(([role, rank, list]) => list.split(", ").map((words) => [words, { role, rank, words }])),
);

/** Words that stand around the telling ones: `dial reading, approaching from left`. */
const FILLERS = new Set(
  (
    "reading readings indicator dial dti handwheel value measured slide table carriage saddle " +
    "approach approaching approached direction side going moving when while after the of from at on to"
  ).split(" "),
);

/** Rank of a heading that is only a repeat's number: 1, 2, 3. */
export const BARE_NUMBER_RANK = 3;

const FOREIGN_UNIT = /^(°|deg|degree|degrees|turn|turns|rev|revs|revolutions|%)$/;

/** Finds in a heading what its column holds, which repeat it is, and its unit: `Backlash 2 [thou]`. */
export function parseHeading(cell: string): Heading {
  const { outside, asides, unit } = separateUnit(foldHeading(cell));
  const known = asides === "" ? undefined : meaningOf(`${outside} ${asides}`);
  return { rank: 0, words: outside, ...(known ?? meaningOf(outside)), ...(unit && { unit }) };
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

function meaningOf(phrase: string): Known | undefined {
  const numbers = phrase.match(/\d+/g) ?? [];
  if (numbers.length > 1) return undefined;
  const repeat = numbers.length === 1 ? { repeat: Number(numbers[0]) } : {};
  const words = phrase
    .replace(/\d+(st|nd|rd|th)?/, " ")
    .replace(/\+\s*$/, " plus")
    .replace(/[-−]\s*$/, " minus")
    .replace(/[^\p{L}]+/gu, " ")
    .replace(/ n[or] $/, " ")
    .trim();
  if (words === "") {
    return numbers.length === 1 ? { role: "backlash", rank: BARE_NUMBER_RANK, words, ...repeat } : undefined;
  }
  const telling = words.split(" ").filter((word) => !FILLERS.has(word));
  const [beforeFrom = ""] = words.split(/ (?:from|along) /);
  const known = BY_WORDS.get(words) ?? BY_WORDS.get(telling.join(" ")) ?? BY_WORDS.get(beforeFrom);
  return known && { ...known, ...repeat };
}
