import { lengthUnit } from "../../../intake/lengthUnit.ts";

/** Which number of a gauge's line is the value. */
export type Pick =
  /** The first with a decimal mark, else the last: station numbers and channels have none. */
  | { readonly by: "itself" }
  /** By its place among the numbers of the line, 0-based. */
  | { readonly by: "place"; readonly place: number }
  /** By a regular expression: what its first group matches, else all that it matches. */
  | { readonly by: "pattern"; readonly pattern: string };

/** A number in a line, with what stands before it. */
export interface NumberInLine {
  readonly before: string;
  /** As it stands there, with a unit of length right after it, if there is one. */
  readonly text: string;
}

const NUMBER = /(?:[+\-−]\s*)?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?/gi;
const UNIT_AFTER = /^\s*([a-zµμ]+|["″])/i;

/** The numbers of a line, in order. */
export function numbersIn(line: string): readonly NumberInLine[] {
  const found: NumberInLine[] = [];
  let end = 0;
  for (const match of line.matchAll(NUMBER)) {
    const [number] = match;
    const after = line.slice(match.index + number.length);
    const [written = "", word = ""] = UNIT_AFTER.exec(after) ?? [];
    const text = lengthUnit(word) === undefined ? number : number + written;
    found.push({ before: line.slice(end, match.index), text: text.trim() });
    end = match.index + text.length;
  }
  return found;
}

/** The value in a line of a gauge; null where the line has none. */
export function valueIn(line: string, pick: Pick): string | null {
  if (pick.by === "pattern") {
    const pattern = patternOf(pick.pattern);
    const [whole, group] = pattern?.exec(line) ?? [];
    return group ?? whole ?? null;
  }
  const numbers = numbersIn(line);
  const picked =
    pick.by === "place"
      ? numbers[pick.place]
      : (numbers.find(({ text }) => /[.,]\d/.test(text)) ?? numbers.at(-1));
  return picked?.text ?? null;
}

/** A pattern as it can be matched; null where it is none. */
export function patternOf(text: string): RegExp | null {
  try {
    return text === "" ? null : new RegExp(text, "u");
  } catch {
    return null;
  }
}
