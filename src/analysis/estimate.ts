import { quantileSorted } from "simple-statistics";
import type { Estimate } from "./assessment.ts";

/** Median and equal-tailed 95 % interval of the draws. */
export function estimateOf(draws: ArrayLike<number>): Estimate {
  const sorted = Array.from(Float64Array.from(draws).sort());
  return {
    value: quantileSorted(sorted, 0.5),
    low: quantileSorted(sorted, 0.025),
    high: quantileSorted(sorted, 0.975),
  };
}
