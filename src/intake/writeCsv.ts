import { takesPairs } from "../inspection/methods.ts";
import type { PlainObject } from "../inspection/plainData.ts";
import { isPair, isPositioning } from "../inspection/readingShapes.ts";
import type { PartialInspection, Reading, Survey } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { dataLinesFor } from "./dataLinesWritten.ts";
import { isNoteText, isReasonText } from "./marks.ts";
import type { DecimalMark } from "./numberText.ts";
import { numberWritten, separatorFor } from "./numberWritten.ts";
import { csvCell, inJson, textWritten } from "./textCell.ts";

/** A column of the readings, and what a reading has in it; empty where it has nothing. */
interface Column {
  readonly heading: string;
  readonly cell: (reading: Reading) => string;
}

/**
 * One survey of an inspection as CSV: what is known of slide and survey in lines under its dotted names, then the
 * readings. `readCsv` reads the same back, and no spreadsheet takes anything in it for a formula.
 *
 * With a decimal point, commas separate the cells; with a decimal comma, semicolons do, as spreadsheets set to such a
 * language expect. Lines end as RFC 4180 says.
 */
export function surveyCsv(inspection: PartialInspection, survey: Survey, mark: DecimalMark): string {
  const { format: _format, version: _version, slide, surveys: _surveys, ...others } = inspection;
  const { readings, ...about } = survey;
  const columns = columnsFor(survey, slide.units, mark);
  const lines = [
    ...dataLinesFor("inspection", others as PlainObject, mark),
    ...dataLinesFor("slide", slide, mark),
    ...dataLinesFor("survey", about, mark),
  ];
  return csvText(
    [
      ...lines.map((line) => [line]),
      columns.map(({ heading }) => heading),
      ...readings.map((reading) => columns.map(({ cell }) => cell(reading))),
    ],
    mark,
  );
}

/**
 * Rows as the text of a CSV file. A byte-order mark stands before it where there is more than plain ASCII, as
 * spreadsheets take it for another encoding otherwise.
 */
export function csvText(rows: readonly (readonly string[])[], mark: DecimalMark): string {
  const separator = separatorFor(mark);
  const text = rows
    .map((cells) => `${cells.map((cell) => csvCell(cell, separator)).join(separator)}\r\n`)
    .join("");
  return /^[\t\r\n -~]*$/.test(text) ? text : `\uFEFF${text}`;
}

function columnsFor(survey: Survey, units: Units, mark: DecimalMark): readonly Column[] {
  const { readings, method } = survey;
  const number = (key: string) => (reading: Reading) => {
    const value = figuresOf(reading).includes(key) ? reading[key] : undefined;
    return typeof value === "number" ? numberWritten(value, mark) : "";
  };
  const figure = (key: string, unit: string): Column => ({ heading: `${key} (${unit})`, cell: number(key) });
  const read = method === "dial-pair" ? "div" : units;
  const columns: Readonly<Record<string, Column>> = {
    target: figure("target", units),
    direction: {
      heading: "direction",
      cell: (reading) => (isPositioning(reading) ? reading.direction : ""),
    },
    reading: figure("reading", units),
    run: { heading: "run", cell: number("run") },
    position: figure("position", units),
    advancing: figure("advancing", read),
    retracting: figure("retracting", read),
    backlash: figure("backlash", units),
  };
  const present = new Set(readings.length === 0 ? shapeFor(method) : readings.flatMap(figuresOf));
  const order = Object.keys(columns).filter((key) => present.has(key));
  const isMarked = ({ cell }: Column): boolean => readings.some((reading) => cell(reading) !== "");
  return [...order.flatMap((key) => columns[key] ?? []), ...MARKS.filter(isMarked)];
}

const PAIR = ["position", "advancing", "retracting"];
const BACKLASH = ["position", "backlash"];
const POSITIONING = ["target", "direction", "reading", "run"];

/** The keys of a reading that its shape needs. */
function figuresOf(reading: Reading): readonly string[] {
  if (isPair(reading)) return PAIR;
  return isPositioning(reading) ? POSITIONING : BACKLASH;
}

function shapeFor(method: Survey["method"]): readonly string[] {
  if (takesPairs(method)) return PAIR;
  return method === "positioning" ? POSITIONING : BACKLASH;
}

const MARKS: readonly Column[] = [
  { heading: "time", cell: ({ time }) => (time === undefined ? "" : textWritten(time, isNoteText)) },
  { heading: "note", cell: ({ note }) => (note === undefined ? "" : textWritten(note, isNoteText)) },
  {
    heading: "excluded",
    cell: ({ excluded }) => (excluded === undefined ? "" : textWritten(excluded, isReasonText)),
  },
  {
    heading: "other keys",
    cell: (reading) => {
      const known = new Set([...figuresOf(reading), "time", "note", "excluded"]);
      const others = Object.entries(reading).filter(([key]) => !known.has(key));
      return others.length === 0 ? "" : inJson(Object.fromEntries(others));
    },
  },
];
