import { ACTIONS, type Action, type Chances } from "../assessment.ts";
import type { Settings } from "./settings.ts";

/** What the rule of decision needs of one draw, or of one profile that is known exactly. In millimetres. */
export interface Extremes {
  /** Greatest lost motion over the working range, without end float (and without drive play, for pairs). */
  readonly worst: number;
  /** Least lost motion over the travel, without the same. */
  readonly tight: number;
  readonly endFloat: number;
  /** Part of every pair reading, removed with the end float; 0 where readings do not carry it. */
  readonly drivePlay: number;
}

/** How far each question of the rule is from changing its answer, in millimetres; positive means yes. */
export interface Margins {
  /** Within the limit as it stands? */
  readonly asFound: number;
  /** Within the limit once end float and drive play are corrected? */
  readonly withEndFloat: number;
  /** Would taking up everything bring it within the limit? */
  readonly withTakeUp: number;
  /** Can the nut take up as much as is needed? */
  readonly takeUpLeft: number;
  /** Is the nut's wear within its limit? */
  readonly wear: number;
}

/** End float left after the thrust bearing is set, in millimetres. */
export function endFloatLeft(endFloat: number, settings: Settings): number {
  return Math.min(endFloat, settings.endFloatAttainable);
}

/** Whether parts in perfect order could meet the limit. */
export function isLimitAttainable(settings: Settings): boolean {
  return atLeastZero(settings.limit - settings.runningClearance - settings.endFloatAttainable);
}

/** The margins of one draw. */
export function marginsOf(extremes: Extremes, settings: Settings): Margins {
  const { limit, runningClearance } = settings;
  const left = endFloatLeft(extremes.endFloat, settings);
  return {
    asFound: limit - (extremes.worst + extremes.endFloat + extremes.drivePlay),
    withEndFloat: limit - (extremes.worst + left),
    withTakeUp: limit - (extremes.worst - extremes.tight + runningClearance + left),
    takeUpLeft: settings.takeUpLeft - (extremes.worst + left - limit),
    wear: settings.wearLimit - (extremes.tight + settings.takeUpUsed - settings.clearanceNew),
  };
}

/** The rule of decision for one profile that is known exactly. */
export function decide(extremes: Extremes, settings: Settings): Action {
  const margins = marginsOf(extremes, settings);
  if (atLeastZero(margins.asFound)) return "leave-alone";
  if (atLeastZero(margins.withEndFloat)) return "correct-end-float";
  if (!atLeastZero(margins.withTakeUp)) return "remake-screw";
  const canAdjust = settings.adjustable && atLeastZero(margins.takeUpLeft) && atLeastZero(margins.wear);
  return canAdjust ? "adjust-nut" : "replace-nuts";
}

/** Equality counts as met: a picometre, which floating-point rounding may cause, is ignored. */
function atLeastZero(margin: number): boolean {
  return margin >= -1e-9;
}

/** The share of the draws in each class. */
export function chancesOf(draws: readonly Extremes[], settings: Settings): Chances {
  const counts = new Map<Action, number>();
  for (const each of draws) {
    const action = decide(each, settings);
    counts.set(action, (counts.get(action) ?? 0) + 1);
  }
  return Object.fromEntries(
    ACTIONS.map((action) => [action, (counts.get(action) ?? 0) / draws.length]),
  ) as Record<Action, number>;
}

/** How much new nuts fitted to this screw remove, in millimetres: all but the running clearance. */
export function removedByNewNuts(tight: number, settings: Settings): number {
  return Math.max(0, tight - settings.runningClearance);
}

/**
 * How much taking up the nut removes, in millimetres: as much as new nuts would, up to the take-up left in the nut.
 * For a nut that cannot be adjusted it is what new nuts would remove.
 *
 * @param tight lost motion at the tight spot without end float and drive play, in millimetres
 */
export function removedByTakeUp(tight: number, settings: Settings): number {
  const left = settings.adjustable ? settings.takeUpLeft : Number.POSITIVE_INFINITY;
  return Math.min(removedByNewNuts(tight, settings), left);
}

/**
 * Greatest lost motion after a repair and after correcting the end float, in millimetres, one for each draw.
 *
 * @param removedBy how much the repair removes, given the lost motion at the tight spot without end float
 */
export function greatestAfterRepair(
  draws: readonly Extremes[],
  settings: Settings,
  removedBy: (tight: number, settings: Settings) => number,
): readonly number[] {
  return draws.map((each) =>
    Math.max(0, each.worst - removedBy(each.tight, settings) + endFloatLeft(each.endFloat, settings)),
  );
}

/** How much taking up the nut and correcting the end float remove everywhere, in millimetres, one for each draw. */
export function removedByAdjusting(draws: readonly Extremes[], settings: Settings): readonly number[] {
  return draws.map(
    (each) =>
      removedByTakeUp(each.tight, settings) +
      each.endFloat +
      each.drivePlay -
      endFloatLeft(each.endFloat, settings),
  );
}
