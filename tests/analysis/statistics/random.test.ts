import { describe, expect, it } from "vitest";
import { drawIndex, normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { repeating } from "../examples.ts";

/** A number that Box and Muller's formula turns into the radius 1, whatever the angle. */
const RADIUS_ONE = 1 - Math.exp(-0.5);

describe("the seeded source", () => {
  // Made with an implementation of sfc32 in Python's whole numbers: state (seed, seed >> 3, 0x9e3779b9), counter 1.
  it.each([
    [1, [573063952, 3268221502, 703077755, 2308299391, 1950625580, 354034397]],
    [20260314, [3896190224, 522136911, 4076899745, 1932966854, 1674020377, 2470645513]],
    [-7, [4077251846, 3310506338, 2019862035, 4136303462, 3183019791, 1846162319]],
  ])("gives sfc32's numbers for the seed %i, as shares of 2³²", (seed, expected) => {
    const random = seededRandom(seed);
    expect(expected.map(() => random() * 2 ** 32)).toEqual(expected);
  });

  it("is evenly spread over [0, 1)", () => {
    const random = seededRandom(5);
    const counts = new Array<number>(20).fill(0);
    for (let i = 0; i < 100_000; i++) counts[Math.floor(20 * random())]++;
    const chiSquared = counts.reduce((sum, count) => sum + (count - 5000) ** 2 / 5000, 0);
    // The 0.1 % points of chi-squared with 19 degrees of freedom, either side.
    expect(chiSquared).toBeGreaterThan(5.41);
    expect(chiSquared).toBeLessThan(43.82);
  });
});

describe("normal numbers", () => {
  it("are the two coordinates of Box and Muller's point, one after the other", () => {
    const normal = normals(repeating(RADIUS_ONE, 1 / 6, RADIUS_ONE, 1 / 2));
    expect(normal()).toBeCloseTo(0.5, 12);
    expect(normal()).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(normal()).toBeCloseTo(-1, 12);
    expect(normal()).toBeCloseTo(0, 12);
  });

  it("have the moments of the standard normal distribution", () => {
    const normal = normals(seededRandom(11));
    const numbers = Array.from({ length: 100_000 }, normal);
    const moment = (power: number) => numbers.reduce((sum, z) => sum + z ** power, 0) / numbers.length;
    // Four standard errors: the variance of z, z², z³ and z⁴ is 1, 2, 15 and 96.
    expect(Math.abs(moment(1))).toBeLessThan(4 * Math.sqrt(1 / 100_000));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(4 * Math.sqrt(2 / 100_000));
    expect(Math.abs(moment(3))).toBeLessThan(4 * Math.sqrt(15 / 100_000));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(4 * Math.sqrt(96 / 100_000));
  });
});

describe("an index drawn by weight", () => {
  // The weights 1, 0 and 3 split [0, 1) at a quarter.
  it.each([
    [0, 0],
    [0.2499, 0],
    [0.25, 2],
    [0.999, 2],
  ])("at %f of the whole is %i: each weight holds its share, and a weight of nothing none", (at, index) => {
    expect(drawIndex([1, 0, 3], () => at)).toBe(index);
  });

  it("is the last one where rounding leaves nothing to choose by", () => {
    expect(drawIndex([0, 0, 0], () => 0.5)).toBe(2);
  });
});
