import { quickselect } from "simple-statistics";
import type { Estimate } from "../assessment.ts";

/** Median and equal-tailed 95 % interval of the draws. */
export function estimateOf(draws: ArrayLike<number>): Estimate {
  return estimateWithin(new Float64Array(draws));
}

/** The estimate at each of `count` positions of drawn curves: of all first values, of all second values, and so on. */
export function estimatesAlong(curves: readonly Float64Array[], count: number): readonly Estimate[] {
  return alongCurves(curves, count, estimateWithin);
}

/** One quantile at each of `count` positions of drawn curves. */
export function quantilesAlong(
  curves: readonly Float64Array[],
  count: number,
  share: number,
): readonly number[] {
  return alongCurves(curves, count, (values) => quantileWithin(values, share, 0, values.length - 1));
}

function alongCurves<T>(
  curves: readonly Float64Array[],
  count: number,
  summary: (values: Float64Array) => T,
): readonly T[] {
  const values = new Float64Array(curves.length);
  return Array.from({ length: count }, (_, place) => {
    for (let i = 0; i < curves.length; i++) values[i] = curves[i][place];
    return summary(values);
  });
}

/** Reorders the values. */
function estimateWithin(values: Float64Array): Estimate {
  const middle = Math.floor(values.length / 2);
  return {
    value: quantileWithin(values, 0.5, 0, values.length - 1),
    low: quantileWithin(values, 0.025, 0, middle),
    high: quantileWithin(values, 0.975, middle, values.length - 1),
  };
}

/**
 * A quantile by linear interpolation (type 7 of Hyndman and Fan 1996, as `quantile` of simple-statistics), searched
 * between two indices so that three quantiles share the work. Reorders the values.
 */
function quantileWithin(values: Float64Array, share: number, left: number, right: number): number {
  const place = share * (values.length - 1);
  const index = Math.floor(place);
  // quickselect only compares and swaps, so it takes a typed array, which is many times as fast.
  quickselect(values as unknown as number[], index, left, right);
  if (place === index) return values[index];
  let next = Number.POSITIVE_INFINITY;
  for (let i = index + 1; i < values.length; i++) if (values[i] < next) next = values[i];
  return values[index] + (place - index) * (next - values[index]);
}
