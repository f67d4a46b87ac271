import type { Assessment, Estimate } from "../analysis/assessment.ts";
import { removedByTakeUp } from "../analysis/decide/decision.ts";
import type { Interval } from "../analysis/decide/settings.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "./evenness.ts";
import { heightAt } from "./heightAt.ts";
import { linesAbove } from "./linesAbove.ts";

/** What a nut has of room at a place, in millimetres. */
export interface NutClearance {
  /** The share that the nut has everywhere, as at the tight spot. */
  readonly uniform: number;
  /** The share that the wear of the screw adds there. */
  readonly uneven: number;
}

/** What an assessment says of one place along the travel. Lengths in millimetres. */
export interface NutPlace {
  readonly position: number;
  readonly lostMotion: Estimate;
  /** Lost motion that adjusting, or new nuts where the nut cannot be adjusted, would leave there. */
  readonly left: number;
  /** End float and drive play taken off, as far as they are known. */
  readonly asItIs: NutClearance;
  readonly takenUp: NutClearance;
  /** What would be taken up to leave the nut no more than its running clearance there; none where it has no more. */
  readonly fitting: number;
  /** Where the nut would have no room left were that taken up: less lost motion there than here by more than it keeps. */
  readonly bindsWhenFitted: readonly Interval[];
}

/**
 * What an assessment says of the place where the nut is when the slide stands at a position.
 *
 * A nut fitted to a place is taken up by what it has there less the running clearance. It binds wherever it has less
 * than that to give: end float is part of both, so it does not enter.
 *
 * @param position of the slide, in millimetres, within the travel
 */
export function placeAt(assessment: Assessment, position: number, lengths: Lengths): NutPlace {
  const { profile, profileAfterAdjusting, settings, tightSpot, endFloat, drivePlay } = assessment;
  const read = (height: (index: number) => number): number =>
    heightAt(
      profile.map((point, index) => ({ x: point.position, y: height(index) })),
      position,
    );
  const value = read((index) => profile[index]?.backlash ?? 0);
  const outside = (endFloat?.value ?? 0) + drivePlay;
  const uniform = Math.max(0, tightSpot.backlash - outside);
  const uneven = Math.max(0, value - tightSpot.backlash);
  const clearance = uniform + uneven;
  return {
    position,
    lostMotion: {
      value,
      low: read((index) => profile[index]?.low ?? 0),
      high: read((index) => profile[index]?.high ?? 0),
    },
    left: Math.max(
      0,
      read((index) => profileAfterAdjusting[index]?.backlash ?? 0),
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

/** The stretches of the travel whose lost motion is less than a level. */
function below({ profile }: Assessment, level: number): readonly Interval[] {
  const upsideDown = profile.map(({ position, backlash }) => ({ x: position, y: -backlash }));
  return linesAbove(upsideDown, -level).flatMap((part) => {
    const [first, last] = [part[0], part.at(-1)];
    return first === undefined || last === undefined ? [] : [{ from: first.x, to: last.x }];
  });
}
