import { expect, test } from "vitest";
import { interpolationAt } from "../../../src/analysis/statistics/interpolation.ts";

const POSITIONS = Float64Array.of(0, 10, 30);
const VALUES = Float64Array.of(1, 2, 6);

test.each([
  ["between two positions", 5, 1.5],
  ["between two others, not halfway", 25, 5],
  ["at a position", 10, 2],
  ["at the first", 0, 1],
  ["at the last", 30, 6],
  ["before the first", -4, 1],
  ["beyond the last", 31, 6],
])("a curve is interpolated linearly %s", (_, position, value) => {
  expect(interpolationAt(POSITIONS, position)(VALUES)).toBeCloseTo(value, 12);
});

test("one interpolation serves any number of curves", () => {
  const at = interpolationAt(POSITIONS, 20);
  expect([at(VALUES), at(Float64Array.of(0, -1, 1))]).toEqual([4, 0]);
});
