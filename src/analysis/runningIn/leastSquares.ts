import { sum, weightedMean } from "simple-statistics";
import type { Growth } from "./trendShapes.ts";

/** A quantity observed at a time, with its standard deviation; lengths in millimetres. */
export interface Observation {
  readonly time: number;
  readonly value: number;
  readonly deviation: number;
}

/** The fit of value = level + amount × growth. */
export interface LeastSquaresFit {
  /** Least squares estimate of the amount, with its standard deviation. */
  readonly amount: number;
  readonly amountDeviation: number;
  /** Log density of the observations given the amount, with the level integrated out under a flat prior. */
  readonly logEvidence: (amount: number) => number;
  /** Mean of the level given the amount, and its standard deviation. */
  readonly levelAt: (amount: number) => number;
  readonly levelDeviation: number;
}

/**
 * Weighted least squares, with weights of one over the variance (Gelman and others, Bayesian Data Analysis, 3rd edition,
 * section 14.2).
 *
 * @param growth null for a constant
 * @param scatter standard deviation of each observation beside its own, in millimetres
 */
export function leastSquaresFit(
  observations: readonly Observation[],
  growth: Growth | null,
  scatter: number,
): LeastSquaresFit {
  const weights = observations.map(({ deviation }) => 1 / (deviation ** 2 + scatter ** 2));
  const total = sum(weights);
  const y = observations.map(({ value }) => value);
  const x = observations.map(({ time }) => growth?.(time) ?? 0);
  const [xMean, yMean] = [weightedMean(x, weights), weightedMean(y, weights)];
  const xx = sum(weights.map((weight, i) => weight * (x[i] - xMean) ** 2));
  const xy = sum(weights.map((weight, i) => weight * (x[i] - xMean) * (y[i] - yMean)));
  const yy = sum(weights.map((weight, i) => weight * (y[i] - yMean) ** 2));
  const constant =
    0.5 * sum(weights.map((weight) => Math.log(weight / (2 * Math.PI)))) -
    0.5 * Math.log(total / (2 * Math.PI));
  return {
    amount: xx === 0 ? 0 : xy / xx,
    amountDeviation: xx === 0 ? 0 : 1 / Math.sqrt(xx),
    logEvidence: (amount) => constant - 0.5 * (yy - 2 * amount * xy + amount ** 2 * xx),
    levelAt: (amount) => yMean - amount * xMean,
    levelDeviation: 1 / Math.sqrt(total),
  };
}
