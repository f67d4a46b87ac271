import { ACTIONS, type Action } from "../assessment.ts";
import { SURE_ENOUGH } from "./chooseVerdict.ts";
import { type Extremes, endFloatLeft, marginsOf } from "./decision.ts";
import type { Settings } from "./settings.ts";

/** Which limits a step keeps, or one before it that is less work. Millimetres. */
export interface SmallestLimit {
  readonly action: Action;
  /** The smallest limit that it keeps in more than one draw of twenty. */
  readonly possible: number;
  /** The smallest limit that it keeps in 95 % of the draws. */
  readonly sure: number;
}

/**
 * The smallest limit that each step would keep, from least to most work. It is the rule of decision asked the other
 * way round: for every draw the limit from which on the rule comes to this step or to one before it. A step that keeps
 * no smaller limit than the one before it is left out: it would be work for nothing.
 */
export function smallestLimits(extremes: readonly Extremes[], settings: Settings): readonly SmallestLimit[] {
  const thresholds = extremes.map((each) => thresholdsOf(each, settings));
  const least = settings.runningClearance + settings.endFloatAttainable;
  const found = ACTIONS.map((action, i): SmallestLimit => {
    const limits = Float64Array.from(thresholds, (each) => Math.max(least, each[i])).sort();
    return { action, possible: met(limits, 1 - SURE_ENOUGH), sure: met(limits, SURE_ENOUGH) };
  });
  return found.filter(({ sure }, i) => i === 0 || sure < found[i - 1].sure);
}

/** The limit from which on the rule comes to each action, or to one before it; the last is always possible. */
function thresholdsOf(found: Extremes, settings: Settings): readonly number[] {
  const { worst, tight } = found;
  const left = endFloatLeft(found.endFloat, settings);
  const asFound = worst + found.endFloat + found.drivePlay;
  const withEndFloat = Math.min(asFound, worst + left);
  const withNuts = Math.min(withEndFloat, worst - tight + settings.runningClearance + left);
  const adjustingServes = settings.adjustable && marginsOf(found, settings).wear >= 0;
  const withTakeUp = adjustingServes
    ? Math.max(withNuts, Math.min(withEndFloat, worst + left - settings.takeUpLeft))
    : withEndFloat;
  return [asFound, withEndFloat, withTakeUp, withNuts, 0];
}

/** The smallest of the limits, in order, that at least so great a share of them does not exceed. */
function met(limits: Float64Array, share: number): number {
  return limits[Math.min(limits.length, Math.max(1, Math.ceil(share * limits.length - 1e-9))) - 1];
}
