import { mean } from "simple-statistics";
import type { LostMotion } from "./corrected.ts";

/** A place where readings were taken. Positions within a micrometre of each other are one station. */
export interface Station {
  readonly position: number;
  readonly mean: number;
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
  return groups.map((group) => ({
    position: mean(group.map((reading) => reading.position)),
    mean: mean(group.map((reading) => reading.value)),
    readings: group,
  }));
}
