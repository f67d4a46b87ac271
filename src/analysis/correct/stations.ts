import { mean, sumNthPowerDeviations } from "simple-statistics";
import type { LostMotion } from "./corrections.ts";
import { groupedByPlace } from "./samePlace.ts";

/** A place where readings were taken. Positions within a micrometre of each other are one station. */
export interface Station {
  readonly position: number;
  readonly mean: number;
  /** Sum of squares of its readings about their mean. */
  readonly squares: number;
  readonly readings: readonly LostMotion[];
}

/** Groups corrected readings into stations, in order of position. */
export function stationsOf(readings: readonly LostMotion[]): readonly Station[] {
  return groupedByPlace(readings, ({ position }) => position).map((readings) => {
    const values = readings.map((reading) => reading.value);
    return {
      position: mean(readings.map((reading) => reading.position)),
      mean: mean(values),
      squares: sumNthPowerDeviations(values, 2),
      readings,
    };
  });
}
