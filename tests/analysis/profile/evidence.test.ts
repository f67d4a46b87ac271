import { describe, expect, it } from "vitest";
import type { ProfileData } from "../../../src/analysis/profile/draws.ts";
import { erfc, evidenceOf, logDepthPrior } from "../../../src/analysis/profile/evidence.ts";
import type { Scatter } from "../../../src/analysis/profile/noise.ts";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "./data.ts";
import { integral, momentsIn, normalDensity, simpson } from "./quadrature.ts";

const SCALES = [0.03, 0.1, 0.3];

/** The prior of the depth as the model states it: half-normals of three scales, all of the same weight. */
function depthPrior(depth: number): number {
  return SCALES.reduce((sum, scale) => sum + (2 * normalDensity(depth, scale ** 2)) / SCALES.length, 0);
}

/** The joint density of the readings, a level, a depth and a scatter, as the model states it. */
function joint(
  data: ProfileData,
  shape: Float64Array,
  scatter: Scatter,
  level: number,
  depth: number,
): number {
  const rounding = (data.roundings * data.resolution ** 2) / 12;
  const within = scatter.sigma ** 2 + rounding / 4;
  return data.stations.reduce((density, { mean, squares, readings }, i) => {
    const variance = scatter.sigma ** 2 / readings.length + rounding + scatter.tau ** 2;
    const repeats = within ** (-(readings.length - 1) / 2) * Math.exp(-squares / (2 * within));
    return density * normalDensity(mean - level - depth * shape[i], variance) * repeats;
  }, Math.exp(scatter.logPrior));
}

const LEVELS = simpson(-0.1, 0.3, 240);
const DEPTHS = simpson(0, 1.2, 400);

/** Integrals of the joint density over level and depth: the evidence, and the means of what is asked for. */
function byQuadrature(
  data: ProfileData,
  grid: readonly Scatter[],
  shape: Float64Array | undefined,
  over = { levels: LEVELS, depths: DEPTHS },
) {
  const depths: typeof DEPTHS = shape === undefined ? [[0, 1]] : over.depths;
  const prior = shape === undefined ? () => 1 : depthPrior;
  const given = shape ?? new Float64Array(data.stations.length);
  let total = 0;
  const sums = { level: 0, levelSquared: 0, depth: 0, depthSquared: 0, product: 0 };
  const shares = grid.map((scatter) => {
    let share = 0;
    for (const [depth, depthWeight] of depths) {
      for (const [level, levelWeight] of over.levels) {
        const mass = depthWeight * levelWeight * prior(depth) * joint(data, given, scatter, level, depth);
        share += mass;
        sums.level += mass * level;
        sums.levelSquared += mass * level * level;
        sums.depth += mass * depth;
        sums.depthSquared += mass * depth * depth;
        sums.product += mass * level * depth;
      }
    }
    total += share;
    return share;
  });
  const moment = (sum: number, squared: number) => ({
    mean: sum / total,
    deviation: Math.sqrt(squared / total - (sum / total) ** 2),
  });
  return {
    log: Math.log(total),
    level: moment(sums.level, sums.levelSquared),
    depth: moment(sums.depth, sums.depthSquared),
    covariance: sums.product / total - (sums.level / total) * (sums.depth / total),
    shares: shares.map((share) => share / total),
  };
}

/** Five stations of unequal repeats, deepest in the middle. */
const DATA = sweeps([
  [0, 0.1, 0.11],
  [75, 0.13],
  [150, 0.19, 0.2, 0.18],
  [225, 0.14, 0.12],
  [300, 0.1],
]);
const GRID: readonly Scatter[] = [
  { sigma: 0.006, tau: 0, logPrior: Math.log(0.5) },
  { sigma: 0.012, tau: 0, logPrior: Math.log(0.2) },
  { sigma: 0.006, tau: 0.02, logPrior: Math.log(0.3) },
];
const MIDDLE = Float64Array.of(0, 0.4, 1, 0.4, 0);
const END = Float64Array.of(1, 0.7, 0.5, 0.2, 0.1);
const AGAINST = MIDDLE.map((value) => 1 - value);
const FLAT = new Float64Array(5).fill(0.1);

/** The same wear much deeper, and the levels and depths that are left to a shape that runs against it. */
const DEEP = sweeps([
  [0, 0.1, 0.11],
  [75, 0.25],
  [150, 0.49, 0.5, 0.48],
  [225, 0.24, 0.25],
  [300, 0.1],
]);
const LITTLE = { levels: simpson(0.2, 0.4, 200), depths: simpson(0, 0.04, 800) };

/** Hardly any wear, so that an even profile and each scatter may be. */
const NEARLY_EVEN = sweeps([
  [0, 0.1, 0.11],
  [75, 0.11],
  [150, 0.12, 0.12, 0.11],
  [225, 0.1, 0.11],
  [300, 0.11],
]);

/** Finely read wear of so much along the middle shape, which leaves little doubt about its depth. */
const fine = (depth: number) =>
  sweeps(
    [0, 75, 150, 225, 300].map((position, i) => {
      const reading = 0.1 + depth * MIDDLE[i];
      return [position, reading, reading, reading] as const;
    }),
    { resolution: 0.001 },
  );
