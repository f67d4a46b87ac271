import { describe, expect, it } from "vitest";
import { leastSquaresFit } from "../../../src/analysis/runningIn/leastSquares.ts";
import { SETS } from "./reference.ts";

describe.each(Object.entries(SETS))("the sums of weighted least squares for %s, as R has them", (_, set) => {
  const { observations, steady } = set;
  const sums = leastSquaresFit(observations, (time) => time, steady.scatter);

  it("give the amount grown and its standard deviation", () => {
    expect(sums.amount).toBeCloseTo(steady.amount, 9);
    expect(sums.amountDeviation).toBeCloseTo(steady.amountDeviation, 9);
  });

  it("give the level", () => {
    expect(sums.levelAt(steady.amount)).toBeCloseTo(steady.level, 9);
  });

  it("give the density of the observations with the level integrated out", () => {
    expect(sums.logEvidence(0.03)).toBeCloseTo(steady.logEvidence, 6);
  });
});

describe("the sums where nothing grows", () => {
  it("are those of a weighted mean", () => {
    const sums = leastSquaresFit(
      [
        { time: 0, value: 0.1, deviation: 0.001 },
        { time: 1, value: 0.4, deviation: 0.002 },
      ],
      null,
      0,
    );
    // Weights 4 : 1; 1 / √(1/0.001² + 1/0.002²).
    expect(sums.levelAt(0)).toBeCloseTo(0.16, 12);
    expect(sums.levelDeviation).toBeCloseTo(0.002 / Math.sqrt(5), 12);
    expect([sums.amount, sums.amountDeviation]).toEqual([0, 0]);
  });
});
