import { mean, sumNthPowerDeviations } from "simple-statistics";
import type { LostMotion } from "./corrected.ts";

/** A place where readings were taken. Positions within a micrometre of each other are one station. */
export interface Station {
  readonly position: number;
  readonly mean: number;
  /** Sum of squares of its readings about their mean. */
  readonly squares: number;
  readonly readings: readonly LostMotion[];
}

export const SAME_STATION = 0.001;

/** Groups corrected readings into stations, in order of position. */
export function stationsOf(readings: readonly LostMotion[]): readonly Station[] {
  const sorted = [...readings].sort((a, b) => a.position - b.position);
  const groups: LostMotion[][] = [];
  for (const reading of sorted) {
    const last = groups.at(-1);
    const first = last?.[0];
    if (last && first && reading.position - first.position <= SAME_STATION) last.push(reading);
    else groups.push([reading]);
  }
  return groups.map((readings) => {
    const values = readings.map((reading) => reading.value);
    return {
      position: mean(readings.map((reading) => reading.position)),
      mean: mean(values),
      squares: sumNthPowerDeviations(values, 2),
      readings,
    };
  });
}
