import type { LostMotion } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import type { ProfileData } from "../../../src/analysis/profile/draws.ts";

/** Sweeps at stations of a slide of 300 mm, read to 0.01 mm, given as position and repeats. */
export function sweeps(
  stations: readonly (readonly [position: number, ...repeats: number[]])[],
  part: Partial<ProfileData> = {},
): ProfileData {
  return dataOf(
    stations.flatMap(([position, ...repeats]) => repeats.map((value) => ({ position, value, from: [0] }))),
    1,
    part,
  );
}

/** Pairs at one station, given as advancing and retracting. */
export function pairs(
  readings: readonly (readonly [advancing: number, retracting: number])[],
  part: Partial<ProfileData> = {},
): ProfileData {
  return dataOf(
    readings.map(([advancing, retracting]) => ({
      position: 0,
      value: advancing - retracting,
      from: [0],
      pair: { advancing, retracting },
    })),
    2,
    part,
  );
}

function dataOf(readings: readonly LostMotion[], roundings: 1 | 2, part: Partial<ProfileData>): ProfileData {
  return {
    stations: stationsOf(readings),
    travel: { from: 0, to: 300 },
    workingRange: { from: 0, to: 300 },
    engagedLength: 24,
    limit: 0.15,
    resolution: 0.01,
    roundings,
    ...part,
  };
}
