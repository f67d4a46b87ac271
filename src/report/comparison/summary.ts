import type { Conformance, Estimate } from "../../analysis/assessment.ts";
import type { Acceptance, Comparison, Repair, Withheld } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { evennessOf } from "../../picture/evenness.ts";
import { capitalised, conformanceWords, estimateWords, inAHundred } from "../words.ts";

const DOING: Readonly<Record<Repair, string>> = {
  adjusted: "taking up the nut",
  "parts-replaced": "fitting the new parts",
  repaired: "the repair",
};

/** The comparison of two surveys in a few plain sentences. */
export function comparisonSummary(comparison: Comparison, lengths: Lengths): string {
  return `${changeSummary(comparison, lengths)} ${acceptanceSentence(comparison, lengths)}`;
}

/** What has changed between two surveys, in a sentence or two. */
export function changeSummary(comparison: Comparison, lengths: Lengths): string {
  return [
    `${capitalised(uniformClause(comparison, lengths))}; ${unevenClause(comparison, lengths)}.`,
    ...endFloatSentence(comparison, lengths),
  ].join(" ");
}

/** The direction of a change; "none" where its interval includes zero or the written figure is zero. */
export type Direction = "less" | "more" | "none";

export function directionOf({ value, low, high }: Estimate, lengths: Lengths): Direction {
  if (lengths.figure(Math.abs(value)) === lengths.figure(0)) return "none";
  if (high < 0) return "less";
  return low > 0 ? "more" : "none";
}

/** How much it has changed, whichever way. */
function amount({ value, low, high }: Estimate, lengths: Lengths): string {
  return estimateWords(value < 0 ? { value: -value, low: -high, high: -low } : { value, low, high }, lengths);
}

/** The interval of a change that the readings do not show: `by anything from -0.01 to 0.01 mm`. */
export function unshown({ low, high }: Estimate, lengths: Lengths): string {
  return `by anything from ${lengths.figure(low)} to ${lengths.lostMotion(high)}`;
}

function uniformClause({ change, done, sameEverywhere }: Comparison, lengths: Lengths): string {
  const by = amount(change.uniform, lengths);
  const where = sameEverywhere ? "everywhere" : "at the tight spot, and not the same everywhere";
  switch (directionOf(change.uniform, lengths)) {
    case "less":
      return done === null
        ? `lost motion is less by ${by}, ${where}`
        : `${DOING[done]} removed ${by}, ${where}`;
    case "more":
      return `lost motion has grown by ${by}, ${where}`;
    case "none":
      return `the uniform part has not changed as far as the readings show (${unshown(change.uniform, lengths)})`;
  }
}

function unevenClause({ change, from, to }: Comparison, lengths: Lengths): string {
  const left = lengths.lostMotion(to.assessment.uneven.value);
  const isUneven = evennessOf(to.assessment, lengths) === "uneven";
  const wasUneven = evennessOf(from.assessment, lengths) === "uneven";
  const by = amount(change.uneven, lengths);
  switch (directionOf(change.uneven, lengths)) {
    case "less":
      return isUneven
        ? `the uneven part is less by ${by}, and ${left} of it is still there`
        : `of the uneven ${lengths.lostMotion(from.assessment.uneven.value)} the readings no longer show anything`;
    case "more":
      return `the uneven part has grown by ${by}, to ${left}`;
    case "none":
      if (isUneven) return `the uneven ${left} is still there`;
      return wasUneven
        ? `whether the uneven ${lengths.lostMotion(from.assessment.uneven.value)} is still there, the readings do not show`
        : "neither survey shows an uneven part";
  }
}

function endFloatSentence({ change: { endFloat } }: Comparison, lengths: Lengths): readonly string[] {
  if (endFloat === null) return [];
  const direction = directionOf(endFloat, lengths);
  return direction === "none"
    ? []
    : [`End float, a share of that, is ${direction} by ${amount(endFloat, lengths)}.`];
}

const WITHHELD: Readonly<Record<Withheld, string>> = {
  checks: "a check on the readings speaks against it",
  coverage: "its stations are too few or too far apart",
  "spring-loaded": "the nut's spring may hide its wear",
};

const CLAIMS: Readonly<Record<Conformance, string>> = {
  proven: "Proven: lost motion is within the limit of",
  disproven: "Proven: lost motion is over the limit of",
  "not proven": "Not proven: lost motion may be within or over the limit of",
};

/** Whether the limit is kept, as a heading. */
export function acceptanceTitle({ conformance, limit }: Acceptance, lengths: Lengths): string {
  return `${CLAIMS[conformance]} ${lengths.position(limit)}`;
}

/** The greatest lost motion in the later survey, and whether the limit is kept; if not proven, why not. */
export function acceptanceSentence({ acceptance, to }: Comparison, lengths: Lengths): string {
  const { greatest, limit, conformance, withheld } = acceptance;
  const words = conformanceWords(conformance, `the limit of ${lengths.position(limit)}`);
  const why = withheld === null ? "" : `, for ${WITHHELD[withheld]}`;
  return `In the survey "${to.id}", the greatest lost motion over the working range is ${estimateWords(greatest, lengths)}. That is ${words}${why}.`;
}

/** The chance that the limit is kept, as a sentence. */
export function acceptanceChance({ acceptance }: Comparison): string {
  return `The chance that it is kept: ${inAHundred(acceptance.chance)}.`;
}
