import { readInspection, readPartialInspection } from "../inspection/open.ts";
import { type PlainObject, valueAt } from "../inspection/plainData.ts";
import type { Outcome, Problem } from "../inspection/problem.ts";
import type { Inspection, PartialInspection } from "../inspection/schema.ts";

/** What an inspection may be unable to do without, and a log may not say. */
interface Needed {
  readonly key: string;
  readonly name: string;
  /** A value to show how the line is written. */
  readonly example: string;
  /** Whether only readings in the divisions of a dial need it. */
  readonly ofDial?: true;
}

const UNITS: Needed = { key: "slide.units", name: "unit", example: "mm" };

/** What a measuring plan cannot do without. */
const FOR_PLAN: readonly Needed[] = [
  UNITS,
  { key: "slide.travel.from", name: "start of the travel", example: "0" },
  { key: "slide.travel.to", name: "end of the travel", example: "600" },
  { key: "slide.screw.lead", name: "lead", example: "4" },
];

const FOR_ASSESSMENT: readonly Needed[] = [
  ...FOR_PLAN,
  { key: "slide.backlashLimit", name: "limit on lost motion", example: "0.15" },
  {
    key: "survey.dial.travelPerDivision",
    name: "travel for one division of the dial",
    example: "0.02",
    ofDial: true,
  },
];

/** How much of an inspection is needed, and what reads data that have it. */
export interface Wanted<Made extends PartialInspection> {
  readonly needed: readonly Needed[];
  readonly read: (data: unknown) => Outcome<Made>;
}

/** An inspection that can be assessed. */
export const WHOLE: Wanted<Inspection> = { needed: FOR_ASSESSMENT, read: readInspection };

/** One that can be kept as a file: its lengths need their unit, and all else may be said later. */
export const PARTLY: Wanted<PartialInspection> = { needed: [UNITS], read: readPartialInspection };

/** Says how what is missing, by its dotted names, can be given. */
export type CureForMissing = (keys: readonly string[]) => string;

/** The lines that can be added to the log itself. */
export const addDataLines: CureForMissing = (keys) => {
  const lines = FOR_ASSESSMENT.filter(({ key }) => keys.includes(key)).map(
    ({ key, example }) => `"${key}: ${example}"`,
  );
  return `Add above the headings ${lines.length === 1 ? "a line" : "lines"} such as ${listed(lines)}.`;
};

/** What is missing from the data put together for an inspection, named all at once. */
export function missingFrom(
  data: { readonly slide: PlainObject; readonly survey: PlainObject | undefined },
  { needed }: Pick<Wanted<PartialInspection>, "needed">,
  inDivisions: boolean,
  cure: CureForMissing,
): Problem | undefined {
  return firstMissing(
    needed.filter(({ ofDial }) => ofDial === undefined || inDivisions),
    data,
    cure,
  );
}

/** What is missing from a slide that readings are to be planned for, named all at once. */
export function missingFromPlan(slide: PlainObject, cure: CureForMissing): Problem | undefined {
  return firstMissing(FOR_PLAN, { slide }, cure);
}

function firstMissing(
  needed: readonly Needed[],
  data: PlainObject,
  cure: CureForMissing,
): Problem | undefined {
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
