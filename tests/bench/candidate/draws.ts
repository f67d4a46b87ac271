import type { Spot } from "../../../src/analysis/assessment.ts";
import type { Station } from "../../../src/analysis/correct/stations.ts";
import type { Interval } from "../../../src/analysis/decide/settings.ts";
import type { Random } from "../../../src/analysis/statistics/random.ts";

/** What a model of the profile is given; lengths in millimetres. */
export interface ProfileData {
  readonly stations: readonly Station[];
  readonly travel: Interval;
  readonly workingRange: Interval;
  readonly engagedLength: number;
  readonly limit: number;
  /** The graduation that readings are rounded to, and how many roundings one lost motion carries. */
  readonly resolution: number;
  readonly roundings: 1 | 2;
}

/** One profile of lost motion that the readings allow. */
export interface ProfileDraw {
  /** Lost motion at each of the draws' positions, end float included. */
  readonly backlash: Float64Array;
  /** Least over the travel. */
  readonly tight: Spot;
  /** Greatest over the working range. */
  readonly loose: Spot;
  readonly repeatability: number;
  /** Standard deviation of what stations add that repeats there do not show, such as a wobble once per turn. */
  readonly stationEffect: number;
}

/** Joint draws of the whole profile, all of the same weight. */
export interface ProfileDraws {
  readonly positions: Float64Array;
  readonly draws: readonly ProfileDraw[];
  /** Posterior chance that the profile is not the same everywhere. */
  readonly unevenChance: number;
  /** How far runs of the sampler disagree, from 0 for not at all to 1; where a model has no such runs, undefined. */
  readonly convergence?: number | undefined;
}

/** From readings to draws of the profile. */
export type ProfileModel = (data: ProfileData, random: Random) => ProfileDraws;

const GRID_STEPS = 100;

/** Positions at which profiles are kept: evenly spaced over the travel, the stations, and the working range's ends. */
export function gridOf(data: ProfileData): Float64Array {
  const { travel, workingRange, stations } = data;
  const wanted = [workingRange.from, workingRange.to];
  for (let step = 0; step <= GRID_STEPS; step++) {
    wanted.push(travel.from + ((travel.to - travel.from) * step) / GRID_STEPS);
  }
  for (const { position } of stations) {
    if (position >= travel.from && position <= travel.to) wanted.push(position);
  }
  wanted.sort((a, b) => a - b);
  const least = (travel.to - travel.from) * 1e-6;
  return Float64Array.from(wanted.filter((at, index) => index === 0 || at - wanted[index - 1] > least));
}

/** The least value over the travel and the greatest over the working range, among the grid's positions. */
export function extremes(
  positions: Float64Array,
  backlash: Float64Array,
  workingRange: Interval,
): { readonly tight: Spot; readonly loose: Spot } {
  let tight = { position: positions[0], backlash: Number.POSITIVE_INFINITY };
  let loose = { position: workingRange.from, backlash: Number.NEGATIVE_INFINITY };
  for (let i = 0; i < positions.length; i++) {
    const position = positions[i];
    const value = backlash[i];
    if (value < tight.backlash) tight = { position, backlash: value };
    if (value > loose.backlash && position >= workingRange.from && position <= workingRange.to) {
      loose = { position, backlash: value };
    }
  }
  return { tight, loose };
}
