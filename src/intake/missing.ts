import { type Plain, valueAt } from "../inspection/parts.ts";
import type { Problem } from "../inspection/problem.ts";

/** What an assessment cannot do without and a log may not say. */
interface Needed {
  readonly key: string;
  readonly name: string;
  /** A value to show how the line is written. */
  readonly example: string;
}

const UNITS: Needed = { key: "slide.units", name: "unit", example: "mm" };

/** What a measuring plan cannot do without. */
const OF_A_PLAN: readonly Needed[] = [
  UNITS,
  { key: "slide.travel.from", name: "start of the travel", example: "0" },
  { key: "slide.travel.to", name: "end of the travel", example: "600" },
  { key: "slide.screw.lead", name: "lead", example: "4" },
];

const OF_A_SLIDE: readonly Needed[] = [
  ...OF_A_PLAN,
  { key: "slide.backlashLimit", name: "limit on lost motion", example: "0.15" },
];

const OF_A_DIAL: Needed = {
  key: "survey.dial.travelPerDivision",
  name: "travel for one division of the dial",
  example: "0.02",
};

/** Says how what is missing, by its dotted names, can be given. */
export type CureForMissing = (keys: readonly string[]) => string;

/** The lines that can be added to the log itself. */
export const addDataLines: CureForMissing = (keys) => {
  const lines = [...OF_A_SLIDE, OF_A_DIAL]
    .filter(({ key }) => keys.includes(key))
    .map(({ key, example }) => `"${key}: ${example}"`);
  return `Add above the headings ${lines.length === 1 ? "a line" : "lines"} such as ${listed(lines)}.`;
};

/** What is missing from the data put together for an inspection, named all at once. */
export function missingFrom(
  data: { readonly slide: Plain; readonly survey: Plain },
  inDivisions: boolean,
  cure: CureForMissing,
): Problem | undefined {
  return firstMissing([...OF_A_SLIDE, ...(inDivisions ? [OF_A_DIAL] : [])], data, cure);
}

/** What is missing from a slide that readings are to be planned for, named all at once. */
export function missingFromPlan(slide: Plain, cure: CureForMissing): Problem | undefined {
  return firstMissing(OF_A_PLAN, { slide }, cure);
}

function firstMissing(needed: readonly Needed[], data: Plain, cure: CureForMissing): Problem | undefined {
  const missing = needed.filter(({ key }) => valueAt(data, key) === undefined);
  const [first] = missing;
  if (first === undefined) return undefined;
  const names = missing.map(({ name }) => `the ${name}`);
  return {
    where: first.key,
    what: `${listed(names)} ${names.length === 1 ? "is" : "are"} missing`,
    cure: cure(missing.map(({ key }) => key)),
  };
}

function listed(items: readonly string[]): string {
  return items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
}
