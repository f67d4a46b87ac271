import { LEAST_STATIONS } from "../../inspection/leastStations.ts";
import type { Station } from "../correct/stations.ts";
import type { Interval, Settings } from "./settings.ts";

/** What binary fractions make of distances that are equal, in millimetres. */
const NOTHING = 1e-9;

export interface Coverage {
  readonly enoughStations: boolean;
  /** Stretches of the working range further than the engaged length from every station. */
  readonly gaps: readonly Interval[];
  /** Ends of the travel with no station within half the engaged length. */
  readonly unreadEnds: readonly number[];
}

/** Whether the stations are enough, and near enough to every place, for a verdict to be given. */
export function coverageOf(stations: readonly Station[], settings: Settings): Coverage {
  const { travel, workingRange, engagedLength } = settings;
  const places = stations.map((station) => station.position);
  const gaps: Interval[] = [];
  let covered = workingRange.from;
  for (const at of places) {
    if (at - engagedLength > covered + NOTHING)
      gaps.push({ from: covered, to: Math.min(at - engagedLength, workingRange.to) });
    covered = Math.max(covered, at + engagedLength);
    if (covered >= workingRange.to) break;
  }
  if (covered < workingRange.to - NOTHING) gaps.push({ from: covered, to: workingRange.to });
  const near = (end: number): boolean =>
    places.some((at) => Math.abs(at - end) <= engagedLength / 2 + NOTHING);
  return {
    enoughStations: stations.length >= LEAST_STATIONS,
    gaps,
    unreadEnds: [travel.from, travel.to].filter((end) => !near(end)),
  };
}
