import type { Assessment, Estimate } from "../../analysis/assessment.ts";
import { removedByTakeUp } from "../../analysis/decide/decision.ts";
import type { Interval } from "../../analysis/decide/settings.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { evennessOf } from "../evenness.ts";
import { heightAt } from "../heightAt.ts";
import { linesAbove } from "../linesAbove.ts";

/** The clearance of the nut at a place, in millimetres. */
export interface NutClearance {
  /** The part that is the same everywhere, as at the tight spot. */
  readonly uniform: number;
  /** The part that the wear of the screw adds there. */
  readonly uneven: number;
}

/** One place along the travel according to an assessment. Lengths in millimetres. */
export interface NutPlace {
  readonly position: number;
  readonly lostMotion: Estimate;
  /** Lost motion left there after adjusting, or with new nuts if the nut cannot be adjusted. */
  readonly left: number;
  /** Without end float and drive play, as far as they are known. */
  readonly asItIs: NutClearance;
  readonly takenUp: NutClearance;
  /** Take-up that would leave the nut only its running clearance there; 0 if it has no more. */
  readonly fitting: number;
  /** Where the nut would bind after that take-up. */
  readonly bindsWhenFitted: readonly Interval[];
}

/**
 * The place of the nut when the slide stands at a position.
 *
 * A nut fitted to a place is taken up by its clearance there minus the running clearance. It binds wherever its
 * clearance is less than that. End float is part of both, so it cancels.
 *
 * @param position of the slide, in millimetres, within the travel
 */
export function placeAt(assessment: Assessment, position: number, lengths: Lengths): NutPlace {
  const { profile, profileAfterAdjusting, settings, tightSpot, endFloat, drivePlay } = assessment;
  const valueAt = (height: (index: number) => number): number =>
    heightAt(
      profile.map((point, index) => ({ x: point.position, y: height(index) })),
      position,
    );
  const value = valueAt((index) => profile[index]?.backlash ?? 0);
  const notOfTheNut = (endFloat?.value ?? 0) + drivePlay;
  const uniform = Math.max(0, tightSpot.backlash - notOfTheNut);
  const uneven = Math.max(0, value - tightSpot.backlash);
  const clearance = uniform + uneven;
  return {
    position,
    lostMotion: {
      value,
      low: valueAt((index) => profile[index]?.low ?? 0),
      high: valueAt((index) => profile[index]?.high ?? 0),
    },
    left: Math.max(
      0,
      valueAt((index) => profileAfterAdjusting[index]?.backlash ?? 0),
    ),
    asItIs: { uniform, uneven },
    takenUp: { uniform: uniform - removedByTakeUp(uniform, settings), uneven },
    fitting: Math.max(0, clearance - settings.runningClearance),
    bindsWhenFitted:
      evennessOf(assessment, lengths) === "uneven" && clearance > settings.runningClearance
        ? below(assessment, value - settings.runningClearance)
        : [],
  };
}

/** Intervals of the travel in which lost motion is below a level. */
function below({ profile }: Assessment, level: number): readonly Interval[] {
  const upsideDown = profile.map(({ position, backlash }) => ({ x: position, y: -backlash }));
  return linesAbove(upsideDown, -level).flatMap((part) => {
    const [first, last] = [part[0], part.at(-1)];
    return first === undefined || last === undefined ? [] : [{ from: first.x, to: last.x }];
  });
}
