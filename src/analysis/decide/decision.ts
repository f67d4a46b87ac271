import { ACTIONS, type Action, type Chances } from "../assessment.ts";
import type { Settings } from "./settings.ts";

/** What the rule needs to know of one profile, in millimetres. */
export interface Extremes {
  /** Greatest lost motion over the working range less end float (and drive play, for pairs). */
  readonly worst: number;
  /** Least lost motion over the travel less the same. */
  readonly tight: number;
  readonly endFloat: number;
  /** Part of every pair reading, removed with the end float; 0 where readings do not carry it. */
  readonly drivePlay: number;
}

/** How far each question of the rule is from changing its answer, in millimetres; positive means yes. */
export interface Margins {
  /** Within the limit as it stands? */
  readonly asFound: number;
  /** Within the limit once end float and drive play are put right? */
  readonly withEndFloat: number;
  /** Would taking up everything bring it within the limit? */
  readonly withTakeUp: number;
  /** Has the nut as much left to take up as it needs? */
  readonly takeUpLeft: number;
  /** Has the nut worn no further than it may? */
  readonly wear: number;
}

/** End float that is left when the thrust bearing has been put right. */
export function endFloatLeft(endFloat: number, settings: Settings): number {
  return Math.min(endFloat, settings.endFloatAttainable);
}

/** The limit is one that parts in perfect order could meet. */
export function limitAttainable(settings: Settings): boolean {
  return atLeastZero(settings.limit - settings.runningClearance - settings.endFloatAttainable);
}

export function marginsOf(found: Extremes, settings: Settings): Margins {
  const { limit, runningClearance } = settings;
  const left = endFloatLeft(found.endFloat, settings);
  return {
    asFound: limit - (found.worst + found.endFloat + found.drivePlay),
    withEndFloat: limit - (found.worst + left),
    withTakeUp: limit - (found.worst - found.tight + runningClearance + left),
    takeUpLeft: settings.takeUpLeft - (found.worst + left - limit),
    wear: settings.wearLimit - (found.tight + settings.takeUpUsed - settings.clearanceNew),
  };
}

/** The rule of decision for one profile that is known without error. */
export function decide(found: Extremes, settings: Settings): Action {
  const margins = marginsOf(found, settings);
  if (atLeastZero(margins.asFound)) return "leave-alone";
  if (atLeastZero(margins.withEndFloat)) return "correct-end-float";
  if (!atLeastZero(margins.withTakeUp)) return "remake-screw";
  const adjustingServes = settings.adjustable && atLeastZero(margins.takeUpLeft) && atLeastZero(margins.wear);
  return adjustingServes ? "adjust-nut" : "replace-nuts";
}

/** Equality counts as met, whatever binary fractions make of it: a picometre is nothing. */
function atLeastZero(margin: number): boolean {
  return margin >= -1e-9;
}

/** The share of the draws in each class. */
export function chancesOf(found: readonly Extremes[], settings: Settings): Chances {
  const counts = new Map<Action, number>();
  for (const each of found) {
    const action = decide(each, settings);
    counts.set(action, (counts.get(action) ?? 0) + 1);
  }
  return Object.fromEntries(
    ACTIONS.map((action) => [action, (counts.get(action) ?? 0) / found.length]),
  ) as Record<Action, number>;
}

/** How much new nuts fitted to this screw remove, in millimetres: all but the running clearance. */
export function removedByNewNuts(tight: number, settings: Settings): number {
  return Math.max(0, tight - settings.runningClearance);
}

/**
 * How much taking up the nut removes, in millimetres: as much as new nuts would, so far as the nut has it left. For a
 * nut that cannot be adjusted it is what new nuts would remove.
 */
export function takenUp(tight: number, settings: Settings): number {
  const left = settings.adjustable ? settings.takeUpLeft : Number.POSITIVE_INFINITY;
  return Math.min(removedByNewNuts(tight, settings), left);
}
