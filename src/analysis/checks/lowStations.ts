import { roundingVariance, tailProbability } from "../correct/repeatability.ts";
import type { Station } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Surveyed } from "./check.ts";

/**
 * A station below both of those beside it, by more than scatter and the rounding of each bring about: two normal
 * differences, one way, each at the rate that `isTooRare` states for as many looks as stations have two beside them.
 */
export interface LowStation {
  readonly station: Station;
  /** From the station before it to the one after. */
  readonly span: number;
}

/** Every such station, in order of position. */
export function lowStations({ corrected, clean, scatter }: Surveyed): readonly LowStation[] {
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
