import { describe, expect, it } from "vitest";
import { drawEndFloat, endFloatEstimate } from "../../../src/analysis/correct/endFloat.ts";
import type { ProfileDraws } from "../../../src/analysis/profile/draws.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { drawsOf } from "../examples.ts";
import { momentsIn, normalChance, simpson } from "../profile/quadrature.ts";

const profiles = [
  [0.04, 0.2],
  [0.3, 0.2],
];

describe("end float that was not measured", () => {
  it("is anywhere between nothing and the lesser of 0.1 mm and the least lost motion, draw by draw", () => {
    const endFloat = drawEndFloat(undefined, drawsOf([0, 100], profiles), 0.01, () => 0.5);
    expect(endFloat.measured).toBe(false);
    expect([...endFloat.draws]).toEqual([0.02, 0.05]);
  });

  it("is never less than nothing, even where lost motion is", () => {
    const { draws } = drawEndFloat(undefined, drawsOf([0, 100], [[-0.01, 0.1]]), 0.01, () => 0.5);
    expect([...draws]).toEqual([0]);
  });

  it("is taken for not measured where the list of its readings is empty", () => {
    expect(drawEndFloat([], drawsOf([0, 100], profiles), 0.01, () => 0.5).measured).toBe(false);
  });

  it("has no estimate", () => {
    expect(endFloatEstimate(drawEndFloat(undefined, drawsOf([0], [[0.1]]), 0.01, () => 0.5))).toBeNull();
  });
});

const COUNT = 20_000;

function profileWith(repeatability: number, count = COUNT): ProfileDraws {
  const one = drawsOf([0, 100], [[0.3, 0.4]], repeatability);
  return { ...one, draws: Array.from({ length: count }, () => one.draws[0]) };
}

function drawn(readings: readonly number[], repeatability: number, resolution: number): readonly number[] {
  const { draws } = drawEndFloat(readings, profileWith(repeatability), resolution, seededRandom(61));
  return [...draws];
}

/**
 * The posterior by quadrature: none in 0.4 of cases, else every amount alike at 0.6 over 0.12 mm; a reading is rounded
 * to the graduation, and nothing is read where less than half of one moves.
 */
function posterior(readings: readonly number[], sigma: number, resolution: number) {
  const chance = (place: number) =>
    readings.reduce((product, reading) => {
      const near = reading < resolution / 2 ? -40 : (reading - resolution / 2 - place) / sigma;
      const far = (reading + resolution / 2 - place) / sigma;
      return product * normalChance(Math.max(-9, Math.min(9, near)), Math.max(-9, Math.min(9, far)));
    }, 1);
  const none = 0.4 * chance(0);
  const greatest = Math.max(...readings) + 6 * sigma + resolution;
  const points = simpson(0, greatest, 2000).map(([place, weight]): [number, number] => [
    place,
    weight * (0.6 / 0.12) * chance(place),
  ]);
  const some = points.reduce((sum, [, weight]) => sum + weight, 0);
  const mean = points.reduce((sum, [place, weight]) => sum + place * weight, 0) / some;
  const variance = points.reduce((sum, [place, weight]) => sum + (place - mean) ** 2 * weight, 0) / some;
  return { none: none / (none + some), mean, deviation: Math.sqrt(variance) };
}

describe("measured end float", () => {
  it.each([
    ["two readings far from nothing", [0.06, 0.07], 0.004, 0.01],
    ["two readings of nothing on a coarse dial", [0, 0], 0.006, 0.0254],
    ["a reading of nothing and one of a graduation", [0, 0.01], 0.004, 0.01],
    ["readings of nothing, far finer than they scatter", [0, 0], 0.006, 0.001],
    ["one reading, far finer than it scatters", [0.03], 0.006, 0.001],
    ["readings rounded far more coarsely than they scatter", [0.05, 0.05, 0.05], 0.002, 0.0254],
  ] as const)("has its posterior with rounding as it is: %s", (_, readings, sigma, resolution) => {
    const expected = posterior(readings, sigma, resolution);
    const values = drawn(readings, sigma, resolution);
    const none = values.filter((value) => value === 0).length / COUNT;
    expect(Math.abs(none - expected.none)).toBeLessThan(0.015);
    const some = momentsIn(values.filter((value) => value > 0));
    expect(Math.abs(some.mean - expected.mean) / expected.deviation).toBeLessThan(0.1);
    expect(some.deviation / expected.deviation).toBeGreaterThan(0.93);
    expect(some.deviation / expected.deviation).toBeLessThan(1.07);
  });

  it("scatters by its own readings where they disagree by far more than the survey's repeatability", () => {
    // Standard deviation of 0.03 and 0.09: 0.0424264; of their mean 0.03.
    const { mean, deviation } = momentsIn(drawn([0.03, 0.09], 0.002, 0.001).filter((value) => value > 0));
    const expected = posterior([0.03, 0.09], 0.0424264, 0.001);
    expect(Math.abs(mean - expected.mean)).toBeLessThan(0.002);
    expect(deviation / expected.deviation).toBeCloseTo(1, 1);
  });

  it("scatters by its own readings also where they are rounded coarsely", () => {
    // 0.0283 mm, where twice of what repeatability and a graduation explain is 0.0099 mm.
    const { deviation } = momentsIn(drawn([0.06, 0.1], 0.004, 0.01).filter((value) => value > 0));
    expect(deviation / posterior([0.06, 0.1], 0.0282843, 0.01).deviation).toBeCloseTo(1, 1);
  });

  it("is told to be measured", () => {
    expect(drawEndFloat([0.06], profileWith(0.004, 2), 0.01, seededRandom(1)).measured).toBe(true);
  });

  it("scatters in each draw by that draw's repeatability", () => {
    const narrow = profileWith(0.002, 4000).draws;
    const wide = profileWith(0.02, 4000).draws;
    const { draws } = drawEndFloat(
      [0.1],
      { ...profileWith(0.002, 1), draws: [...narrow, ...wide] },
      0.001,
      seededRandom(5),
    );
    expect(momentsIn([...draws.subarray(0, 4000)]).deviation / 0.002).toBeCloseTo(1, 1);
    expect(momentsIn([...draws.subarray(4000)]).deviation / 0.02).toBeCloseTo(1, 1);
  });

  it("is told as the median and interval of its draws", () => {
    const endFloat = { measured: true, draws: Float64Array.of(0, 0.02, 0.01) };
    const estimate = endFloatEstimate(endFloat);
    expect(estimate?.value).toBe(0.01);
    expect(estimate?.low).toBeCloseTo(0.0005, 12);
    expect(estimate?.high).toBeCloseTo(0.0195, 12);
  });
});
