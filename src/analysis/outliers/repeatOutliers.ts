import { mean, sumNthPowerDeviations } from "simple-statistics";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import {
  pooledSquares,
  type RepeatabilityPosterior,
  repeatabilityPosterior,
  tailProbability,
} from "../correct/repeatability.ts";
import { type Station, stationsOf } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";

/** A reading that disagrees with what the other readings predict. */
export interface RepeatOutlier {
  readonly reading: LostMotion;
  /** What the other readings predict, in millimetres. */
  readonly expected: number;
  /** Two-sided chance that a reading there lies as far from the prediction as this value. */
  readonly agreement: (value: number) => number;
  /** Whether it may be wear at a place that no other reading met. */
  readonly mayBeWear?: boolean;
  /** The other of two readings that disagree, if nothing at the station shows which of them is wrong. */
  readonly rival?: LostMotion;
}

export interface RepeatScreening {
  readonly outliers: readonly RepeatOutlier[];
  /** Scatter of single readings, without outliers. */
  readonly scatter: RepeatabilityPosterior;
  /** The stations without outliers. */
  readonly clean: readonly Station[];
}

/** At most this share of the readings counts as mistakes; a sheet with more of them is read again (Rosner 1983). */
const MOST_OUTLIERS = 0.1;

/** The readings left at a station while outliers are removed one after another. */
interface RemainingReadings {
  readonly readings: readonly LostMotion[];
  readonly squares: number;
  /** The reading farthest from the others, and how much removing it lowers the sum of squares. */
  readonly farthest: LostMotion;
  readonly drop: number;
}

/**
 * Finds readings that disagree with the other repeats at their station, by Rosner's generalised test (Technometrics 25,
 * 1983; NIST/SEMATECH e-Handbook 1.3.5.17.3) on deviations from the stations' means. The farthest reading is removed,
 * then the next farthest, and so on. The last one that is farther than scatter explains is an outlier, and so are all
 * removed before it: two mistakes cannot hide each other. Each is compared by Student's t with the scatter of the
 * readings left.
 */
export function screenRepeats(stations: readonly Station[], corrected: Corrected): RepeatScreening {
  const path = removalPath(stations, corrected);
  const count = path.findLastIndex(({ isOutlier }) => isOutlier) + 1;
  const out = new Set(path.slice(0, count).map(({ reading }) => reading));
  const others = stations.flatMap(({ readings }) => readings.filter((reading) => !out.has(reading)));
  const left = stationsOf(others);
  const scatter = repeatabilityPosterior(pooledSquares(left), corrected);
  const outliers = stations.flatMap((station) => outliersAt(station, out, scatter));
  const isOutlier = new Set(outliers.map(({ reading }) => reading));
  const clean = stationsOf(
    stations.flatMap(({ readings }) => readings.filter((reading) => !isOutlier.has(reading))),
  );
  return { outliers, scatter, clean };
}

/** The readings farthest from their repeats, farthest first, and whether each is an outlier. */
function removalPath(stations: readonly Station[], corrected: Corrected) {
  const left = stations.map(({ readings }) => remaining(readings));
  let squares = left.reduce((sum, each) => sum + each.squares, 0);
  let freedom = left.reduce((sum, { readings }) => sum + readings.length - 1, 0);
  const most = Math.max(1, Math.floor(MOST_OUTLIERS * (freedom + left.length)));
  const path: { readonly reading: LostMotion; readonly isOutlier: boolean }[] = [];
  while (path.length < most) {
    const at = left.reduce((best, { drop }, i) => (drop > left[best].drop ? i : best), 0);
    const { farthest, drop, readings } = left[at];
    if (drop === 0) break;
    // Two repeats have one difference between them, so they count as one look.
    const looks = left.reduce((sum, { readings: { length } }) => sum + (length > 2 ? length : length - 1), 0);
    squares -= drop;
    freedom -= 1;
    const scatter = repeatabilityPosterior({ squares, freedom }, corrected);
    path.push({
      reading: farthest,
      isOutlier: isSignificant(2 * tailProbability(Math.sqrt(drop), scatter), looks),
    });
    left[at] = remaining(readings.filter((reading) => reading !== farthest));
  }
  return path;
}

function remaining(readings: readonly LostMotion[]): RemainingReadings {
  const values = readings.map(({ value }) => value);
  const average = mean(values);
  const deviation = (reading: LostMotion): number => Math.abs(reading.value - average);
  const farthest = readings.reduce((best, reading) =>
    deviation(reading) > deviation(best) ? reading : best,
  );
  const { length } = readings;
  return {
    readings,
    squares: sumNthPowerDeviations(values, 2),
    farthest,
    // Removing one of n values lowers the sum of squares by its squared deviation times n / (n − 1).
    drop: length < 2 ? 0 : (deviation(farthest) ** 2 * length) / (length - 1),
  };
}

/** If at least half of a station's readings are outliers, nothing there shows which of them are wrong. */
function outliersAt(
  station: Station,
  out: ReadonlySet<LostMotion>,
  scatter: RepeatabilityPosterior,
): readonly RepeatOutlier[] {
  const outliers = station.readings.filter((reading) => out.has(reading));
  const others = station.readings.filter((reading) => !out.has(reading));
  if (outliers.length === 0) return [];
  if (outliers.length < others.length)
    return outliers.map((reading) => outlierAmong(reading, others, scatter));
  return station.readings.map((reading) => {
    const rivals = station.readings.filter((other) => other !== reading);
    const outlier = outlierAmong(reading, rivals, scatter);
    return rivals.length === 1 ? { ...outlier, rival: rivals[0] } : outlier;
  });
}

function outlierAmong(
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
