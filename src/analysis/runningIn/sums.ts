import type { Growth } from "./courses.ts";

/** A quantity as it was found at a time, with the standard deviation of what it was found with. */
export interface Observation {
  readonly time: number;
  readonly value: number;
  readonly deviation: number;
}

/** What the observations say of the model value = level + amount × growth. */
export interface Sums {
  /** Least squares estimate of the amount, with its standard deviation. */
  readonly amount: number;
  readonly amountDeviation: number;
  /** Logarithm of the observations' density given the amount, the level integrated out under a flat prior. */
  readonly logEvidence: (amount: number) => number;
  /** Mean of the level given the amount, and its standard deviation. */
  readonly levelAt: (amount: number) => number;
  readonly levelDeviation: number;
}

/**
 * The sums of weighted least squares, observations weighed by the inverse of their variance (Gelman and others,
 * Bayesian Data Analysis, 3rd edition, section 14.2).
 *
 * @param growth null where nothing grows
 * @param scatter what each observation strays by beside its own deviation, as one standard deviation
 */
export function sumsOf(observations: readonly Observation[], growth: Growth | null, scatter: number): Sums {
  const weights = observations.map(({ deviation }) => 1 / (deviation ** 2 + scatter ** 2));
  const total = sum(weights);
  const y = observations.map(({ value }) => value);
  const x = observations.map(({ time }) => growth?.(time) ?? 0);
  const mean = (values: readonly number[]): number =>
    sum(values.map((value, i) => weights[i] * value)) / total;
  const [xMean, yMean] = [mean(x), mean(y)];
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

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
