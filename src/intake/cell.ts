import { type LengthUnit, lengthUnit, meansDivisions } from "./lengthUnit.ts";
import { type MarkEvidence, parseNumber } from "./numberText.ts";

/** What a cell holds: a number with the unit written beside it, nothing, or what cannot be read. */
export type Cell =
  | { readonly kind: "empty" }
  | { readonly kind: "number"; readonly value: number; readonly unit?: LengthUnit | "divisions" }
  | { readonly kind: "fault"; readonly fault: string; readonly cure: string };

/** A cell left blank, or marked as such by a dash or `n/a`. */
const EMPTY = /^(?:[-–—]*|n\/?a)$/i;

/** All up to the last digit (and a mark after it) is the number, the rest its unit. */
const NUMBER_AND_UNIT = /^(.*\d[.,]?)\s*(.*)$/s;

/** The number in a cell, as text: what tells the decimal mark. */
export function numberTextOf(text: string): string {
  return NUMBER_AND_UNIT.exec(text.trim())?.[1] ?? "";
}

/** Reads a cell such as `0.21`, `0,21 mm`, `12 thou` or `3-1/2"`. */
export function readCell(text: string, evidence: MarkEvidence): Cell {
  const written = text.trim();
  if (EMPTY.test(written)) return { kind: "empty" };
  const [, numberText = "", unitText = ""] = NUMBER_AND_UNIT.exec(written) ?? [];
  const number = parseNumber(numberText, evidence);
  if ("fault" in number) {
    return number.fault === "ambiguous"
      ? fault(
          `is "${shown(written)}", which may mean thousands or thousandths`,
          "Write it without a mark between thousands, and with a decimal point.",
        )
      : fault(`is "${shown(written)}", which is not a number`, "Correct the cell, or leave it empty.");
  }
  if (unitText === "") return { kind: "number", value: number.value };
  const unit = meansDivisions(unitText) ? "divisions" : lengthUnit(unitText);
  return unit === undefined
    ? fault(
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

function fault(reason: string, cure: string): Cell {
  return { kind: "fault", fault: reason, cure };
}
