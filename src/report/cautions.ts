import type { Action, Assessment } from "../analysis/assessment.ts";

interface Caution {
  readonly applies: (assessment: Assessment) => boolean;
  readonly text: string;
}

const always = (): boolean => true;
const leadsTo =
  (action: Action) =>
  ({ verdict, likeliest }: Assessment): boolean =>
    action === (verdict === "measure-more" ? likeliest : verdict);
const adjusts = leadsTo("adjust-nut");

export const HOLDS_LOAD =
  "A screw that holds up a load is a safety part: let a competent person inspect it to the maker's limits and local rules before it is used.";
export const ISOLATE = "Isolate the machine before hands go near the screw.";
export const MAKER_FIRST = "The maker's figures and local codes come before any default used here.";

/** In the order of the report: what may hurt somebody first. */
const CAUTIONS: readonly Caution[] = [
  {
    applies: ({ settings }) => settings.holdsLoad,
    text: HOLDS_LOAD,
  },
  { applies: always, text: ISOLATE },
  {
    applies: adjusts,
    text: "A nut with its clearance taken up can seize at the tight spot: run the whole travel by hand before power.",
  },
  {
    applies: leadsTo("replace-nuts"),
    text: "New nuts can seize at the tight spot: run the whole travel by hand before power.",
  },
  {
    applies: always,
    text: "Lost motion with a cutter that pulls the work (climb milling) is dangerous.",
  },
  {
    applies: leadsTo("remake-screw"),
    text: "Before parts are made, confirm at the tight and at the loosest spot by a second way of measuring, or measure the thread there: a loose gib, uneven drag or a nut bracket out of line can look like a worn screw.",
  },
  {
    applies: (assessment) => adjusts(assessment) && !Number.isFinite(assessment.settings.takeUpLeft),
    text: "How much the nut can still take up is not known; the advice holds if it has enough.",
  },
  {
    applies: ({ endFloat }) => endFloat === null,
    text: "End float was not measured, so clearance in the nut and in the thrust bearing cannot be told apart.",
  },
  { applies: always, text: MAKER_FIRST },
];

/** The cautions that belong to this assessment, one sentence or two each. */
export function cautionsOf(assessment: Assessment): readonly string[] {
  return CAUTIONS.filter(({ applies }) => applies(assessment)).map(({ text }) => text);
}
