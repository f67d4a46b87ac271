import { describe, expect, it } from "vitest";
import { between } from "../../../src/analysis/profile/table.ts";

describe("a table read between its entries", () => {
  it("is its entries, and straight lines from each to the next", () => {
    const values = Float64Array.of(1, 3, -1, 4);
    expect([0, 1, 2].map((place) => between(values, place))).toEqual([1, 3, -1]);
    expect(between(values, 0.25)).toBeCloseTo(1.5, 12);
    expect(between(values, 1.5)).toBeCloseTo(1, 12);
    expect(between(values, 2.9)).toBeCloseTo(3.5, 12);
  });
});
