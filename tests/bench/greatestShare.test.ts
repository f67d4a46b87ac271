import { describe, expect, it } from "vitest";
import { greatestShare } from "./greatestShare.ts";

describe("the upper end of the interval of a share", () => {
  it("is the closed form where nothing was seen", () => {
    for (const cases of [1, 20, 60, 500]) {
      expect(greatestShare(0, cases)).toBeCloseTo(1 - 0.025 ** (1 / cases), 9);
    }
  });

  it("is the closed form where all but one were seen", () => {
    for (const cases of [2, 10, 60]) {
      expect(greatestShare(cases - 1, cases)).toBeCloseTo(0.975 ** (1 / cases), 9);
    }
  });

  it("is one where all were seen", () => {
    expect(greatestShare(7, 7)).toBe(1);
  });

  it("is what R's binom.test gives", () => {
    expect(greatestShare(3, 60)).toBeCloseTo(0.1392, 4);
    expect(greatestShare(1, 10)).toBeCloseTo(0.445, 4);
  });
});
