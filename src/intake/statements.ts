import { slideLengths, surveyLengths } from "../inspection/metric.ts";
import { merged, type PlainObject, valueAt } from "../inspection/plainData.ts";
import { type Quantity, SLIDE_QUANTITIES, SURVEY_QUANTITIES } from "../inspection/quantities.ts";
import { roundTo, type Units } from "../inspection/units.ts";

/** What one source says of a slide and a survey, under the schema's names; any part may be missing. */
export interface Statement {
  /** Who says so, as a sentence names it: `the command`, `the file`. */
  readonly by: string;
  /** The unit of its lengths; undefined only where no source gives one. */
  readonly units: Units | undefined;
  readonly slide?: PlainObject;
  readonly survey?: PlainObject;
}

export interface Combined {
  readonly slide: PlainObject;
  readonly survey: PlainObject;
  /** A sentence for each value that stands before another: `The limit is 0.15 mm, as the command says (…).` */
  readonly overridden: readonly string[];
}

/**
 * Puts together what several sources say, in one unit.
 *
 * @param statements from the least to the most decisive
 */
export function combine(statements: readonly Statement[], units: Units | undefined): Combined {
  const inUnits = statements.map(({ by, units: from, slide = {}, survey = {} }) => ({
    by,
    slide: from && units ? slideLengths(slide, from, units) : slide,
    survey: from && units ? surveyLengths(survey, from, units) : survey,
  }));
  const slides = inUnits.map(({ by, slide }) => ({ by, data: slide }));
  const surveys = inUnits.map(({ by, survey }) => ({ by, data: survey }));
  return {
    slide: { ...together(slides), ...(units && { units }) },
    survey: together(surveys),
    overridden: [
      ...overriding(slides, SLIDE_QUANTITIES, units),
      ...overriding(surveys, SURVEY_QUANTITIES, units),
    ],
  };
}

interface Part {
  readonly by: string;
  readonly data: PlainObject;
}

function together(parts: readonly Part[]): PlainObject {
  return parts.reduce<PlainObject>((all, { data }) => merged(all, data), {});
}

/** A sentence for each quantity of which the last that speaks says other than one before it. */
function overriding(
  parts: readonly Part[],
  quantities: readonly Quantity[],
  units: Units | undefined,
): readonly string[] {
  return quantities.flatMap((quantity) => {
    const said = parts.flatMap(({ by, data }) => {
      const value = valueAt(data, quantity.key);
      return value === undefined ? [] : [{ by, words: inWords(quantity, value, units) }];
    });
    const last = said.at(-1);
    const others = said.filter(({ words }) => words !== last?.words);
    if (last === undefined || others.length === 0 || quantity.key === "units") return [];
    const contrary = others.map(({ by, words }) => `${by} says ${words}`).join(", ");
    return [`${subjectOf(quantity)} ${last.words}, as ${last.by} says (${contrary}).`];
  });
}

function subjectOf({ kind, name }: Quantity): string {
  return kind === "flag" ? `${name.charAt(0).toUpperCase()}${name.slice(1)}:` : `The ${name} is`;
}

/** A value as it was stated, without the traces of binary fractions that conversion leaves. */
function inWords({ kind }: Quantity, value: unknown, units: Units | undefined): string {
  if (typeof value === "boolean") return value ? "yes" : "no";
  const isLength = kind === "length" || kind === "lengths";
  const figures = [value].flat().map((each) => (typeof each === "number" ? roundTo(each, 6) : each));
  return `${figures.join(" and ")}${isLength && units ? ` ${units}` : ""}`;
}
