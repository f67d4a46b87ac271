import { quickselect } from "simple-statistics";
import type { Estimate } from "../assessment.ts";

/** Median and equal-tailed 95 % interval of the draws. */
export function estimateOf(draws: ArrayLike<number>): Estimate {
  return estimateWithin(new Float64Array(draws));
}

/** The same at each place of curves that were drawn: the estimate of the first value of each, of the second, and so on. */
export function estimatesAlong(curves: readonly Float64Array[], count: number): readonly Estimate[] {
  return alongCurves(curves, count, estimateWithin);
}

/** One quantile at each place of curves that were drawn. */
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

/** Brings the values into an order of its own. */
function estimateWithin(values: Float64Array): Estimate {
  const middle = Math.floor(values.length / 2);
  return {
    value: quantileWithin(values, 0.5, 0, values.length - 1),
    low: quantileWithin(values, 0.025, 0, middle),
    high: quantileWithin(values, 0.975, middle, values.length - 1),
  };
}

/**
 * A quantile of values of which a stretch holds it: between two values, on the straight line between them (type 7 of
 * Hyndman and Fan 1996, as simple-statistics and R have it). Brings the values into an order of its own.
 */
function quantileWithin(values: Float64Array, share: number, left: number, right: number): number {
  const place = share * (values.length - 1);
  const index = Math.floor(place);
  // It only compares and swaps, so a typed array serves, and is many times as fast.
  quickselect(values as unknown as number[], index, left, right);
  if (place === index) return values[index];
  let next = Number.POSITIVE_INFINITY;
  for (let i = index + 1; i < values.length; i++) if (values[i] < next) next = values[i];
  return values[index] + (place - index) * (next - values[index]);
}
