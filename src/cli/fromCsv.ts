import { basename, extname } from "node:path";
import { UNDATED } from "../inspection/dates.ts";
import { failed, type Outcome, type Problem, succeeded } from "../inspection/problem.ts";
import type { PartialInspection } from "../inspection/schema.ts";
import { fromMillimetres, toMillimetres, type Units } from "../inspection/units.ts";
import { inspectionFromCsv, type Labels } from "../intake/inspectionFromCsv.ts";
import { addDataLines, type CureForMissing, type Wanted } from "../intake/missing.ts";
import type { Asks } from "../intake/question.ts";
import { type CsvReadings, readCsv } from "../intake/readCsv.ts";
import type { Refusal } from "../intake/refusal.ts";
import { type UnitDoubt, unitDoubts } from "../intake/unitDoubts.ts";
import { type FileRead, optionsLine, type StatedOutside, statementsOf } from "./fileRead.ts";
import { optionFor } from "./logOptions.ts";
import { optionsFor } from "./overrides.ts";
import { sourceName } from "./source.ts";

/** The one survey of a log of readings. */
export function fromCsv<Made extends PartialInspection>(
  text: string,
  file: string,
  outside: StatedOutside,
  wanted: Wanted<Made>,
): Outcome<FileRead<Made>> {
  const { method, units } = outside.command;
  const csv = readCsv(text, { ...outside.log, ...(method && { method }), ...(units && { units }) });
  if (!csv.ok) return { ok: false, problem: withOption(csv.problem, "asks" in csv ? csv.asks : undefined) };
  const made = inspectionFromCsv(csv.value, labelsFor(file), wanted, statementsOf(outside), cureByOption);
  if (!made.ok) return made;
  const { inspection, assumed } = made.value;
  const doubts = unitDoubts(...inItsUnits(csv.value, inspection.slide));
  if (doubts.length > 0)
    return doubtful(doubts, csv.value, units === undefined ? inspection.slide.units : undefined);
  return succeeded({
    inspection,
    refused: csv.value.refused.map(problemOf),
    surveys: inspection.surveys.map(({ id }) => ({
      inspection,
      survey: id,
      assumed: [...optionsLine(outside), ...assumed, ...howRead(csv.value)],
    })),
  });
}

function labelsFor(file: string): Labels {
  const name = basename(sourceName(file), extname(file));
  return { id: name, name, taken: UNDATED };
}

/** Names the options for what is missing; where there are none, lines to add to the log. */
const cureByOption: CureForMissing = (keys) => {
  const options = optionsFor(keys);
  return options === "" ? addDataLines(keys) : `Give ${options}, or name the slide with --slide SLIDE.json.`;
};

/** The log and the travel, in the unit of the log. */
function inItsUnits(
  csv: CsvReadings,
  { units: slideUnits, travel }: PartialInspection["slide"],
): Parameters<typeof unitDoubts> {
  const units = csv.units ?? slideUnits;
  const converted = (length: number): number => fromMillimetres(toMillimetres(length, slideUnits), units);
  return [{ ...csv, units }, travel && { from: converted(travel.from), to: converted(travel.to) }];
}

/** @param assumed the unit that other lengths were taken to be in; undefined where the command line states it */
function doubtful(
  doubts: readonly UnitDoubt[],
  { columns }: CsvReadings,
  assumed: Units | undefined,
): Outcome<never> {
  const choices = doubts.flatMap(({ columns: numbers, likely, unit }) =>
    numbers.map((number) => {
      const choice = likely[0] === "divisions" ? "div" : (likely[0] ?? unit);
      return `${columns[number - 1]?.as}=${number} (${choice})`;
    }),
  );
  const units = doubts.map(({ unit }) => unit);
  const others = [...new Set(units)].join(" and ");
  return failed(
    doubts.map(({ columns: numbers }) => `column ${numbers.join(" and ")}`).join(", "),
    `${doubts.map(({ what }) => what).join(", and ")}; they seem to be in another unit`,
    `Say which: --columns "${choices.join(",")}"${assumed === undefined ? "" : ` --units ${assumed}`}, or with (${others}) if that is right.`,
  );
}

function withOption(problem: Problem, asks: Asks | undefined): Problem {
  return asks === undefined ? problem : { ...problem, cure: `${problem.cure} Or give ${optionFor(asks)}.` };
}

function problemOf({ row, text, reason, cure, asks }: Refusal): Problem {
  return withOption({ where: `line ${row}`, what: `${reason} (${text})`, cure }, asks);
}

/** How the log was understood, and which lines were left out. */
function howRead({ columns, method, refused }: CsvReadings): readonly string[] {
  const understood = columns.map(({ header, takenAs, unit }) => {
    return `"${header}" as ${takenAs}${unit === undefined ? "" : ` in ${unit}`}`;
  });
  return [
    `The method is taken to be ${method}.`,
    `The log's columns are taken as follows: ${understood.join(", ")}.`,
    ...refused.map(({ row, reason }) => `Line ${row} of the log is left out: ${reason}.`),
  ];
}
