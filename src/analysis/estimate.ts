import { quantile } from "simple-statistics";
import type { Estimate } from "./assessment.ts";

const QUANTILES = [0.5, 0.025, 0.975];

/** Median and equal-tailed 95 % interval of the draws. */
export function estimateOf(draws: ArrayLike<number>): Estimate {
  const [value, low, high] = quantile(Array.from(draws), QUANTILES);
  return { value, low, high };
}