const FINE: readonly Scatter[] = [{ sigma: 0.001, tau: 0, logPrior: 0 }];

describe("the evidence", () => {
  const overEven = (data: ProfileData, shape: Float64Array) => {
    const evidence = evidenceOf(data, GRID);
    return evidence.ofShape(shape) - evidence.ofEven();
  };

  it.each([
    ["a shape that fits", MIDDLE],
    ["a shape that hardly fits", END],
    ["a shape that is the same everywhere", FLAT],
    ["a shape that runs against the readings", AGAINST],
  ])("of %s, against an even profile, is the integral over level and depth", (_, shape) => {
    const expected = byQuadrature(DATA, GRID, shape).log - byQuadrature(DATA, GRID, undefined).log;
    expect(overEven(DATA, shape)).toBeCloseTo(expected, 3);
  });

  it("of a shape that the readings all but rule out is the integral over the little depth it may have", () => {
    const expected =
      byQuadrature(DEEP, GRID, AGAINST, LITTLE).log - byQuadrature(DEEP, GRID, undefined, LITTLE).log;
    expect(overEven(DEEP, AGAINST)).toBeCloseTo(expected, 2);
  });

  it.each([
    ["a shape that fits", MIDDLE],
    ["a shape that runs against the readings", AGAINST],
  ])("of %s is so too where an even profile may be", (_, shape) => {
    const expected =
      byQuadrature(NEARLY_EVEN, GRID, shape).log - byQuadrature(NEARLY_EVEN, GRID, undefined).log;
    expect(overEven(NEARLY_EVEN, shape)).toBeCloseTo(expected, 3);
  });

  it("of wear whose depth the readings leave no doubt about is that integral too", () => {
    const evidence = evidenceOf(fine(0.01), FINE);
    const over = { levels: simpson(0.09, 0.12, 400), depths: simpson(0, 0.02, 400) };
    const [worn, even] = [MIDDLE, undefined].map((shape) => byQuadrature(fine(0.01), FINE, shape, over).log);
    expect(evidence.ofShape(MIDDLE) - evidence.ofEven()).toBeCloseTo(worn - even, 2);
  });

  it("of a shape that finely read wear runs against is that integral too", () => {
    const evidence = evidenceOf(fine(0.01), FINE);
    const over = { levels: simpson(0.09, 0.12, 400), depths: simpson(0, 0.002, 800) };
    const [against, even] = [AGAINST, undefined].map(
      (shape) => byQuadrature(fine(0.01), FINE, shape, over).log,
    );
    expect(evidence.ofShape(AGAINST) - evidence.ofEven()).toBeCloseTo(against - even, 2);
  });

  it("of wear deeper than any screw's is a number, and less than that of the same wear told as less deep", () => {
    const evidence = evidenceOf(fine(3), FINE);
    const deep = evidence.ofShape(MIDDLE);
    expect(Number.isFinite(deep)).toBe(true);
    expect(deep).toBeLessThan(evidence.ofShape(MIDDLE.map((value) => (3 / 1.9) * value)));
  });

  it.each([0.5, 1.25, 4])("of the same wear told as %f of it changes by the prior of the depth", (share) => {
    // A shape of so much of the values needs a depth of one over it, which is spread by as much.
    const evidence = evidenceOf(fine(0.25), FINE);
    const less = evidence.ofShape(MIDDLE.map((value) => share * value));
    const expected = Math.log(depthPrior(0.25 / share) / depthPrior(0.25) / share);
    expect(less - evidence.ofShape(MIDDLE)).toBeCloseTo(expected, 2);
  });

  it("weighs one scatter against another by prior, repeats and means", () => {
    for (const [a, b] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ]) {
      const log = (scatter: Scatter) => {
        const only = evidenceOf(DATA, [scatter]);
        return only.ofShape(MIDDLE) - byQuadrature(DATA, [scatter], MIDDLE).log;
      };
      expect(log(GRID[a])).toBeCloseTo(log(GRID[b]), 3);
      const ofEven = (scatter: Scatter) =>
        evidenceOf(DATA, [scatter]).ofEven() - byQuadrature(DATA, [scatter], undefined).log;
      expect(ofEven(GRID[a])).toBeCloseTo(ofEven(GRID[b]), 3);
    }
  });

  it("counts two roundings of a pair", () => {
    const asPairs = { ...DATA, roundings: 2 as const };
    const expected = byQuadrature(asPairs, GRID, MIDDLE).log - byQuadrature(asPairs, GRID, undefined).log;
    expect(overEven(asPairs, MIDDLE)).toBeCloseTo(expected, 3);
    expect(overEven(DATA, MIDDLE)).not.toBeCloseTo(expected, 1);
  });

  it("gives up only what is surely less than was asked for", () => {
    const evidence = evidenceOf(DATA, GRID);
    const random = seededRandom(5);
    let givenUp = 0;
    for (let i = 0; i < 2000; i++) {
      const shape = MIDDLE.map((value) => (i % 2 === 0 ? random() : value * random() ** 0.1));
      const exact = evidence.ofShape(shape);
      const asked = exact + 12 * (random() - 0.3);
      const told = evidence.ofShape(shape, asked);
      if (told === Number.NEGATIVE_INFINITY) {
        givenUp++;
        expect(exact).toBeLessThan(asked);
      } else expect(told).toBe(exact);
    }
    expect(givenUp).toBeGreaterThan(100);
  });

  it("does not depend on what it was asked before", () => {
    const evidence = evidenceOf(DATA, GRID);
    const first = evidence.ofShape(MIDDLE);
    evidence.ofShape(END);
    expect(evidence.ofShape(MIDDLE)).toBe(first);
  });
});

