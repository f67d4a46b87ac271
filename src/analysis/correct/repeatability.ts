import { erfc } from "../profile/evidence.ts";
import type { Corrected } from "./corrections.ts";
import type { Station } from "./stations.ts";

/** How single readings scatter, rounding included: what it may be, in millimetres, with the chance of each. */
export interface RepeatabilityPosterior {
  readonly deviations: readonly number[];
  readonly weights: readonly number[];
}

/**
 * What is known before any reading is looked at: repeatability is lognormal about 0.4 graduations, or 0.004 mm where
 * the graduation is finer than 0.01 mm, with a deviation of 0.5 in its logarithm.
 */
const USUAL_SHARE = 0.4;
const LEAST_GRADUATION = 0.01;
const LOG_DEVIATION = 0.5;
/** The grid reaches to what one survey in thirty thousand has, in steps of a sixteenth. */
const REACH = 4;
const PER_DEVIATION = 8;
const OFFSETS = Array.from({ length: 2 * REACH * PER_DEVIATION + 1 }, (_, i) => i / PER_DEVIATION - REACH);

/** A sum of squared deviations, in mm², with its degrees of freedom. */
export interface PooledSquares {
  readonly squares: number;
  readonly freedom: number;
}

/** The scatter that deviations show, together with what is known beforehand. */
export function repeatabilityPosterior(
  { squares, freedom }: PooledSquares,
  corrected: Corrected,
): RepeatabilityPosterior {
  const usual = USUAL_SHARE * Math.max(corrected.resolution.step, LEAST_GRADUATION);
  const rounding = roundingVariance(corrected);
  const variances = OFFSETS.map((z) => (usual * Math.exp(LOG_DEVIATION * z)) ** 2 + rounding);
  const logs = variances.map(
    (variance, i) => -0.5 * (OFFSETS[i] ** 2 + freedom * Math.log(variance) + squares / variance),
  );
  const greatest = Math.max(...logs);
  const likelihoods = logs.map((log) => Math.exp(log - greatest));
  const total = likelihoods.reduce((sum, each) => sum + each, 0);
  return {
    deviations: variances.map(Math.sqrt),
    weights: likelihoods.map((each) => each / total),
  };
}

/** What rounding alone brings: a rectangle of one graduation each time (GUM 4.3.7), in mm². */
export function roundingVariance({ resolution, roundings }: Corrected): number {
  return (roundings * resolution.step ** 2) / 12;
}

/** The squared deviations of readings from the means of their stations. */
export function pooledSquares(stations: readonly Station[]): PooledSquares {
  return {
    squares: stations.reduce((sum, { squares }) => sum + squares, 0),
    freedom: stations.reduce((sum, { readings }) => sum + readings.length - 1, 0),
  };
}

/**
 * Chance that scatter alone brings about a difference as great as this or greater, of the same sign.
 *
 * @param times variance of the difference, as a multiple of a single reading's
 * @param besides variance that comes on top of it, in mm²
 */
export function tailProbability(
  difference: number,
  { deviations, weights }: RepeatabilityPosterior,
  times = 1,
  besides = 0,
): number {
  return deviations.reduce(
    (sum, deviation, i) =>
      sum + 0.5 * weights[i] * erfc(difference / Math.sqrt(2 * (times * deviation ** 2 + besides))),
    0,
  );
}

/** The standard deviation of a single reading, all that it may be taken together. */
export function posteriorDeviation({ deviations, weights }: RepeatabilityPosterior): number {
  return Math.sqrt(deviations.reduce((sum, deviation, i) => sum + weights[i] * deviation ** 2, 0));
}
