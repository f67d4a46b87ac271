import { roundingVariance, tailProbability } from "../correct/repeatability.ts";
import type { Station } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { CheckInput } from "./check.ts";

/** A station below both of its neighbours. */
export interface LowStation {
  readonly station: Station;
  /** Distance from the station before it to the one after, in millimetres. */
  readonly span: number;
}

/**
 * Stations below both of their neighbours by more than scatter and rounding explain: two one-sided normal differences,
 * one look for each station with two neighbours. In order of position.
 */
export function lowStations({ corrected, clean, scatter }: CheckInput): readonly LowStation[] {
  const rounding = roundingVariance(corrected);
  const isBelow = (station: Station, other: Station): boolean => {
    const times = 1 / station.readings.length + 1 / other.readings.length;
    return isSignificant(
      tailProbability(other.mean - station.mean, scatter, times, 2 * rounding),
      clean.length - 2,
    );
  };
  return clean.slice(1, -1).flatMap((station, i) => {
    const [before, after] = [clean[i], clean[i + 2]];
    if (!isBelow(station, before) || !isBelow(station, after)) return [];
    return [{ station, span: after.position - before.position }];
  });
}
