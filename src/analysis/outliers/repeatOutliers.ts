import { mean } from "simple-statistics";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import {
  pooledSquares,
  type RepeatabilityPosterior,
  repeatabilityPosterior,
  tailProbability,
} from "../correct/repeatability.ts";
import { type Station, stationsOf } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";

/** A reading that does not agree with what the others lead one to expect of it. */
export interface RepeatOutlier {
  readonly reading: LostMotion;
  /** What the others say, in millimetres. */
  readonly expected: number;
  /** Chance that a reading there differs by as much as one of this value, either way. */
  readonly agreement: (value: number) => number;
  /** Whether the screw may have worn so, at a place that no other reading met. */
  readonly mayBeWear?: boolean;
  /** The other of two readings that disagree, where nothing at the station tells which of them is wrong. */
  readonly rival?: LostMotion;
}

export interface RepeatScreening {
  readonly outliers: readonly RepeatOutlier[];
  /** How single readings scatter, outliers left out. */
  readonly scatter: RepeatabilityPosterior;
  /** The stations without outliers. */
  readonly clean: readonly Station[];
}

/** At most this share of the readings is taken for mistakes; a sheet with more of them is read anew (Rosner 1983). */
const MOST_OUTLIERS = 0.1;

/** A station's readings that are left while outliers are taken out, one after another. */
interface Left {
  readonly readings: readonly LostMotion[];
  readonly squares: number;
  /** The reading that lies farthest from the others, and how much less the sum of squares is without it. */
  readonly farthest: LostMotion;
  readonly gain: number;
}

/**
 * Readings that disagree with the other repeats at their station, by Rosner's generalised test (Technometrics 25, 1983;
 * NIST/SEMATECH e-Handbook 1.3.5.17.3) on deviations from the stations' means: the farthest is taken out, and the next
 * farthest, and so on; the last that is farther than scatter explains is an outlier with all those before it, so that
 * two mistakes do not hide one another. Each is weighed by Student's t against the scatter that is left without it.
 */
export function screenRepeats(stations: readonly Station[], corrected: Corrected): RepeatScreening {
  const path = takenOut(stations, corrected);
  const count = path.findLastIndex(({ isOutlier }) => isOutlier) + 1;
  const out = new Set(path.slice(0, count).map(({ reading }) => reading));
  const kept = stations.flatMap(({ readings }) => readings.filter((reading) => !out.has(reading)));
  const left = stationsOf(kept);
  const scatter = repeatabilityPosterior(pooledSquares(left), corrected);
  const outliers = stations.flatMap((station) => outliersAt(station, out, scatter));
  const outlier = new Set(outliers.map(({ reading }) => reading));
  const clean = stationsOf(
    stations.flatMap(({ readings }) => readings.filter((reading) => !outlier.has(reading))),
  );
  return { outliers, scatter, clean };
}

/** The readings farthest from their repeats, farthest first, and whether scatter explains each. */
function takenOut(stations: readonly Station[], corrected: Corrected) {
  const left = stations.map(({ readings }) => leftOf(readings));
  let squares = left.reduce((sum, each) => sum + each.squares, 0);
  let freedom = left.reduce((sum, { readings }) => sum + readings.length - 1, 0);
  const most = Math.max(1, Math.floor(MOST_OUTLIERS * (freedom + left.length)));
  const path: { readonly reading: LostMotion; readonly isOutlier: boolean }[] = [];
  while (path.length < most) {
    const at = left.reduce((best, { gain }, i) => (gain > left[best].gain ? i : best), 0);
    const { farthest, gain, readings } = left[at];
    if (gain === 0) break;
    // Two repeats are as far from each other as either from the other, so they are one look.
    const looks = left.reduce((sum, { readings: { length } }) => sum + (length > 2 ? length : length - 1), 0);
    squares -= gain;
    freedom -= 1;
    const scatter = repeatabilityPosterior({ squares, freedom }, corrected);
    path.push({
      reading: farthest,
      isOutlier: isSignificant(2 * tailProbability(Math.sqrt(gain), scatter), looks),
    });
    left[at] = leftOf(readings.filter((reading) => reading !== farthest));
  }
  return path;
}

function leftOf(readings: readonly LostMotion[]): Left {
  const values = readings.map(({ value }) => value);
  const average = mean(values);
  const off = (reading: LostMotion): number => Math.abs(reading.value - average);
  const farthest = readings.reduce((best, reading) => (off(reading) > off(best) ? reading : best));
  const { length } = readings;
  return {
    readings,
    squares: values.reduce((sum, value) => sum + (value - average) ** 2, 0),
    farthest,
    // Taking a value out of so many lessens the sum of squares by its deviation's square, times n / (n − 1).
    gain: length < 2 ? 0 : (off(farthest) ** 2 * length) / (length - 1),
  };
}

/** Where outliers are as many as what is left at a station, nothing there tells which of them are wrong. */
function outliersAt(
  station: Station,
  out: ReadonlySet<LostMotion>,
  scatter: RepeatabilityPosterior,
): readonly RepeatOutlier[] {
  const outliers = station.readings.filter((reading) => out.has(reading));
  const others = station.readings.filter((reading) => !out.has(reading));
  if (outliers.length === 0) return [];
  if (outliers.length < others.length) return outliers.map((reading) => strayAmong(reading, others, scatter));
  return station.readings.map((reading) => {
    const rivals = station.readings.filter((other) => other !== reading);
    const outlier = strayAmong(reading, rivals, scatter);
    return rivals.length === 1 ? { ...outlier, rival: rivals[0] } : outlier;
  });
}

function strayAmong(
  reading: LostMotion,
  others: readonly LostMotion[],
  scatter: RepeatabilityPosterior,
): RepeatOutlier {
  const expected = mean(others.map(({ value }) => value));
  return {
    reading,
    expected,
    agreement: (value) => 2 * tailProbability(Math.abs(value - expected), scatter, 1 + 1 / others.length),
  };
}
