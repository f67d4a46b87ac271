import type { Assessment, Estimate, Finding, ProfilePoint, Spot } from "../assessment.ts";
import type { EndFloat } from "../correct/endFloat.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { canBeSettled, chooseVerdict, decidingMargin } from "./chooseVerdict.ts";
import type { Coverage } from "./coverage.ts";
import { chancesOf, type Extremes, marginsOf, removedByNewNuts, takenUp } from "./decision.ts";
import { removedEverywhere, worstLeft } from "./samplePosterior.ts";
import type { Settings } from "./settings.ts";
import { type Budget, conformanceOf } from "./uncertainty.ts";

/** What readings come to as far as a decision rests on it. Limit, running clearance and take-up left do not enter. */
export interface PosteriorSummary {
  readonly extremes: readonly Extremes[];
  readonly endFloat: Pick<EndFloat, "measured">;
  readonly coverage: Coverage;
  /** One standard deviation of a reading, and of its rounding. */
  readonly repeatability: number;
  readonly rounding: number;
  readonly budget: Budget;
  /** Greatest lost motion over the working range. */
  readonly greatest: Estimate;
  readonly profile: readonly ProfilePoint[];
  readonly loosestSpot: Spot;
}

/** The part of an assessment that limit, running clearance and take-up left have a say in. */
export type DecisionResult = Pick<
  Assessment,
  | "settings"
  | "verdict"
  | "reasons"
  | "chances"
  | "likeliest"
  | "conformance"
  | "takeUp"
  | "afterAdjusting"
  | "afterNewNuts"
  | "profileAfterAdjusting"
  | "canBeSettled"
  | "checks"
>;

/** The verdict with its chances and what repairs leave. Lengths in millimetres. */
export function decideFromPosterior(
  grounds: PosteriorSummary,
  settings: Settings,
  checks: readonly Finding[],
): DecisionResult {
  const { extremes, endFloat, coverage, repeatability, rounding, loosestSpot } = grounds;
  const margin = decidingMargin(
    extremes.map((each) => marginsOf(each, settings)),
    settings,
  );
  const settled = canBeSettled(margin, repeatability, rounding);
  const chances = chancesOf(extremes, settings);
  const ruling = chooseVerdict({ chances, endFloat }, settings, coverage, checks, settled);
  const lessEverywhere = estimateOf(removedEverywhere(grounds, settings)).value;
  const left = (repair: typeof takenUp) => ({
    worst: estimateOf(worstLeft(grounds, settings, repair)),
    position: loosestSpot.position,
  });
  return {
    settings,
    ...ruling,
    conformance: conformanceOf(grounds.greatest.value, grounds.budget.combined, settings.limit),
    takeUp: estimateOf(extremes.map((each) => each.tight - settings.runningClearance)),
    afterAdjusting: left(takenUp),
    afterNewNuts: left(removedByNewNuts),
    profileAfterAdjusting: grounds.profile.map(({ position, backlash }) => ({
      position,
      backlash: backlash - lessEverywhere,
    })),
    canBeSettled: !ruling.reasons.includes("at-the-limit"),
    checks,
  };
}
