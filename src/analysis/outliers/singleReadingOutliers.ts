import { mean, median } from "simple-statistics";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import { type RepeatabilityPosterior, roundingVariance, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import type { Station } from "../correct/stations.ts";
import { SURE_ENOUGH } from "../decide/chooseVerdict.ts";
import type { PosteriorSample } from "../decide/samplePosterior.ts";
import type { Settings } from "../decide/settings.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type RepeatOutlier, type RepeatScreening, screenRepeats } from "./repeatOutliers.ts";

/** Readings of stations read once that lie apart from the stations beside them, and what the others come to. */
interface LoneReadings {
  /**
   * Those to be read again should they decide the verdict: those that have stations to either side, and at an end
   * those that the other readings make less likely than a verdict may be wrong. Another step at an end is wear.
   */
  readonly toConfirm: readonly LostMotion[];
  /** Those that the profile through the other readings cannot account for. */
  readonly outliers: readonly RepeatOutlier[];
}

/** What the readings of a survey say against one another. */
export interface OutlierFindings extends RepeatScreening {
  /** Readings of stations read once, to be read again should they decide the verdict. */
  readonly toConfirm: readonly LostMotion[];
}

/** How many stations to either side count as beside one. */
const BESIDE = 2;
/** A verdict may be wrong so often. */
const DOUBT = 1 - SURE_ENOUGH;

/**
 * Weighs every reading against its repeats or, where its station was read once, against the others.
 *
 * @param judged what some of the readings come to
 */
export function findOutliers(
  { stations, profile }: Pick<PosteriorSample, "stations" | "profile">,
  corrected: Corrected,
  settings: Pick<Settings, "travel">,
  judged: (readings: readonly LostMotion[]) => Pick<PosteriorSample, "profile">,
): OutlierFindings {
  const repeats = screenRepeats(stations, corrected);
  const lone = loneReadingsOf({ profile }, repeats, corrected, settings, judged);
  const outliers = [...repeats.outliers, ...lone.outliers];
  const outlier = new Set(outliers.map(({ reading }) => reading));
  return {
    outliers,
    scatter: repeats.scatter,
    clean: repeats.clean.filter(({ readings }) => !readings.some((reading) => outlier.has(reading))),
    toConfirm: lone.toConfirm,
  };
}

/**
 * Looks for readings of stations read once that stand out, and weighs each against the others: first against scatter
 * as all readings show it, which a mistake among them makes greater, and then against scatter and profile as the others
 * show them.
 *
 * @param judged what some of the readings come to
 */
function loneReadingsOf(
  { profile }: Pick<PosteriorSample, "profile">,
  { clean }: Pick<RepeatScreening, "clean">,
  corrected: Corrected,
  { travel }: Pick<Settings, "travel">,
  judged: (readings: readonly LostMotion[]) => Pick<PosteriorSample, "profile">,
): LoneReadings {
  const within = clean.filter(
    ({ position }) => position >= travel.from - SAME_PLACE && position <= travel.to + SAME_PLACE,
  );
  const lone = within.filter(({ readings }) => readings.length === 1);
  const suspects = lone.filter((each) => chanceBeside(each, within, scatterIn(profile, corrected)) < DOUBT);
  const others = clean.flatMap((station) => (suspects.includes(station) ? [] : station.readings));
  if (suspects.length === 0 || others.length === 0) return { toConfirm: [], outliers: [] };
  const without = judged(others).profile;
  const scatter = scatterIn(without, corrected);
  const weighed = suspects
    .filter((station) => isSignificant(chanceBeside(station, within, scatter), lone.length))
    .map((station) => ({ station, outlier: against(without, station.readings[0], corrected) }));
  const toConfirm = weighed.filter(({ station, outlier }) => {
    const isEnd = station === within[0] || station === within.at(-1);
    return !isEnd || outlier.agreement(outlier.reading.value) < DOUBT;
  });
  const outliers = weighed.filter(({ outlier }) =>
    isSignificant(outlier.agreement(outlier.reading.value), lone.length),
  );
  return {
    toConfirm: toConfirm.map(({ outlier }) => outlier.reading),
    outliers: outliers.map(({ outlier }) => outlier),
  };
}

/** Chance that scatter alone puts a reading as far above, or below, everything at the stations beside it. */
function chanceBeside(
  station: Station,
  stations: readonly Station[],
  scatter: RepeatabilityPosterior,
): number {
  const at = stations.indexOf(station);
  const beside = [
    ...stations.slice(Math.max(0, at - BESIDE), at),
    ...stations.slice(at + 1, at + 1 + BESIDE),
  ];
  if (beside.length < BESIDE) return 1;
  const farther = (sign: 1 | -1): number =>
    Math.max(
      ...beside.map(({ mean: other, readings }) =>
        tailProbability(sign * (station.mean - other), scatter, 1 + 1 / readings.length),
      ),
    );
  return 2 * Math.min(farther(1), farther(-1));
}

/** A reading against the profile without it: its chance is the mean over the profile's draws. */
function against(profile: ProfileDraws, reading: LostMotion, corrected: Corrected): RepeatOutlier {
  const { positions, draws } = profile;
  const predicted = draws.map(({ backlash }) => heightAt(positions, backlash, reading.position));
  const { deviations } = scatterIn(profile, corrected);
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
    // High places can be narrow, so that no other station meets them; low ones are as wide as the nut.
    mayBeWear: reading.value > expected,
    agreement: (value) => {
      const chance = above(value);
      return 2 * Math.min(chance, 1 - chance);
    },
  };
}

/** The scatter of single readings about the profile, draw by draw, with what stations add and rounding. */
function scatterIn({ draws }: ProfileDraws, corrected: Corrected): RepeatabilityPosterior {
  const rounding = roundingVariance(corrected);
  return {
    deviations: draws.map(({ repeatability, stationEffect }) =>
      Math.sqrt(repeatability ** 2 + stationEffect ** 2 + rounding),
    ),
    weights: draws.map(() => 1 / draws.length),
  };
}

/** The profile at a position between those at which it is kept. */
function heightAt(positions: Float64Array, backlash: Float64Array, position: number): number {
  const after = positions.findIndex((at) => at >= position);
  if (after <= 0) return backlash[after === 0 ? 0 : positions.length - 1];
  const share = (position - positions[after - 1]) / (positions[after] - positions[after - 1]);
  return backlash[after - 1] + share * (backlash[after] - backlash[after - 1]);
}
