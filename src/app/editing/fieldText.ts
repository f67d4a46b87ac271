import { isPlainObject, type PlainObject, valueAt, withValueAt } from "../../inspection/plainData.ts";
import { type Outcome, type Problem, succeeded } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import { readTypedFigure, readTypedFigures } from "../../intake/typedFigure.ts";
import type { Field } from "./fieldList.ts";
import { EVERY_FIELD } from "./fieldList.ts";

/** The value of the text typed into a field, in the field's unit; undefined if it is empty. */
export function readFieldText({ kind }: Field, text: string, units: Units): Outcome<unknown> {
  const trimmed = text.trim();
  if (trimmed === "") return succeeded(undefined);
  switch (kind) {
    case "length":
      return readTypedFigure(trimmed, units);
    case "number":
      return readTypedFigure(trimmed, "plain");
    case "lengths":
      return readTypedFigures(trimmed, units);
    case "yes-no":
      return succeeded(trimmed === "yes");
    default:
      return succeeded(text);
  }
}

/** The text that a field shows for a value. */
export function fieldText(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "boolean") return value ? "yes" : "no";
  return Array.isArray(value) ? value.join("  ") : String(value);
}

/** A copy with the value at a dotted name; undefined removes the key, and objects that become empty. */
export function withValueOrWithout(data: PlainObject, name: string, value: unknown): PlainObject {
  return value === undefined ? without(data, name) : withValueAt(data, name, value);
}

function without(data: PlainObject, name: string): PlainObject {
  const [key = "", ...rest] = name.split(".");
  const { [key]: _removed, ...others } = data;
  const below = valueAt(data, key);
  if (rest.length === 0 || !isPlainObject(below)) return others;
  const left = without(below, rest.join("."));
  return Object.keys(left).length === 0 ? others : { ...data, [key]: left };
}

/** Labels of places without a field of their own. */
const OTHER_LABELS: Readonly<Record<string, string>> = {
  workingRange: "Working range",
  dial: "Travel per division",
};

/**
 * A problem with the text typed into a field, in sentences about that field or the one that it contradicts.
 *
 * @param path the field typed into
 */
export function fieldProblemWords({ where, what, cure }: Problem, path: string): string {
  const place = where.replace(/^slide\.|^surveys\[\d+\]\./, "");
  const sentence = `${whatIsWrong(place === "" ? path : place, what)}.`;
  return cure === "" ? sentence : `${sentence} ${cure}`;
}

function whatIsWrong(place: string, what: string): string {
  const [from, to] = [labelOf(`${place}.from`), labelOf(`${place}.to`)];
  if (from !== undefined && to !== undefined && what.startsWith('"from"'))
    return what.replace('"from"', from).replace('"to"', to);
  const [, reading] = /^readings\[(\d+)\]/.exec(place) ?? [];
  const name =
    reading === undefined ? labelOf(place.replace(/\[\d+\]$/, "")) : `Reading ${Number(reading) + 1}`;
  return `${name ?? OTHER_LABELS[place] ?? place} ${what.startsWith("is missing;") ? "is needed, too" : what}`;
}

function labelOf(path: string): string | undefined {
  return EVERY_FIELD.find((field) => field.path === path)?.label;
}
