import { mean, median } from "simple-statistics";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import { type RepeatabilityPosterior, roundingVariance, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import type { Station } from "../correct/stations.ts";
import { REQUIRED_CHANCE } from "../decide/chooseVerdict.ts";
import type { Settings } from "../decide/settings.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { interpolationAt } from "../statistics/interpolation.ts";
import type { RepeatOutlier } from "./repeatOutliers.ts";

/** Readings of stations read once that stand out from the stations beside them. */
export interface SingleReadingScreening {
  /**
   * Readings to take again if they decide the verdict: those with stations on both sides, and at an end of the travel
   * those whose chance, given the other readings, is less than a verdict's allowed error. Any other step at an end is
   * wear.
   */
  readonly toConfirm: readonly LostMotion[];
  /** Readings that the profile through the other readings does not explain. */
  readonly outliers: readonly RepeatOutlier[];
}

/** How many stations to either side are compared with a station. */
const NEIGHBOURS = 2;
/** How often a verdict may be wrong. */
const ERROR_RATE = 1 - REQUIRED_CHANCE;

/**
 * Screens the stations that were read once. Each is weighed against the others twice: first with the scatter of all
 * readings, which a mistake among them makes greater, then with scatter and profile of the others alone.
 *
 * @param clean the stations without repeat outliers
 * @param profileOf the profile sampled from some of the readings
 */
export function screenSingleReadings(
  profile: ProfileDraws,
  clean: readonly Station[],
  corrected: Corrected,
  { travel }: Pick<Settings, "travel">,
  profileOf: (readings: readonly LostMotion[]) => ProfileDraws,
): SingleReadingScreening {
  const within = clean.filter(
    ({ position }) => position >= travel.from - SAME_PLACE && position <= travel.to + SAME_PLACE,
  );
  const readOnce = within.filter(({ readings }) => readings.length === 1);
  const scatterOfAll = scatterAboutProfile(profile, corrected);
  const suspects = readOnce.filter(
    (each) => chanceAgainstNeighbours(each, within, scatterOfAll) < ERROR_RATE,
  );
  const others = clean.flatMap((station) => (suspects.includes(station) ? [] : station.readings));
  if (suspects.length === 0 || others.length === 0) return { toConfirm: [], outliers: [] };
  const without = profileOf(others);
  const scatter = scatterAboutProfile(without, corrected);
  const weighed = suspects
    .filter((station) => isSignificant(chanceAgainstNeighbours(station, within, scatter), readOnce.length))
    .map((station) => ({ station, outlier: againstProfile(without, station.readings[0], corrected) }));
  const toConfirm = weighed.filter(({ station, outlier }) => {
    const isEnd = station === within[0] || station === within.at(-1);
    return !isEnd || outlier.agreement(outlier.reading.value) < ERROR_RATE;
  });
  const outliers = weighed.filter(({ outlier }) =>
    isSignificant(outlier.agreement(outlier.reading.value), readOnce.length),
  );
  return {
    toConfirm: toConfirm.map(({ outlier }) => outlier.reading),
    outliers: outliers.map(({ outlier }) => outlier),
  };
}

/** Chance that scatter alone puts a reading so far above, or below, all stations beside it. */
function chanceAgainstNeighbours(
  station: Station,
  stations: readonly Station[],
  scatter: RepeatabilityPosterior,
): number {
  const index = stations.indexOf(station);
  const beside = [
    ...stations.slice(Math.max(0, index - NEIGHBOURS), index),
    ...stations.slice(index + 1, index + 1 + NEIGHBOURS),
  ];
  if (beside.length < NEIGHBOURS) return 1;
  const farther = (sign: 1 | -1): number =>
    Math.max(
      ...beside.map(({ mean: other, readings }) =>
        tailProbability(sign * (station.mean - other), scatter, 1 + 1 / readings.length),
      ),
    );
  return 2 * Math.min(farther(1), farther(-1));
}

/** A reading against the profile without it: its chance is the mean over the draws. */
function againstProfile(profile: ProfileDraws, reading: LostMotion, corrected: Corrected): RepeatOutlier {
  const { positions, draws } = profile;
  const at = interpolationAt(positions, reading.position);
  const predicted = draws.map(({ backlash }) => at(backlash));
  const { deviations } = scatterAboutProfile(profile, corrected);
  const above = (value: number): number =>
    mean(
      predicted.map((backlash, i) =>
        tailProbability(value - backlash, { deviations: [deviations[i]], weights: [1] }),
      ),
    );
  const expected = median(predicted);
  return {
    reading,
    expected,
    // A high place can be narrower than the distance of stations; a low one is as wide as the nut.
    mayBeWear: reading.value > expected,
    agreement: (value) => {
      const chance = above(value);
      return 2 * Math.min(chance, 1 - chance);
    },
  };
}

/** Scatter of single readings about the profile, draw by draw: repeatability, station effect and rounding. */
function scatterAboutProfile({ draws }: ProfileDraws, corrected: Corrected): RepeatabilityPosterior {
  const rounding = roundingVariance(corrected);
  return {
    deviations: draws.map(({ repeatability, stationEffect }) =>
      Math.sqrt(repeatability ** 2 + stationEffect ** 2 + rounding),
    ),
    weights: draws.map(() => 1 / draws.length),
  };
}
