import { isPlainObject, merged, type PlainObject, valueAt, withValueAt } from "../inspection/plainData.ts";
import { type Quantity, SLIDE_QUANTITIES, SURVEY_QUANTITIES } from "../inspection/quantities.ts";
import type { Units } from "../inspection/units.ts";
import { readCell, shown } from "./cell.ts";
import { convertLength, type LengthUnit, lengthUnit, plainUnit } from "./lengthUnit.ts";
import type { MarkEvidence } from "./numberText.ts";
import type { Fault } from "./question.ts";
import { type Refusal, refusal } from "./refusal.ts";
import type { Row } from "./rows.ts";
import { textRead } from "./textCell.ts";

/** What a data line may speak of: what an inspection holds beside its slide and surveys, its slide, one survey. */
export type DataPart = "inspection" | "slide" | "survey";

/** A line above the headings that says something of the slide or the survey: `slide.screw.lead: 4`. */
export interface DataLine {
  readonly row: Row;
  readonly part: DataPart;
  /** The dotted name below the part, as the schema spells it where it knows it; empty where it is the whole part. */
  readonly key: string;
  /** `other` for a key that this program does not know. */
  readonly kind: Quantity["kind"] | "other";
  readonly text: string;
}

/** What the data lines of a log say, under the schema's names. Not yet checked against the schema. */
export type SlideData = Readonly<Record<DataPart, PlainObject>>;

/** The name and the value, which a spreadsheet may put in the next cell. */
const DATA_LINE = /^("?)(inspection|slide|survey)((?:\.[a-z][a-z0-9]*){0,6})("?)\s*[:=,;|\t](.*)$/is;

/** `units: mm`, as people write it. */
const UNITS_LINE = /^"?units?"?\s*[:=,;|\t]\s*"?([^\s,;|"]+|")"?[\s,;|"]*$/i;

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

/** What the schema knows of a dotted name, in whatever case it is written. */
export function knownQuantity(part: DataPart, key: string): Quantity | undefined {
  return BY_NAME.get(`${part}.${key}`.toLowerCase());
}

/** The data line that a row is, if it is one. */
export function dataLineOf(row: Row): DataLine | undefined {
  const [first = "", ...others] = row.cells;
  const whole = others.every((cell) => cell === "") ? partsOf(first, false) : undefined;
  const parts = whole ?? partsOf(row.text.trim(), true);
  if (parts === undefined) return undefined;
  const { part, key, text } = parts;
  // A whole part is written as an object; a title such as "Slide: table" is none.
  if (key === "" && !text.startsWith("{")) return undefined;
  const known = knownQuantity(part, key);
  return { row, part, key: known?.key ?? key, kind: known?.kind ?? "other", text };
}

function partsOf(
  written: string,
  mayBePadded: boolean,
): { readonly part: DataPart; readonly key: string; readonly text: string } | undefined {
  const [, unit] = UNITS_LINE.exec(written) ?? [];
  if (unit !== undefined && lengthUnit(unit)?.scale === 1) return { part: "slide", key: "units", text: unit };
  const [, opening, part, dotted, closing, value] = DATA_LINE.exec(written) ?? [];
  const named = PARTS.find((each) => each === part?.toLowerCase());
  if (named === undefined || dotted === undefined || value === undefined) return undefined;
  const text = mayBePadded ? unquoted(unpadded(value), opening !== closing) : value.trim();
  return { part: named, key: dotted.slice(1), text };
}

const PARTS: readonly DataPart[] = ["inspection", "slide", "survey"];

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
  let data: SlideData = { inspection: {}, slide: {}, survey: {} };
  for (const line of lines) {
    const value = readValue(line, { unlabelled, target, evidence });
    const name = [line.part, line.key].filter((step) => step !== "").join(".");
    if ("fault" in value) refused.push(refusal(line.row, { ...value, fault: `${name} ${value.fault}` }));
    else if (isPlainObject(value.value)) {
      const before = valueAt(data, name);
      data = withValueAt(data, name, merged(isPlainObject(before) ? before : {}, value.value));
    } else data = withValueAt(data, name, value.value);
  }
  return { data, refused };
}

interface Meaning {
  readonly unlabelled: LengthUnit | undefined;
  readonly target: Units | undefined;
  readonly evidence: MarkEvidence;
}

type Value = { readonly value: unknown } | Fault;

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
      return part === "slide" && key === "units" ? unitsOf(text) : { value: textRead(text, isLineText) };
    case "other":
      return otherOf(text, key === "");
  }
}

/** Whether a text can stand plainly behind the name of a data line: not where padding would be taken off it. */
export function isLineText(text: string): boolean {
  return text !== "" && unpadded(text) === text;
}

/** What this program does not know is JSON where it can be, and a text where it cannot. */
function otherOf(text: string, isWholePart: boolean): Value {
  try {
    const value: unknown = JSON.parse(text);
    return { value };
  } catch {
    return isWholePart
      ? {
          fault: `is "${shown(text)}", which is no object of JSON`,
          cure: "Correct the line, or take it out.",
        }
      : { value: text };
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
  if (cell.kind === "fault") return { fault: cell.fault, cure: cell.cure };
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
