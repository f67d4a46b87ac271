import { type Plain, withValueAt } from "../inspection/parts.ts";
import { type Quantity, SLIDE_QUANTITIES, SURVEY_QUANTITIES } from "../inspection/quantities.ts";
import type { Units } from "../inspection/units.ts";
import { readCell } from "./cell.ts";
import { convertLength, type LengthUnit, lengthUnit, plainUnit } from "./lengthUnit.ts";
import type { MarkEvidence } from "./numberText.ts";
import { type Refusal, refusal } from "./refusal.ts";
import type { Row } from "./rows.ts";

/** A line above the headings that says something of the slide or the survey: `slide.screw.lead: 4`. */
export interface DataLine {
  readonly row: Row;
  readonly part: "slide" | "survey";
  /** The dotted name below the part, as the schema spells it where it knows it. */
  readonly key: string;
  readonly kind: Quantity["kind"];
  readonly text: string;
}

/** What the data lines of a log say, under the schema's names. Not yet checked against the schema. */
export interface SlideData {
  readonly slide: Plain;
  readonly survey: Plain;
}

/** The name and the value, which a spreadsheet may put in the next cell. */
const DATA_LINE = /^("?)(slide|survey)((?:\.[a-z][a-z0-9]*){1,5})("?)\s*[:=,;|\t](.{0,5000})$/is;

const BY_NAME = new Map(
  (
    [
      ["slide", SLIDE_QUANTITIES],
      ["survey", SURVEY_QUANTITIES],
    ] as const
  ).flatMap(([part, quantities]) =>
    quantities.map((quantity) => [`${part}.${quantity.key}`.toLowerCase(), quantity] as const),
  ),
);

/** The data line that a row is, if it is one. */
export function dataLineOf(row: Row): DataLine | undefined {
  const [, opening, part, dotted, closing, value] = DATA_LINE.exec(row.text.trim()) ?? [];
  if (part === undefined || dotted === undefined || value === undefined) return undefined;
  const known = BY_NAME.get(`${part}${dotted}`.toLowerCase());
  return {
    row,
    part: part.toLowerCase() === "slide" ? "slide" : "survey",
    key: known?.key ?? dotted.slice(1),
    kind: known?.kind ?? "text",
    text: unquoted(unpadded(value), opening !== closing),
  };
}

/** The value without the separators that spreadsheets pad rows with. */
function unpadded(value: string): string {
  const padding = " \t,;|:=";
  let start = 0;
  let end = value.length;
  while (start < end && padding.includes(value.charAt(start))) start++;
  while (end > start && padding.includes(value.charAt(end - 1))) end--;
  return value.slice(start, end);
}

/** The value without the quotes of its cell, which may have opened before the name; an inch mark stays. */
function unquoted(value: string, openedBefore: boolean): string {
  const opened = value.startsWith('"');
  if (!opened && !openedBefore) return value;
  return value
    .slice(opened ? 1 : 0)
    .replace(/"$/, "")
    .replaceAll('""', '"');
}

/** The line at a dotted name, the last one if there are several. */
export function lineAt(
  lines: readonly DataLine[],
  part: DataLine["part"],
  key: string,
): DataLine | undefined {
  return lines.findLast((line) => line.part === part && line.key === key);
}

/** The unit that a `slide.units` line gives. */
export function statedUnits(lines: readonly DataLine[]): Units | undefined {
  const unit = lengthUnit(lineAt(lines, "slide", "units")?.text ?? "");
  return unit?.scale === 1 ? unit.base : undefined;
}

/** The units written beside lengths. */
export function unitsWritten(lines: readonly DataLine[]): readonly LengthUnit[] {
  return lines.flatMap(({ kind, text }) => {
    const cell = kind === "length" || kind === "lengths" ? readCell(text, "none") : undefined;
    return cell?.kind === "number" && cell.unit !== undefined && cell.unit !== "divisions" ? [cell.unit] : [];
  });
}

/** Reads the lines, lengths brought from the unit they are in to the unit of the readings. */
export function readDataLines(
  lines: readonly DataLine[],
  unlabelled: LengthUnit | undefined,
  target: Units | undefined,
  evidence: MarkEvidence,
): { readonly data: SlideData; readonly refused: readonly Refusal[] } {
  const refused: Refusal[] = [];
  let data: SlideData = { slide: {}, survey: {} };
  for (const line of lines) {
    const value = readValue(line, { unlabelled, target, evidence });
    if ("value" in value) data = withValueAt(data, `${line.part}.${line.key}`, value.value);
    else refused.push(refusal(line.row, `${line.part}.${line.key} ${value.fault}`, value.cure));
  }
  return { data, refused };
}

interface Meaning {
  readonly unlabelled: LengthUnit | undefined;
  readonly target: Units | undefined;
  readonly evidence: MarkEvidence;
}

type Value = { readonly value: unknown } | { readonly fault: string; readonly cure: string };

function readValue({ part, key, kind, text }: DataLine, meaning: Meaning): Value {
  switch (kind) {
    case "length":
      return lengthOf(text, meaning);
    case "lengths":
      return lengthsOf(text, meaning);
    case "number": {
      const cell = readCell(text, meaning.evidence);
      if (cell.kind === "number" && cell.unit === undefined) return { value: cell.value };
      return { fault: `is "${text}", which is not a plain number`, cure: "Write the number alone." };
    }
    case "flag":
      if (/^(yes|y|true)$/i.test(text)) return { value: true };
      if (/^(no|n|false)$/i.test(text)) return { value: false };
      return { fault: `is "${text}"`, cure: "Write yes or no." };
    case "text":
      return part === "slide" && key === "units" ? unitsOf(text) : { value: text };
  }
}

function unitsOf(text: string): Value {
  const unit = lengthUnit(text);
  return unit?.scale === 1
    ? { value: unit.base }
    : { fault: `is "${text}", which is not a unit of a slide`, cure: "Write mm or in." };
}

function lengthOf(text: string, { unlabelled, target, evidence }: Meaning): Value {
  const cell = readCell(text, evidence);
  if (cell.kind === "fault") return cell;
  if (cell.kind === "empty") return { fault: "is empty", cure: "Write a length, or take the line out." };
  if (cell.unit === "divisions") {
    return { fault: `is "${text}", in divisions`, cure: "Write it as a length." };
  }
  const from = cell.unit ?? unlabelled;
  return { value: from && target ? convertLength(cell.value, from, plainUnit(target)) : cell.value };
}

/** `0.02 0.03`, `0.02 mm; 0.03 mm`, `0,02 0,03`: a comma separates only where it cannot be a decimal comma. */
function lengthsOf(text: string, meaning: Meaning): Value {
  const separator = text.includes(".") ? /[\s,;|]+(?=[-+.\d])/ : /,?\s+(?=[-+\d])|\s*[;|]\s*/;
  const values: unknown[] = [];
  for (const each of text.split(separator)) {
    const value = lengthOf(each, meaning);
    if (!("value" in value)) return value;
    values.push(value.value);
  }
  return { value: values };
}
