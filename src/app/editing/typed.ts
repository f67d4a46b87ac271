import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import type { Field } from "./fieldList.ts";
import { readFigure } from "./figure.ts";

/** What was typed into a field as the value it stands for; undefined for a field left open. */
export function readTyped({ kind }: Field, text: string, units: Units): Outcome<unknown> {
  const trimmed = text.trim();
  if (trimmed === "") return succeeded(undefined);
  switch (kind) {
    case "length":
      return readFigure(trimmed, units);
    case "number":
      return readFigure(trimmed, "plain");
    case "lengths":
      return readFigures(trimmed, units);
    case "yes-no":
      return succeeded(trimmed === "yes");
    default:
      return succeeded(text);
  }
}

/** A value as it is shown in its field. */
export function typedFrom(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "boolean") return value ? "yes" : "no";
  return Array.isArray(value) ? value.join("  ") : String(value);
}

function readFigures(text: string, units: Units): Outcome<readonly number[]> {
  const values: number[] = [];
  for (const part of text.split(/[\s;]+/).filter((piece) => piece !== "")) {
    const read = readFigure(part, units);
    if (!read.ok) return read;
    values.push(read.value);
  }
  return values.length === 0 ? failed("", "is empty", "Type one figure or more.") : succeeded(values);
}
