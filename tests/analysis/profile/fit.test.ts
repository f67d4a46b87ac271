import { beforeEach, describe, expect, it } from "vitest";
import {
  type Fit,
  fitOf,
  logNormalPosterior,
  logPosterior,
  type State,
  shapeOf,
} from "../../../src/analysis/profile/fit.ts";
import { EVEN } from "../../../src/analysis/profile/temper.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "./data.ts";
import { normalChance, normalDensity } from "./quadrature.ts";

const DATA = sweeps(
  [
    [100, 0.2, 0.21],
    [175, 0.26],
    [250, 0.3, 0.3, 0.31],
  ],
  { travel: { from: 100, to: 300 }, workingRange: { from: 100, to: 300 }, engagedLength: 20 },
);
const SCATTER = 5;
const VALUES = DATA.stations.map(({ readings }) => readings.map(({ value }) => value));

const worn = (part: Partial<State> = {}): State => ({
  character: 0,
  u: new Float64Array(4).fill(0.5),
  shape: Float64Array.of(0, 0.5, 1),
  level: 0.203,
  depth: 0.1,
  scatter: SCATTER,
  ...part,
});

/** Half-normals of three scales, all of the same weight. */
const depthPrior = (depth: number) =>
  [0.03, 0.1, 0.3].reduce((sum, scale) => sum + (2 * normalDensity(depth, scale ** 2)) / 3, 0);

let fit: Fit;

beforeEach(() => {
  fit = fitOf(DATA, seededRandom(1));
});

describe("what is fitted", () => {
  it("has its stations, and half the nut, as shares of the travel", () => {
    expect([...fit.places]).toEqual([0, 0.375, 0.75]);
    expect(fit.reach).toBe(0.05);
    expect(fit.data).toBe(DATA);
  });

  it("draws normal numbers from its own randomness", () => {
    const other = fitOf(DATA, seededRandom(1));
    expect(other.random()).toBe(seededRandom(1)());
    expect(other.normal()).not.toBe(other.normal());
  });

  it("has the wear that the nut meets at each station", () => {
    // A bump in the middle, 0.237 wide: with the nut 0.125 away from it at worst at 0.375 + 0.05 … 0.375 − 0.05.
    const shape = shapeOf({ character: 0, u: Float64Array.of(0.5, 0.5, 0.5, 0) }, fit);
    const half = Math.sqrt(0.08 * 0.7) / 2;
    const bell = (distance: number) => 2 ** -((distance / half) ** 2);
    [0.55, 0.175, 0.3].forEach((distance, i) => {
      expect(shape[i]).toBeCloseTo(bell(distance), 4);
    });
  });

  it("has no wear anywhere for an even profile", () => {
    expect([...shapeOf({ character: EVEN, u: new Float64Array(0) }, fit)]).toEqual([0, 0, 0]);
  });
});

describe("the posterior with rounding as it is", () => {
  /** Prior of scatter and depth, and normal chances between graduations; the scatter asked for has no station effect. */
  function expected({ shape, level, depth, scatter }: State): number {
    const { sigma, logPrior } = fit.grid[scatter];
    const likelihood = VALUES.reduce((sum, values, i) => {
      const backlash = level + depth * shape[i];
      const chances = values.map((value) =>
        normalChance((value - 0.005 - backlash) / sigma, (value + 0.005 - backlash) / sigma),
      );
      return sum + chances.reduce((total, chance) => total + Math.log(chance), 0);
    }, 0);
    return likelihood + logPrior + Math.log(depthPrior(depth));
  }

  it("is the priors times the chance of the readings", () => {
    expect(fit.grid[SCATTER].tau).toBe(0);
    const states = [
      worn(),
      worn({ level: 0.207 }),
      worn({ depth: 0.095 }),
      worn({ shape: Float64Array.of(0.05, 0.55, 1) }),
    ];
    for (const state of states) {
      expect(Math.abs(logPosterior(state, fit) - expected(state))).toBeLessThan(0.1);
    }
  });

  it("has no prior of the depth for an even profile", () => {
    const even = worn({ character: EVEN });
    expect(logPosterior(worn(), fit) - logPosterior(even, fit)).toBeCloseTo(Math.log(depthPrior(0.1)), 9);
  });

  it("makes lost motion below nothing at the tight spot unlikely, by its distance in deviations of a reading", () => {
    // Lost motion and readings 0.1 mm higher fit each other as well, and none of it is below nothing.
    const raised = fitOf(
      sweeps(
        DATA.stations.map(
          ({ position, readings }) =>
            [position, ...readings.map(({ value }) => value + 0.1)] as [number, ...number[]],
        ),
        { travel: DATA.travel },
      ),
      seededRandom(1),
    );
    const { sigma } = fit.grid[SCATTER];
    for (const deviations of [3, 1, 0.2, 0, -1]) {
      const below = logPosterior(worn({ level: -deviations * sigma }), fit);
      const above = logPosterior(worn({ level: 0.1 - deviations * sigma }), raised);
      expect(below - above).toBeCloseTo(-0.5 * Math.max(0, deviations) ** 2, 6);
    }
  });

  it("forbids depths below nothing", () => {
    expect(logPosterior(worn({ depth: -1e-6 }), fit)).toBe(Number.NEGATIVE_INFINITY);
  });
});

describe("the posterior with rounding as a normal error", () => {
  /** Means about the profile, with rounding and station effect, and repeats about their means, all normal. */
  function expected({ character, shape, level, depth, scatter }: State): number {
    const given = fit.grid[scatter];
    const rounding = 0.01 ** 2 / 12;
    const within = given.sigma ** 2 + rounding / 4;
    return VALUES.reduce(
      (sum, values, i) => {
        const mean = values.reduce((total, value) => total + value, 0) / values.length;
        const variance = given.sigma ** 2 / values.length + rounding + given.tau ** 2;
        const squares = values.reduce((total, value) => total + (value - mean) ** 2, 0);
        const repeats = -0.5 * ((values.length - 1) * Math.log(within) + squares / within);
        return sum + Math.log(normalDensity(mean - level - depth * shape[i], variance)) + repeats;
      },
      given.logPrior + (character === EVEN ? 0 : Math.log(depthPrior(depth))),
    );
  }

  it("is the priors times the densities of means and repeats, to a constant", () => {
    const states = [
      worn(),
      worn({ level: 0.22 }),
      worn({ depth: 0.05 }),
      worn({ shape: Float64Array.of(1, 0.5, 0) }),
      ...fit.grid.map((_, scatter) => worn({ scatter })),
      worn({ character: EVEN, shape: new Float64Array(3), level: 0.25, depth: 0 }),
    ];
    const constant = logNormalPosterior(worn(), fit) - expected(worn());
    for (const state of states) {
      expect(logNormalPosterior(state, fit) - expected(state)).toBeCloseTo(constant, 9);
    }
  });

  it("counts two roundings of a pair", () => {
    const asPairs = fitOf({ ...DATA, roundings: 2 }, seededRandom(1));
    const fine = fitOf({ ...DATA, resolution: 0.01 * Math.SQRT2 }, seededRandom(1));
    const difference =
      logNormalPosterior(worn({ level: 0.22 }), asPairs) - logNormalPosterior(worn(), asPairs);
    // The same variance of rounding, by another graduation; the repeatability is that of the fit's own grid.
    const same = { ...fine, grid: asPairs.grid };
    expect(logNormalPosterior(worn({ level: 0.22 }), same) - logNormalPosterior(worn(), same)).toBeCloseTo(
      difference,
      9,
    );
  });
});
