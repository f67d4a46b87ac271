import { expect, it } from "vitest";
import { estimateOf, estimatesAlong, quantilesAlong } from "../../../src/analysis/statistics/estimate.ts";

// Of 0, 1 … 1000 each quantile is its share of 1000.
const shuffled = Float64Array.from({ length: 1001 }, (_, i) => (i * 617) % 1001);

it("gives the median and the equal-tailed 95 % interval of draws in any order", () => {
  expect(estimateOf(shuffled)).toEqual({ value: 500, low: 25, high: 975 });
});

it("sorts draws as numbers, negative ones too", () => {
  // A twentieth of the way from the least to the middle, and from the greatest.
  const { value, low, high } = estimateOf([10, -9, 2]);
  expect(value).toBe(2);
  expect(low).toBeCloseTo(-8.45, 12);
  expect(high).toBeCloseTo(9.6, 12);
});

it("leaves the draws in their order", () => {
  const draws = Float64Array.of(3, 1, 2);
  estimateOf(draws);
  expect([...draws]).toEqual([3, 1, 2]);
});

it("is the one draw itself where there is only one", () => {
  expect(estimateOf([0.3])).toEqual({ value: 0.3, low: 0.3, high: 0.3 });
});

it("gives one quantile of draws in any order, the least and the greatest included", () => {
  expect([0, 0.1, 0.9, 1].map((share) => quantileAt(shuffled, share))).toEqual([0, 100, 900, 1000]);
  expect(quantileAt([10, -9, 2], 0.025)).toBeCloseTo(-8.45, 12);
});

/** Of values that stand at the second place of curves, between others. */
function quantileAt(values: ArrayLike<number>, share: number): number | undefined {
  const curves = Array.from(values, (value) => Float64Array.of(-1, value, 7));
  const [first, second, third] = quantilesAlong(curves, 3, share);
  expect([first, third]).toEqual([-1, 7]);
  return second;
}

it("along curves it is the estimate of each place", () => {
  const curves = [3, 1, 2].map((value) => Float64Array.of(value, 10 * value));
  expect(estimatesAlong(curves, 2)).toEqual([estimateOf([3, 1, 2]), estimateOf([30, 10, 20])]);
  expect(curves[0]).toEqual(Float64Array.of(3, 30));
});
