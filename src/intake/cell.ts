import { type LengthUnit, lengthUnit, meansDivisions } from "./lengthUnit.ts";
import { type MarkEvidence, parseNumber } from "./numberText.ts";
import type { Fault } from "./question.ts";
import { isEmpty } from "./textCell.ts";

/** What a cell holds: a number with the unit written beside it, nothing, or what cannot be read. */
export type Cell =
  | { readonly kind: "empty" }
  | { readonly kind: "number"; readonly value: number; readonly unit?: LengthUnit | "divisions" }
  | ({ readonly kind: "fault"; readonly in: FaultyPart } & Fault);

/** What of a cell cannot be read: the number, the mark within it that may mean two things, or the unit beside it. */
export type FaultyPart = "number" | "mark" | "unit";

/** All up to the last digit (and a mark after it) is the number, the rest its unit. */
const NUMBER_AND_UNIT = /^(.*[\d¼½¾⅛⅜⅝⅞][.,]?)\s*(.*)$/s;
/** What spreadsheets put around a figure to keep it a text: `'0.21`, `="0.21"`. */
const KEPT_TEXT = /^'(?=[-+−.,\d])|^="(?=[^"]*"$)|(?<=^="[^"]*)"$/g;

/** The number in a cell, as text: what tells the decimal mark. */
export function numberTextOf(text: string): string {
  return partsOf(text).number;
}

/** The unit written beside a number. */
export function unitBeside(text: string): LengthUnit | "divisions" | undefined {
  const { number, unit } = partsOf(text);
  const isNumber = "value" in parseNumber(number, ".") || "value" in parseNumber(number, ",");
  return isNumber && unit !== "" ? unitOf(unit) : undefined;
}

/** Reads a cell such as `0.21`, `0,21 mm`, `12 thou` or `3-1/2"`. */
export function readCell(text: string, evidence: MarkEvidence): Cell {
  const written = text.trim();
  if (isEmpty(written)) return { kind: "empty" };
  const { number: numberText, unit: unitText } = partsOf(written);
  const number = parseNumber(numberText, evidence);
  if ("fault" in number) {
    if (number.fault === "ambiguous") {
      const reason = `is "${shown(written)}", which may mean thousands or thousandths`;
      const cure = "Write it without a mark between thousands, and with a decimal point.";
      return { ...fault("mark", reason, cure), asks: "decimal mark" };
    }
    const reason = `is "${shown(written)}", which is not a number`;
    return fault("number", reason, "Correct the cell, or leave it empty.");
  }
  if (unitText === "") return { kind: "number", value: number.value };
  const unit = unitOf(unitText);
  return unit === undefined
    ? fault(
        "unit",
        `is "${shown(written)}", and "${shown(unitText)}" is not a known unit`,
        "Write it in mm, µm, in or thou.",
      )
    : { kind: "number", value: number.value, unit };
}

/** A piece of a log as it is quoted to the reader. */
export function shown(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  return line.length > 60 ? `${line.slice(0, 59)}…` : line;
}

function partsOf(text: string): { readonly number: string; readonly unit: string } {
  const [, number = "", unit = ""] = NUMBER_AND_UNIT.exec(text.trim().replace(KEPT_TEXT, "")) ?? [];
  return { number, unit };
}

function unitOf(text: string): LengthUnit | "divisions" | undefined {
  return meansDivisions(text) ? "divisions" : lengthUnit(text);
}

function fault(part: FaultyPart, reason: string, cure: string): Cell & { readonly kind: "fault" } {
  return { kind: "fault", in: part, fault: reason, cure };
}
