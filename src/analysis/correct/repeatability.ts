import { erfc } from "../profile/evidence.ts";
import type { Corrected } from "./corrections.ts";
import type { Station } from "./stations.ts";

/** Posterior of the scatter of single readings, rounding included: standard deviations in millimetres with weights. */
export interface RepeatabilityPosterior {
  readonly deviations: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Prior of the repeatability: lognormal about 0.4 graduations, or 0.004 mm where the graduation is finer than 0.01 mm,
 * with a standard deviation of 0.5 in its logarithm.
 */
const USUAL_SHARE = 0.4;
const LEAST_GRADUATION = 0.01;
const LOG_DEVIATION = 0.5;
/** The grid: up to four standard deviations, eight cells per standard deviation. */
const REACH = 4;
const PER_DEVIATION = 8;
const OFFSETS = Array.from({ length: 2 * REACH * PER_DEVIATION + 1 }, (_, i) => i / PER_DEVIATION - REACH);

/** A sum of squared deviations, in mm², with its degrees of freedom. */
export interface PooledSquares {
  readonly squares: number;
  readonly freedom: number;
}

/** Posterior of the scatter given pooled deviations. */
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

/** Variance of rounding, in mm²: a rectangular distribution of one graduation for each rounding (GUM 4.3.7). */
export function roundingVariance({ resolution, roundings }: Corrected): number {
  return (roundings * resolution.step ** 2) / 12;
}

/** Squared deviations of readings from the means of their stations. */
export function pooledSquares(stations: readonly Station[]): PooledSquares {
  return {
    squares: stations.reduce((sum, { squares }) => sum + squares, 0),
    freedom: stations.reduce((sum, { readings }) => sum + readings.length - 1, 0),
  };
}

/**
 * One-sided chance that scatter alone causes a difference as great as this or greater.
 *
 * @param difference in millimetres
 * @param factor variance of the difference, as a multiple of that of a single reading
 * @param extraVariance added to it, in mm²
 */
export function tailProbability(
  difference: number,
  { deviations, weights }: RepeatabilityPosterior,
  factor = 1,
  extraVariance = 0,
): number {
  return deviations.reduce(
    (sum, deviation, i) =>
      sum + 0.5 * weights[i] * erfc(difference / Math.sqrt(2 * (factor * deviation ** 2 + extraVariance))),
    0,
  );
}

/** Root mean square of the posterior: the standard deviation of a single reading, in millimetres. */
export function posteriorDeviation({ deviations, weights }: RepeatabilityPosterior): number {
  return Math.sqrt(deviations.reduce((sum, deviation, i) => sum + weights[i] * deviation ** 2, 0));
}
