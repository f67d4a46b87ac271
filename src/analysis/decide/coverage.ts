import { LEAST_STATIONS } from "../../inspection/leastStations.ts";
import type { Station } from "../correct/stations.ts";
import type { Interval, Settings } from "./settings.ts";

/** Floating-point error of distances that are equal, in millimetres. */
const TOLERANCE = 1e-9;

export interface Coverage {
  readonly enoughStations: boolean;
  /** Intervals of the working range farther than the engaged length from every station. */
  readonly gaps: readonly Interval[];
  /** Ends of the travel with no station within half the engaged length. */
  readonly unreadEnds: readonly number[];
}

/** Whether there are enough stations, and one near enough to every place, to give a verdict. */
export function coverageOf(stations: readonly Station[], settings: Settings): Coverage {
  const { travel, workingRange, engagedLength } = settings;
  const positions = stations.map((station) => station.position);
  const gaps: Interval[] = [];
  let covered = workingRange.from;
  for (const at of positions) {
    if (at - engagedLength > covered + TOLERANCE)
      gaps.push({ from: covered, to: Math.min(at - engagedLength, workingRange.to) });
    covered = Math.max(covered, at + engagedLength);
    if (covered >= workingRange.to) break;
  }
  if (covered < workingRange.to - TOLERANCE) gaps.push({ from: covered, to: workingRange.to });
  const near = (end: number): boolean =>
    positions.some((at) => Math.abs(at - end) <= engagedLength / 2 + TOLERANCE);
  return {
    enoughStations: stations.length >= LEAST_STATIONS,
    gaps,
    unreadEnds: [travel.from, travel.to].filter((end) => !near(end)),
  };
}
