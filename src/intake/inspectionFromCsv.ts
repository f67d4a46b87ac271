import { readingInUnits } from "../inspection/metric.ts";
import { problemOf, readInspection } from "../inspection/open.ts";
import type { Plain } from "../inspection/parts.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import {
  FORMAT,
  type Inspection,
  isPair,
  type Reading,
  type Survey,
  surveySchema,
  VERSION,
} from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { addDataLines, type CureForMissing, missingFrom } from "./missing.ts";
import type { CsvReadings } from "./readCsv.ts";
import { combine, type Statement } from "./statements.ts";

/** What a survey and its slide are called where nothing names them. */
export interface Labels {
  /** The survey's id. */
  readonly id: string;
  /** The slide's name. */
  readonly name: string;
  /** The date of the survey, ISO 8601. */
  readonly taken: string;
}

export interface FromCsv {
  readonly inspection: Inspection;
  /** In sentences: values that stand before others, and a unit taken from the slide. */
  readonly assumed: readonly string[];
}

/** The log's survey, with its lengths in the units of the inspection that it is added to. */
export function surveyFromCsv(csv: CsvReadings, units: Units, labels: Labels): Outcome<Survey> {
  const { survey } = combine([statementOf(csv, units)], units);
  const parsed = surveySchema.safeParse(surveyData(csv, survey, units, labels), { reportInput: true });
  return parsed.success
    ? succeeded(parsed.data as Survey)
    : { ok: false, problem: problemOf(parsed.error.issues) };
}

/**
 * An inspection of one survey, from a log and what else is said of its slide.
 *
 * @param others what stands before the log's own data lines, from the least to the most decisive: the slide of an
 *   inspection file, then what a command or a form says. A method is not among them: reading the log needs it.
 * @param cure how to give what is missing, in the caller's words
 */
export function inspectionFromCsv(
  csv: CsvReadings,
  labels: Labels,
  others: readonly Statement[] = [],
  cure: CureForMissing = addDataLines,
): Outcome<FromCsv> {
  const { data, assumed } = draftFromCsv(csv, labels, others);
  const missing = missingFrom(
    { slide: data.slide, survey: data.surveys[0] },
    csv.method === "dial-pair" && csv.readings.some(isPair),
    cure,
  );
  if (missing !== undefined) return { ok: false, problem: missing };
  const inspection = readInspection(data);
  return inspection.ok ? succeeded({ inspection: inspection.value, assumed }) : inspection;
}

/** An inspection file's data as far as the log and the others tell it; not checked, and parts may be missing. */
export interface Draft {
  readonly data: {
    readonly format: typeof FORMAT;
    readonly version: typeof VERSION;
    readonly slide: Plain;
    readonly surveys: readonly [Plain];
  };
  readonly assumed: readonly string[];
}

/** Puts together what is known, for an inspection that is still to be completed. */
export function draftFromCsv(csv: CsvReadings, labels: Labels, others: readonly Statement[] = []): Draft {
  const units =
    others.findLast(({ slide }) => slide?.units !== undefined)?.units ?? csv.units ?? others[0]?.units;
  const { slide, survey, overridden } = combine([statementOf(csv, units), ...others], units);
  const unitTaken =
    csv.units === undefined && units !== undefined
      ? [`The log gives no unit; its lengths are taken to be in ${units}.`]
      : [];
  return {
    data: {
      ...csv.slideData.inspection,
      format: FORMAT,
      version: VERSION,
      slide: { id: `${labels.id}-slide`, name: labels.name, ...slide },
      surveys: [surveyData(csv, survey, units, labels)],
    },
    assumed: [...unitTaken, ...overridden],
  };
}

function statementOf({ slideData, units }: CsvReadings, otherwise: Units | undefined): Statement {
  const { slide, survey } = slideData;
  return { by: "the log", units: units ?? otherwise, slide, survey };
}

function surveyData(csv: CsvReadings, said: Plain, units: Units | undefined, labels: Labels): Plain {
  const { method, readings } = csv;
  const from = csv.units ?? units;
  return {
    id: labels.id,
    taken: dateRead(readings) ?? labels.taken,
    stage: "routine",
    ...said,
    method,
    readings: from && units ? readings.map((item) => readingInUnits(item, method, from, units)) : readings,
  };
}

/** The date that the first reading carries, if its time begins with one. */
function dateRead(readings: readonly Reading[]): string | undefined {
  const date = surveySchema.shape.taken.safeParse(readings[0]?.time?.slice(0, 10));
  return date.success ? date.data : undefined;
}
