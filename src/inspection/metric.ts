import { valueAt, withValueAt } from "./plainData.ts";
import { type Quantity, SLIDE_QUANTITIES, SURVEY_QUANTITIES } from "./quantities.ts";
import { isPair, isPositioning } from "./readingShapes.ts";
import type { Inspection, Reading, Slide, Survey } from "./schema.ts";
import { fromMillimetres, toMillimetres, type Units } from "./units.ts";

/** A slide whose lengths are all in millimetres. */
export type MetricSlide = Slide & { readonly units: "mm" };

const SLIDE_LENGTHS = lengthKeys(SLIDE_QUANTITIES);
const THREAD_LENGTHS = ["position", "thickness", "overWires", "wire"];
const SURVEY_LENGTHS = lengthKeys(SURVEY_QUANTITIES);

/** The slide with every length in millimetres. Unknown keys are unchanged. */
export function slideInMillimetres(slide: Slide): MetricSlide {
  return { ...slideLengths(slide, slide.units, "mm"), units: "mm" };
}

/** A survey in the given units, converted to millimetres; dial divisions stay divisions. */
export function surveyInMillimetres(survey: Survey, units: Units): Survey {
  return surveyInUnits(survey, units, "mm");
}

/** The whole inspection with every length in millimetres. */
export function inMillimetres(inspection: Inspection): Inspection {
  return {
    ...inspection,
    slide: slideInMillimetres(inspection.slide),
    surveys: inspection.surveys.map((survey) => surveyInMillimetres(survey, inspection.slide.units)),
  };
}

/** A survey with lengths and readings converted from one unit to another; dial divisions stay divisions. */
export function surveyInUnits(survey: Survey, from: Units, to: Units): Survey {
  const readings = survey.readings.map((item) => readingInUnits(item, survey.method, from, to));
  const thread = survey.thread?.map((place) => convertLengths(place, THREAD_LENGTHS, from, to));
  return { ...surveyLengths(survey, from, to), ...(thread && { thread }), readings };
}

/** A reading by the given method, converted from one unit to another; dial divisions stay divisions. */
export function readingInUnits(item: Reading, method: Survey["method"], from: Units, to: Units): Reading {
  if (isPositioning(item)) return convertLengths(item, ["target", "reading"], from, to);
  if (!isPair(item)) return convertLengths(item, ["position", "backlash"], from, to);
  return convertLengths(
    item,
    method === "dial-pair" ? ["position"] : ["position", "advancing", "retracting"],
    from,
    to,
  );
}

/** A slide, or part of one, with its lengths converted from one unit to another. */
export function slideLengths<Part extends object>(slide: Part, from: Units, to: Units): Part {
  return convertLengths(slide, SLIDE_LENGTHS, from, to);
}

/** A survey, or part of one, with its lengths converted, except those of readings. */
export function surveyLengths<Part extends object>(survey: Part, from: Units, to: Units): Part {
  return convertLengths(survey, SURVEY_LENGTHS, from, to);
}

function lengthKeys(quantities: readonly Quantity[]): readonly string[] {
  return quantities.filter(({ kind }) => kind === "length" || kind === "lengths").map(({ key }) => key);
}

function convertLengths<Part extends object>(
  part: Part,
  keys: readonly string[],
  from: Units,
  to: Units,
): Part {
  if (from === to) return part;
  const convert = (value: unknown): unknown =>
    typeof value === "number"
      ? withoutFloatingPointError(fromMillimetres(toMillimetres(value, from), to))
      : value;
  return keys.reduce((converted, key) => {
    const value = valueAt(converted, key);
    if (value === undefined) return converted;
    return withValueAt(converted, key, Array.isArray(value) ? value.map(convert) : convert(value));
  }, part);
}

/** Rounded to the digits that a double holds for certain. */
function withoutFloatingPointError(value: number): number {
  return Number(value.toPrecision(15));
}
