import { mean, sumNthPowerDeviations } from "simple-statistics";
import type { LostMotion } from "./corrections.ts";
import { groupByPosition } from "./samePlace.ts";

/** A place where readings were taken; lengths in millimetres. Positions within 0.001 mm are one station. */
export interface Station {
  readonly position: number;
  readonly mean: number;
  /** Sum of squared deviations of its readings from their mean, in mm². */
  readonly squares: number;
  readonly readings: readonly LostMotion[];
}

/** Groups corrected readings into stations, in order of position. */
export function stationsOf(readings: readonly LostMotion[]): readonly Station[] {
  return groupByPosition(readings, ({ position }) => position).map((readings) => {
    const values = readings.map((reading) => reading.value);
    return {
      position: mean(readings.map((reading) => reading.position)),
      mean: mean(values),
      squares: sumNthPowerDeviations(values, 2),
      readings,
    };
  });
}
