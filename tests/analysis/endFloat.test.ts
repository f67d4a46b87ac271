import { describe, expect, it } from "vitest";
import { endFloatEstimate, endFloatOf } from "../../src/analysis/endFloat.ts";
import { drawsOf, repeating } from "./examples.ts";

/** Box and Muller's radius for this number is 1, so the normal numbers are the cosine and sine of the angle. */
const RADIUS_ONE = 1 - Math.exp(-0.5);
const PLUS_ONE_THEN_ZERO = [RADIUS_ONE, 0];
const MINUS_ONE_THEN_ZERO = [RADIUS_ONE, 0.5];

const profiles = [
  [0.04, 0.2],
  [0.3, 0.2],
];

describe("end float that was not measured", () => {
  it("is anywhere between nothing and the lesser of 0.1 mm and the least lost motion, draw by draw", () => {
    const endFloat = endFloatOf(undefined, drawsOf([0, 100], profiles), 0.01, () => 0.5);
    expect(endFloat.measured).toBe(false);
    expect(endFloat.standard).toBe(0);
    expect([...endFloat.draws]).toEqual([0.02, 0.05]);
  });

  it("is never less than nothing, even where lost motion is", () => {
    const { draws } = endFloatOf(undefined, drawsOf([0, 100], [[-0.01, 0.1]]), 0.01, () => 0.5);
    expect([...draws]).toEqual([0]);
  });

  it("is taken for not measured where the list of its readings is empty", () => {
    expect(endFloatOf([], drawsOf([0, 100], profiles), 0.01, () => 0.5).measured).toBe(false);
  });

  it("has no estimate", () => {
    expect(endFloatEstimate(endFloatOf(undefined, drawsOf([0], [[0.1]]), 0.01, () => 0.5))).toBeNull();
  });
});

describe("measured end float", () => {
  // Standard deviation of 0.03 and 0.05: 0.0141421. Variance of the mean of two: 0.0001; of rounding: 0.0001 / 12.
  const ofOwnScatter = Math.sqrt(0.0001 + 0.0001 / 12);

  it("is the mean of its readings, give or take their own scatter and one rounding", () => {
    const profile = drawsOf([0, 100], profiles, 0.004);
    const endFloat = endFloatOf([0.03, 0.05], profile, 0.01, repeating(...PLUS_ONE_THEN_ZERO));
    expect(endFloat.measured).toBe(true);
    expect(endFloat.standard).toBeCloseTo(ofOwnScatter, 12);
    expect(endFloat.draws[0]).toBeCloseTo(0.04 + ofOwnScatter, 12);
    expect(endFloat.draws[1]).toBeCloseTo(0.04, 12);
  });

  it("scatters by the survey's repeatability where that is greater", () => {
    const profile = drawsOf([0, 100], profiles, 0.02);
    const { standard } = endFloatOf([0.03, 0.05], profile, 0.01, repeating(...PLUS_ONE_THEN_ZERO));
    expect(standard).toBeCloseTo(Math.sqrt(0.02 ** 2 / 2 + 0.0001 / 12), 12);
  });

  it("scatters by the survey's repeatability where there is one reading of it", () => {
    const profile = drawsOf([0, 100], profiles, 0.006);
    const endFloat = endFloatOf([0.03], profile, 0, repeating(...PLUS_ONE_THEN_ZERO));
    expect(endFloat.standard).toBeCloseTo(0.006, 12);
    expect(endFloat.draws[0]).toBeCloseTo(0.036, 12);
  });

  it("scatters in each draw by that draw's repeatability, and by their mean as a whole", () => {
    const { positions, draws, unevenChance } = drawsOf([0, 100], profiles);
    const both = draws.map((draw, i) => ({ ...draw, repeatability: i === 0 ? 0.002 : 0.006 }));
    const { standard } = endFloatOf([0.03], { positions, draws: both, unevenChance }, 0, () => 0.5);
    expect(standard).toBeCloseTo(0.004, 12);
  });

  it("is never less than nothing", () => {
    const profile = drawsOf([0, 100], profiles, 0.006);
    const { draws } = endFloatOf([0], profile, 0.01, repeating(...MINUS_ONE_THEN_ZERO));
    expect(draws[0]).toBe(0);
  });

  it("is told as the median and interval of its draws", () => {
    const endFloat = { measured: true, draws: Float64Array.of(0, 0.02, 0.01), standard: 0.01 };
    const estimate = endFloatEstimate(endFloat);
    expect(estimate?.value).toBe(0.01);
    expect(estimate?.low).toBeCloseTo(0.0005, 12);
    expect(estimate?.high).toBeCloseTo(0.0195, 12);
  });
});
