import { readingInUnits } from "../inspection/metric.ts";
import type { PlainObject } from "../inspection/plainData.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import { isPair } from "../inspection/readingShapes.ts";
import { FORMAT, type PartialInspection, type Reading, surveySchema, VERSION } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";
import { addDataLines, type CureForMissing, missingFrom, type Wanted } from "./missing.ts";
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

export interface FromCsv<Made> {
  readonly inspection: Made;
  /** In sentences: values that stand before others, and a unit taken from the slide. */
  readonly assumed: readonly string[];
}

/**
 * An inspection of one survey, from a log and what else is said of its slide.
 *
 * @param wanted how much of an inspection has to come of it
 * @param others what stands before the log's own data lines, from the least to the most decisive: the slide of an
 *   inspection file, then what a command or a form says. A method is not among them: reading the log needs it.
 * @param cure how to give what is missing, in the caller's words
 */
export function inspectionFromCsv<Made extends PartialInspection>(
  csv: CsvReadings,
  labels: Labels,
  wanted: Wanted<Made>,
  others: readonly Statement[] = [],
  cure: CureForMissing = addDataLines,
): Outcome<FromCsv<Made>> {
  const units =
    others.findLast(({ slide }) => slide?.units !== undefined)?.units ?? csv.units ?? others[0]?.units;
  const { slide, survey, overridden } = combine([statementOf(csv, units), ...others], units);
  const whole = surveyData(csv, survey, units, labels);
  const inDivisions = csv.method === "dial-pair" && csv.readings.some(isPair);
  const missing = missingFrom({ slide, survey: whole }, wanted, inDivisions, cure);
  if (missing !== undefined) return { ok: false, problem: missing };
  const inspection = wanted.read({
    ...csv.slideData.inspection,
    format: FORMAT,
    version: VERSION,
    slide: { id: `${labels.id}-slide`, name: labels.name, ...slide },
    surveys: [whole],
  });
  const unitTaken =
    csv.units === undefined && units !== undefined
      ? [`The log gives no unit; its lengths are taken to be in ${units}.`]
      : [];
  return inspection.ok
    ? succeeded({ inspection: inspection.value, assumed: [...unitTaken, ...overridden] })
    : inspection;
}

function statementOf({ slideData, units }: CsvReadings, otherwise: Units | undefined): Statement {
  const { slide, survey } = slideData;
  return { by: "the log", units: units ?? otherwise, slide, survey };
}

function surveyData(
  csv: CsvReadings,
  said: PlainObject,
  units: Units | undefined,
  labels: Labels,
): PlainObject {
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
