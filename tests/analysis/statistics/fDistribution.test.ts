import { describe, expect, it } from "vitest";
import { fDistributionTail } from "../../../src/analysis/statistics/fDistribution.ts";

describe("the chance that a ratio of variances exceeds a value", () => {
  // scipy.stats.f.sf of SciPy 1.17.
  it.each([
    [3.5, 4, 9, 0.05483863619793799],
    [0.5, 1, 3, 0.530477770932957],
    [12, 30, 2, 0.07974337317419375],
    [20.03, 6, 6, 0.0009999519569603562],
  ])("is that of Fisher's F: %f with %i and %i", (ratio, above, below, chance) => {
    expect(fDistributionTail(ratio, above, below)).toBeCloseTo(chance, 12);
  });

  it("is the share that is left to the power of half the freedom, with two degrees above", () => {
    for (const ratio of [0.1, 1, 7, 300]) {
      expect(fDistributionTail(ratio, 2, 10)).toBeCloseTo((1 + ratio / 5) ** -5, 12);
    }
  });

  it("is certain at nothing, and nothing at infinity", () => {
    expect(fDistributionTail(0, 3, 5)).toBe(1);
    expect(fDistributionTail(Number.POSITIVE_INFINITY, 3, 5)).toBe(0);
  });
});
