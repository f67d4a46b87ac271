import { describe, expect, it } from "vitest";
import { isSignificant } from "../../../src/analysis/statistics/falsePositiveRate.ts";

describe("a chance that is too small for scatter", () => {
  it("is one in five hundred, shared out among the looks", () => {
    expect(isSignificant(0.002)).toBe(true);
    expect(isSignificant(0.00201)).toBe(false);
    expect(isSignificant(0.0005, 4)).toBe(true);
    expect(isSignificant(0.0005, 5)).toBe(false);
  });
});
