import { type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import { readTypedFigure, readTypedFigures } from "../../intake/typedFigure.ts";
import type { Field } from "./fieldList.ts";

/** What was typed into a field as the value it stands for; undefined for a field left open. */
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

/** A value as it is shown in its field. */
export function fieldText(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "boolean") return value ? "yes" : "no";
  return Array.isArray(value) ? value.join("  ") : String(value);
}
