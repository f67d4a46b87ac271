import { ACTIONS, type Action } from "../assessment.ts";
import { REQUIRED_CHANCE } from "./chooseVerdict.ts";
import { type Extremes, endFloatLeft, marginsOf } from "./decision.ts";
import type { Settings } from "./settings.ts";

/** The smallest limit that a step can meet, itself or by a step with less work. Millimetres. */
export interface SmallestLimit {
  readonly action: Action;
  /** The smallest limit that it meets in 5 % of the draws. */
  readonly possible: number;
  /** The smallest limit that it meets in 95 % of the draws. */
  readonly sure: number;
}

/**
 * The smallest limit that each step would meet, from least to most work. It is the inverse of the rule of decision: for
 * every draw, the limit from which on the rule gives this step or one before it. A step that meets no smaller limit than
 * the one before it is left out.
 */
export function smallestLimits(extremes: readonly Extremes[], settings: Settings): readonly SmallestLimit[] {
  const thresholds = extremes.map((each) => thresholdsOf(each, settings));
  const least = settings.runningClearance + settings.endFloatAttainable;
  const found = ACTIONS.map((action, i): SmallestLimit => {
    const limits = Float64Array.from(thresholds, (each) => Math.max(least, each[i])).sort();
    return {
      action,
      possible: smallestHeld(limits, 1 - REQUIRED_CHANCE),
      sure: smallestHeld(limits, REQUIRED_CHANCE),
    };
  });
  return found.filter(({ sure }, i) => i === 0 || sure < found[i - 1].sure);
}

/** The limit from which on the rule gives each action or one before it; the last action is always possible. */
function thresholdsOf(extremes: Extremes, settings: Settings): readonly number[] {
  const { worst, tight } = extremes;
  const left = endFloatLeft(extremes.endFloat, settings);
  const asFound = worst + extremes.endFloat + extremes.drivePlay;
  const withEndFloat = Math.min(asFound, worst + left);
  const withNuts = Math.min(withEndFloat, worst - tight + settings.runningClearance + left);
  const canAdjust = settings.adjustable && marginsOf(extremes, settings).wear >= 0;
  const withTakeUp = canAdjust
    ? Math.max(withNuts, Math.min(withEndFloat, worst + left - settings.takeUpLeft))
    : withEndFloat;
  return [asFound, withEndFloat, withTakeUp, withNuts, 0];
}

/** The smallest of the sorted limits that at least this share of them does not exceed. */
function smallestHeld(limits: Float64Array, share: number): number {
  return limits[Math.min(limits.length, Math.max(1, Math.ceil(share * limits.length - 1e-9))) - 1];
}
