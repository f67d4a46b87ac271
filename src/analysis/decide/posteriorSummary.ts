import type { Survey } from "../../inspection/schema.ts";
import type { Assessment, Estimate, Finding, ProfilePoint, Spot } from "../assessment.ts";
import type { Corrected } from "../correct/corrections.ts";
import type { EndFloat } from "../correct/endFloat.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { estimateOf, estimatesAlong } from "../statistics/estimate.ts";
import { canBeSettled, chooseVerdict, leastCertainMargin } from "./chooseVerdict.ts";
import type { Coverage } from "./coverage.ts";
import {
  chancesOf,
  type Extremes,
  greatestAfterRepair,
  marginsOf,
  removedByAdjusting,
  removedByNewNuts,
  removedByTakeUp,
} from "./decision.ts";
import type { PosteriorSample } from "./samplePosterior.ts";
import type { Settings } from "./settings.ts";
import { conformanceOf, type UncertaintyBudget, uncertaintyBudget } from "./uncertainty.ts";

/** What the decision needs of a posterior sample. It does not depend on limit, running clearance or take-up left. */
export interface PosteriorSummary {
  readonly extremes: readonly Extremes[];
  readonly endFloat: Pick<EndFloat, "measured">;
  readonly coverage: Coverage;
  /** One standard deviation of a reading, and of its rounding. */
  readonly repeatability: number;
  readonly rounding: number;
  readonly budget: UncertaintyBudget;
  /** Greatest lost motion over the working range. */
  readonly greatest: Estimate;
  readonly profile: readonly ProfilePoint[];
  readonly loosestSpot: Spot;
}

/** The part of an assessment that depends on limit, running clearance and take-up left. */
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

/** Summarises a posterior sample for the decision. Lengths in millimetres. */
export function summarisePosterior(
  { profile, extremes, endFloat, stations, repeatability }: PosteriorSample,
  survey: Survey,
  corrected: Corrected,
  settings: Settings,
  coverage: Coverage,
): PosteriorSummary {
  const points = pointsOf(profile);
  const greatest = estimateOf(profile.draws.map((draw) => draw.loose.backlash));
  // A peak between stations or a wobble rises above the median curve: the loosest spot takes the draws' greatest.
  const loosestSpot = { position: positionOfHighest(points, settings), backlash: greatest.value };
  return {
    extremes,
    endFloat: { measured: endFloat.measured },
    coverage,
    repeatability,
    rounding: corrected.resolution.step * Math.sqrt(corrected.roundings / 12),
    budget: uncertaintyBudget(profile, loosestSpot, stations, corrected, survey),
    greatest,
    profile: points,
    loosestSpot,
  };
}

function pointsOf({ positions, draws }: ProfileDraws): readonly ProfilePoint[] {
  const curves = draws.map(({ backlash }) => backlash);
  return estimatesAlong(curves, positions.length).map(({ value, low, high }, i) => ({
    position: positions[i],
    backlash: value,
    low,
    high,
  }));
}

function positionOfHighest(points: readonly ProfilePoint[], { workingRange }: Settings): number {
  const within = points.filter(
    ({ position }) => position >= workingRange.from && position <= workingRange.to,
  );
  return within.reduce((a, b) => (b.backlash > a.backlash ? b : a)).position;
}

/** The verdict with its chances, and what each repair leaves. Lengths in millimetres. */
export function decideFromPosterior(
  summary: PosteriorSummary,
  settings: Settings,
  checks: readonly Finding[],
): DecisionResult {
  const { extremes, endFloat, coverage, repeatability, rounding, loosestSpot } = summary;
  const margin = leastCertainMargin(
    extremes.map((each) => marginsOf(each, settings)),
    settings,
  );
  const isSettleable = canBeSettled(margin, repeatability, rounding);
  const chances = chancesOf(extremes, settings);
  const choice = chooseVerdict({ chances, endFloat }, settings, coverage, checks, isSettleable);
  const removed = estimateOf(removedByAdjusting(extremes, settings)).value;
  const after = (repair: typeof removedByTakeUp) => ({
    worst: estimateOf(greatestAfterRepair(extremes, settings, repair)),
    position: loosestSpot.position,
  });
  return {
    settings,
    ...choice,
    conformance: conformanceOf(summary.greatest.value, summary.budget.combined, settings.limit),
    takeUp: estimateOf(extremes.map((each) => each.tight - settings.runningClearance)),
    afterAdjusting: after(removedByTakeUp),
    afterNewNuts: after(removedByNewNuts),
    profileAfterAdjusting: summary.profile.map(({ position, backlash }) => ({
      position,
      backlash: backlash - removed,
    })),
    canBeSettled: !choice.reasons.includes("at-the-limit"),
    checks,
  };
}
