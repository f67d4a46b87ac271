import { isPositioning } from "../../inspection/readingShapes.ts";
import type { PositioningReading, Reading } from "../../inspection/schema.ts";
import { groupedByPlace } from "./samePlace.ts";

/** A reading of a true position, with its place among all readings of the survey (0-based, file order). */
export interface TargetReading {
  readonly item: PositioningReading;
  readonly index: number;
}

/** A target position with its readings from either side, struck ones left out. */
export interface Target {
  readonly position: number;
  readonly advancing: readonly TargetReading[];
  readonly retracting: readonly TargetReading[];
}

/** The readings from both sides in one run. */
export interface Partners {
  readonly advancing: TargetReading;
  readonly retracting: TargetReading;
}

/** The targets of a positioning survey in order of position; none for readings of another shape. Millimetres. */
export function targetsOf(readings: readonly Reading[]): readonly Target[] {
  const counted = readings.flatMap((item, index) =>
    isPositioning(item) && item.excluded === undefined ? [{ item, index }] : [],
  );
  return groupedByPlace(counted, ({ item }) => item.target).map((group) => ({
    position: group[0].item.target,
    advancing: group.filter(({ item }) => item.direction === "advancing"),
    retracting: group.filter(({ item }) => item.direction === "retracting"),
  }));
}

/**
 * Pairs the readings from both sides run by run. Where a run was given twice, the first from one side goes with the
 * first from the other; a reading without a partner is in no pair, and none is in two.
 */
export function partnersAt({ advancing, retracting }: Target): readonly Partners[] {
  const waiting = [...retracting];
  return advancing.flatMap((reading) => {
    const found = waiting.findIndex(({ item }) => item.run === reading.item.run);
    return found === -1 ? [] : [{ advancing: reading, retracting: waiting.splice(found, 1)[0] }];
  });
}
