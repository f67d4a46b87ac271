import { isPlainObject, type PlainObject } from "../inspection/plainData.ts";
import type { Quantity } from "../inspection/quantities.ts";
import { type DataPart, isLineText, knownQuantity } from "./dataLines.ts";
import type { DecimalMark } from "./numberText.ts";
import { numberWritten } from "./numberWritten.ts";
import { inJson, textWritten } from "./textCell.ts";

/** How deep dotted names go; what lies deeper is written as an object. */
const DEEPEST = 5;

/**
 * The lines that say what a part of an inspection holds, under its dotted names: `slide.screw.lead: 4`. What has no
 * name that a line can carry is written as JSON, in one line for the whole part.
 */
export function dataLinesFor(part: DataPart, data: PlainObject, mark: DecimalMark): readonly string[] {
  const lines: string[] = [];
  const rest = written([part], data, mark, lines);
  return rest === undefined ? lines : [...lines, `${part}: ${inJson(rest)}`];
}

/** Writes what can be written as lines of their own, and gives back the rest. */
function written(
  path: readonly string[],
  data: PlainObject,
  mark: DecimalMark,
  lines: string[],
): PlainObject | undefined {
  const left: (readonly [string, unknown])[] = [];
  for (const [key, value] of Object.entries(data)) {
    const below = [...path, key];
    const goesDeeper = isPlainObject(value) && Object.keys(value).length > 0 && path.length < DEEPEST;
    if (isNameable(key) && goesDeeper) {
      const rest = written(below, value, mark, lines);
      if (rest !== undefined) left.push([key, rest]);
      continue;
    }
    const text = isNameable(key) ? textFor(below, value, mark) : undefined;
    if (text === undefined) left.push([key, value]);
    else lines.push(`${below.join(".")}: ${text}`);
  }
  return left.length === 0 ? undefined : Object.fromEntries(left);
}

function isNameable(key: string): boolean {
  return /^[a-z][a-z0-9]*$/i.test(key);
}

/** A value as its line says it; undefined where the line would be read as something else. */
function textFor([part, ...keys]: readonly string[], value: unknown, mark: DecimalMark): string | undefined {
  const key = keys.join(".");
  const known = knownQuantity(part as DataPart, key);
  if (known === undefined) return otherText(value);
  return known.key === key ? knownText(known, value, mark) : undefined;
}

function knownText({ kind }: Quantity, value: unknown, mark: DecimalMark): string | undefined {
  if (kind === "flag") return typeof value === "boolean" ? (value ? "yes" : "no") : undefined;
  if (kind === "text") return typeof value === "string" ? textWritten(value, isLineText) : undefined;
  const figures: readonly unknown[] = kind === "lengths" && Array.isArray(value) ? value : [value];
  const texts = figures.flatMap((each) => (typeof each === "number" ? [numberWritten(each, mark)] : []));
  return texts.length === figures.length && texts.length > 0 ? texts.join(" ") : undefined;
}

function otherText(value: unknown): string {
  return typeof value === "string"
    ? textWritten(value, (text) => isLineText(text) && !isJson(text))
    : inJson(value);
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
