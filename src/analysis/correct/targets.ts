import { isPositioning } from "../../inspection/readingShapes.ts";
import type { PositioningReading, Reading } from "../../inspection/schema.ts";
import { groupByPosition } from "./samePlace.ts";

/** A positioning reading with its index among all readings of the survey (0-based, file order). */
export interface TargetReading {
  readonly item: PositioningReading;
  readonly index: number;
}

/** A target position with its readings from either side, without struck ones. */
export interface Target {
  readonly position: number;
  readonly advancing: readonly TargetReading[];
  readonly retracting: readonly TargetReading[];
}

/** The readings from both sides in one run. */
export interface ReadingPair {
  readonly advancing: TargetReading;
  readonly retracting: TargetReading;
}

/** The targets of a positioning survey in order of position, in millimetres; none for other methods. */
export function targetsOf(readings: readonly Reading[]): readonly Target[] {
  const counted = readings.flatMap((item, index) =>
    isPositioning(item) && item.excluded === undefined ? [{ item, index }] : [],
  );
  return groupByPosition(counted, ({ item }) => item.target).map((group) => ({
    position: group[0].item.target,
    advancing: group.filter(({ item }) => item.direction === "advancing"),
    retracting: group.filter(({ item }) => item.direction === "retracting"),
  }));
}

/**
 * Pairs the readings from both sides by run. If a run was given twice, the first from one side goes with the first from
 * the other. A reading without a partner is in no pair.
 */
export function pairsAt({ advancing, retracting }: Target): readonly ReadingPair[] {
  const unpaired = [...retracting];
  return advancing.flatMap((reading) => {
    const found = unpaired.findIndex(({ item }) => item.run === reading.item.run);
    return found === -1 ? [] : [{ advancing: reading, retracting: unpaired.splice(found, 1)[0] }];
  });
}