describe("level, depth and scatter drawn", () => {
  const COUNT = 20_000;

  function drawn(shape: Float64Array | undefined, data = DATA) {
    const evidence = evidenceOf(data, GRID);
    const random = seededRandom(17);
    const normal = normals(random);
    return Array.from({ length: COUNT }, () => evidence.draw(shape, random, normal));
  }

  it.each([
    ["a shape that fits", MIDDLE],
    ["a shape that the readings tell nothing of", FLAT],
    ["a shape that runs against the readings", AGAINST],
  ])("for %s have the mean, spread and correlation of their posterior", (_, shape) => {
    const expected = byQuadrature(DATA, GRID, shape);
    const draws = drawn(shape);
    const level = momentsIn(draws.map((draw) => draw.level));
    const depth = momentsIn(draws.map((draw) => draw.depth));
    // Four standard errors of a mean of 20 000.
    expect(Math.abs(level.mean - expected.level.mean) / expected.level.deviation).toBeLessThan(0.03);
    expect(Math.abs(depth.mean - expected.depth.mean) / expected.depth.deviation).toBeLessThan(0.03);
    expect(level.deviation / expected.level.deviation).toBeCloseTo(1, 1);
    expect(depth.deviation / expected.depth.deviation).toBeCloseTo(1, 1);
    const covariance =
      draws.reduce((sum, draw) => sum + (draw.level - level.mean) * (draw.depth - depth.mean), 0) / COUNT;
    const scale = expected.level.deviation * expected.depth.deviation;
    expect(Math.abs(covariance - expected.covariance) / scale).toBeLessThan(0.05);
    expect(draws.every((draw) => draw.depth >= 0)).toBe(true);
    expected.shares.forEach((share, i) => {
      const found = draws.filter(({ scatter }) => scatter === i).length / COUNT;
      expect(Math.abs(found - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / COUNT) + 0.001);
    });
  });

  it("for a shape that the readings all but rule out have the little depth it may have", () => {
    const expected = byQuadrature(DEEP, GRID, AGAINST, LITTLE);
    const depth = momentsIn(drawn(AGAINST, DEEP).map((draw) => draw.depth));
    expect(Math.abs(depth.mean - expected.depth.mean) / expected.depth.deviation).toBeLessThan(0.03);
    expect(depth.deviation / expected.depth.deviation).toBeCloseTo(1, 1);
  });

  it.each([
    ["far from even", DATA],
    ["nearly even", NEARLY_EVEN],
  ])("without a shape have no depth, and the level and scatter of an even profile: %s", (_, data) => {
    const expected = byQuadrature(data, GRID, undefined);
    const draws = drawn(undefined, data);
    const level = momentsIn(draws.map((draw) => draw.level));
    expect(draws.every(({ depth }) => depth === 0)).toBe(true);
    expect(Math.abs(level.mean - expected.level.mean) / expected.level.deviation).toBeLessThan(0.03);
    expect(level.deviation / expected.level.deviation).toBeCloseTo(1, 1);
    expected.shares.forEach((share, i) => {
      const found = draws.filter(({ scatter }) => scatter === i).length / COUNT;
      expect(Math.abs(found - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / COUNT) + 0.001);
    });
  });
});

describe("the prior of the depth", () => {
  it("is a density: it integrates to 1 over depths from nothing up", () => {
    expect(integral((depth) => Math.exp(logDepthPrior(depth)), 0, 3, 6000)).toBeCloseTo(1, 6);
  });

  it.each([0, 0.01, 0.05, 0.2, 1])("at %f mm is the mixture of half-normals", (depth) => {
    expect(logDepthPrior(depth)).toBeCloseTo(Math.log(depthPrior(depth)), 9);
  });

  it("forbids depths below nothing", () => {
    expect(logDepthPrior(-1e-9)).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe("the complementary error function", () => {
  // Abramowitz and Stegun, tables 7.1 and 7.2 (1 − erf x), and for 3 and 5 the NIST Digital Library, table 7.23.
  it.each([
    [0, 1],
    [0.5, 0.4795001222],
    [1, 0.1572992071],
    [2, 0.004677734981],
    [3, 2.2090497e-5],
    [5, 1.53745979e-12],
    [-0.5, 1.5204998778],
    [-1, 1.8427007929],
    [-3, 1.99997791],
  ])("of %f is %f to one part in eight million", (x, expected) => {
    expect(Math.abs(erfc(x) / expected - 1)).toBeLessThan(1.25e-7);
  });
});
