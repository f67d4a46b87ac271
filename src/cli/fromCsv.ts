import { basename, extname } from "node:path";
import { type Outcome, type Problem, succeeded } from "../inspection/problem.ts";
import { inspectionFromCsv, type Labels } from "../intake/inspectionFromCsv.ts";
import { addDataLines, type CureForMissing } from "../intake/missing.ts";
import { type CsvReadings, readCsv } from "../intake/readCsv.ts";
import type { Refusal } from "../intake/refusal.ts";
import { type FileRead, optionsLine, type SaidElsewhere, statementsOf } from "./fileRead.ts";
import { optionsFor } from "./overrides.ts";
import { sourceName } from "./source.ts";

/** The date of a survey that carries none: the command reads no clock, and nothing it answers depends on it. */
const UNDATED = "1970-01-01";

/** The one survey of a log of readings. */
export function fromCsv(text: string, file: string, elsewhere: SaidElsewhere): Outcome<FileRead> {
  const { method, units } = elsewhere.command;
  const csv = readCsv(text, { ...(method && { method }), ...(units && { units }) });
  if (!csv.ok) return csv;
  const labels = labelsFor(file);
  const made = inspectionFromCsv(csv.value, labels, statementsOf(elsewhere), cureByOption);
  if (!made.ok) return made;
  const { inspection, assumed } = made.value;
  return succeeded({
    refused: csv.value.refused.map(problemOf),
    surveys: inspection.surveys.map(({ id }) => ({
      inspection,
      survey: id,
      assumed: [...optionsLine(elsewhere), ...assumed, ...howRead(csv.value)],
    })),
  });
}

function labelsFor(file: string): Labels {
  const name = basename(sourceName(file), extname(file));
  return { id: name, name, taken: UNDATED };
}

/** Options where there are some for what is missing, else lines in the log. */
const cureByOption: CureForMissing = (keys) => {
  const options = optionsFor(keys);
  return options === "" ? addDataLines(keys) : `Give ${options}, or name the slide with --slide SLIDE.json.`;
};

function problemOf({ row, text, reason, cure }: Refusal): Problem {
  return { where: `line ${row}`, what: `${reason} (${text})`, cure };
}

/** How the log was understood, and what of it was not. */
function howRead({ columns, method, refused }: CsvReadings): readonly string[] {
  const taken = columns.map(({ header, takenAs, unit }) => {
    return `"${header}" as ${takenAs}${unit === undefined ? "" : ` in ${unit}`}`;
  });
  return [
    `The method is taken to be ${method}.`,
    `The log's columns are taken as follows: ${taken.join(", ")}.`,
    ...refused.map(({ row, reason }) => `Line ${row} of the log is left out: ${reason}.`),
  ];
}
