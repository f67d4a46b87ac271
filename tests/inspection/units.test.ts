import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromMillimetres, roundTo, toMillimetres } from "../../src/inspection/units.ts";

test("an inch is 25.4 mm", () => {
  expect(toMillimetres(1, "in")).toBe(25.4);
  expect(toMillimetres(1, "mm")).toBe(1);
  expect(fromMillimetres(50.8, "in")).toBe(2);
});

test("a length in inches comes back from millimetres as it was", () => {
  fc.assert(
    fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (length) => {
      expect(fromMillimetres(toMillimetres(length, "in"), "in")).toBeCloseTo(length, 10);
    }),
  );
});

describe("rounding", () => {
  test.each([
    [0.125, 2, 0.13],
    [1.005, 2, 1.01],
    [-1.005, 2, -1.01],
    [0.30000000000000004, 9, 0.3],
    [1e-7, 9, 1e-7],
    [5e-8, 3, 0],
    [1234.5, 0, 1235],
    [1e21, 2, 1e21],
  ])("%d to %d decimals is %d", (value, decimals, rounded) => {
    expect(roundTo(value, decimals)).toBe(rounded);
  });

  test("gives no negative zero", () => {
    expect(Object.is(roundTo(-0.001, 2), 0)).toBe(true);
  });
});
