import { expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { combined, driftRegression } from "../../../src/analysis/statistics/driftRegression.ts";
import { pushPull } from "../examples.ts";

const wander = (...readings: Parameters<typeof pushPull>[0]) => {
  const corrected = correct(pushPull(readings), 4).readings;
  return driftRegression(corrected, stationsOf(corrected));
};

it("finds a creep whatever the stations' own heights, and leaves nothing of it", () => {
  const { slope, spread, residuals } = wander([0, 0.2], [50, 0.503], [100, 0.106], [50, 0.509], [0, 0.212]);
  expect(slope).toBeCloseTo(0.003, 12);
  // Orders 0 and 4, 1 and 3 about their means: 4 + 4 + 1 + 1; the third station was read once.
  expect(spread).toBe(10);
  expect(combined(residuals).squares).toBeCloseTo(0, 12);
  expect(combined(residuals).freedom).toBe(2);
});

it("leaves what does not follow the order", () => {
  const { slope, residuals } = wander([0, 0.2], [0, 0.26], [0, 0.2]);
  expect(slope).toBeCloseTo(0, 12);
  // 0.02² + 0.04² + 0.02².
  expect(combined(residuals).squares).toBeCloseTo(0.0024, 12);
});

it("finds none where nothing was read twice", () => {
  expect(wander([0, 0.2], [50, 0.3])).toMatchObject({ slope: 0, spread: 0 });
});
