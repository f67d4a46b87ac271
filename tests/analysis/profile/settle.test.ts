import { beforeEach, describe, expect, it } from "vitest";
import { CHARACTERS } from "../../../src/analysis/profile/characters.ts";
import { type Fit, fitOf, type State, shapeOf } from "../../../src/analysis/profile/fit.ts";
import { settle } from "../../../src/analysis/profile/settle.ts";
import { EVEN } from "../../../src/analysis/profile/temper.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { evenlySpaced } from "../examples.ts";
import { sweeps } from "./data.ts";
import { momentsIn, normalChance, normalDensity, simpson } from "./quadrature.ts";

const GRADUATION = 0.02;
const SIZE = 1500;

/** The chance that repeats are all rounded to one reading, at a lost motion, with a station effect averaged out. */
function chanceOf(
  reading: number,
  repeats: number,
  backlash: number,
  { sigma, tau }: Fit["grid"][number],
): number {
  const at = (place: number) => {
    const near = (reading - GRADUATION / 2 - place) / sigma;
    const far = (reading + GRADUATION / 2 - place) / sigma;
    if (near > 8 || far < -8) return 0;
    return normalChance(Math.max(near, -8), Math.min(far, 8)) ** repeats;
  };
  if (tau === 0) return at(backlash);
  return simpson(-4 * tau, 4 * tau, 24).reduce(
    (sum, [shift, weight]) => sum + weight * normalDensity(shift, tau ** 2) * at(backlash + shift),
    0,
  );
}

/** Mean and standard deviation of weighted values. */
function weighted(points: readonly (readonly [value: number, weight: number])[]) {
  const total = points.reduce((sum, [, weight]) => sum + weight, 0);
  const mean = points.reduce((sum, [value, weight]) => sum + weight * value, 0) / total;
  const variance = points.reduce((sum, [value, weight]) => sum + weight * (value - mean) ** 2, 0) / total;
  return { mean, deviation: Math.sqrt(variance) };
}

function expectMoments(values: readonly number[], expected: ReturnType<typeof weighted>): void {
  const { mean, deviation } = momentsIn(values);
  expect(Math.abs(mean - expected.mean) / expected.deviation).toBeLessThan(0.15);
  expect(deviation / expected.deviation).toBeGreaterThan(0.88);
  expect(deviation / expected.deviation).toBeLessThan(1.12);
}

describe("states of an even profile whose readings all lie on one graduation", () => {
  const data = sweeps(
    [0, 60, 120, 180, 240, 300].map((position) => [position, 0.2, 0.2] as const),
    { resolution: GRADUATION },
  );
  const levels = evenlySpaced(0.17, 0.23, 121);
  let fit: Fit;
  let settled: readonly State[];
  let chances: readonly (readonly number[])[];

  beforeEach(() => {
    fit = fitOf(data, seededRandom(41));
    const start = Array.from({ length: SIZE }, (): State => {
      const even = { character: EVEN, u: new Float64Array(0), shape: new Float64Array(6) };
      return { ...even, ...fit.evidence.draw(undefined, fit.random, fit.normal) };
    });
    settled = settle(start, fit);
    chances = fit.grid.map((scatter) =>
      levels.map((level) => Math.exp(scatter.logPrior) * chanceOf(0.2, 2, level, scatter) ** 6),
    );
  });

  it("settle on the levels that rounding allows", () => {
    const points = levels.map((level, i): [number, number] => [
      level,
      chances.reduce((sum, row) => sum + row[i], 0),
    ]);
    expectMoments(
      settled.map(({ level }) => level),
      weighted(points),
    );
  });

  it("settle on the repeatability and the station effect that rounding allows", () => {
    const total = chances.map((row) => row.reduce((sum, chance) => sum + chance, 0));
    for (const of of [
      (scatter: number) => Math.log(fit.grid[scatter].sigma),
      (scatter: number) => fit.grid[scatter].tau,
    ]) {
      expectMoments(
        settled.map(({ scatter }) => of(scatter)),
        weighted(total.map((weight, scatter): [number, number] => [of(scatter), weight])),
      );
    }
  });

  it("stay even, in number, and move apart", () => {
    expect(settled).toHaveLength(SIZE);
    expect(settled.every(({ character, depth }) => character === EVEN && depth === 0)).toBe(true);
    expect(new Set(settled.map(({ level }) => level)).size).toBeGreaterThan(0.9 * SIZE);
  });
});

describe("states of a worn end that one graduation more tells of", () => {
  const data = sweeps(
    [
      [0, 0.26, 0.26],
      [20, 0.26, 0.26],
      [40, 0.26, 0.26],
      [240, 0.2, 0.2],
      [260, 0.2, 0.2],
      [280, 0.2, 0.2],
    ],
    { resolution: GRADUATION, engagedLength: 10 },
  );
  let fit: Fit;
  let start: readonly State[];
  let settled: readonly State[];

  beforeEach(() => {
    const character = CHARACTERS.findIndex(({ name }) => name === "worn end");
    fit = fitOf(data, seededRandom(43));
    start = Array.from({ length: SIZE }, (): State => {
      // Reaching about 0.35 of the travel with a short straight edge: all of the wear at the first three stations.
      const u = Float64Array.of(0.4 + 0.2 * fit.random(), 0.2 * fit.random(), 5 / 6, 0, 0.2);
      const shape = shapeOf({ character, u }, fit);
      return { character, u, shape, ...fit.evidence.draw(shape, fit.random, fit.normal) };
    });
    settled = settle(start, fit);
  });

  it("settle on the levels and depths that rounding allows", () => {
    expect(start.every(({ shape }) => shape.join() === "1,1,1,0,0,0")).toBe(true);
    const lows = evenlySpaced(0.17, 0.23, 61);
    const highs = evenlySpaced(0.23, 0.29, 61);
    const depthPrior = (depth: number) =>
      [0.03, 0.1, 0.3].reduce((sum, scale) => sum + (2 * normalDensity(depth, scale ** 2)) / 3, 0);
    const levels: [number, number][] = [];
    const depths: [number, number][] = [];
    for (const scatter of fit.grid) {
      const ofLow = lows.map((low) => chanceOf(0.2, 2, low, scatter) ** 3);
      const ofHigh = highs.map((high) => chanceOf(0.26, 2, high, scatter) ** 3);
      lows.forEach((low, i) => {
        highs.forEach((high, k) => {
          const weight = Math.exp(scatter.logPrior) * ofLow[i] * ofHigh[k] * depthPrior(high - low);
          levels.push([low, weight]);
          depths.push([high - low, weight]);
        });
      });
    }
    expectMoments(
      settled.map(({ level }) => level),
      weighted(levels),
    );
    expectMoments(
      settled.map(({ depth }) => depth),
      weighted(depths),
    );
  });

  it("move their wear too, and keep its shape at the stations with it", () => {
    const moved = settled.filter((state) => !start.some(({ u }) => u === state.u));
    expect(moved.length).toBeGreaterThan(0.3 * SIZE);
    expect(settled.map(({ shape }) => shape)).toEqual(settled.map((state) => shapeOf(state, fit)));
  });

  it("have no depth below nothing", () => {
    expect(settled.every(({ depth }) => depth >= 0)).toBe(true);
  });
});

describe("states of a bump whose place and width are open", () => {
  it("carry the wear at the stations that belongs to their numbers, wherever they move", () => {
    const readings = [0.2, 0.21, 0.24, 0.3, 0.24, 0.21, 0.2];
    const fit = fitOf(sweeps(readings.map((value, i) => [50 * i, value, value] as const)), seededRandom(47));
    const character = CHARACTERS.findIndex(({ name }) => name === "bump");
    const start = Array.from({ length: 300 }, (): State => {
      const u = Float64Array.of(0.45 + 0.1 * fit.random(), 0.3 + 0.3 * fit.random(), 0.4, 0.2);
      const shape = shapeOf({ character, u }, fit);
      return { character, u, shape, ...fit.evidence.draw(shape, fit.random, fit.normal) };
    });
    const settled = settle(start, fit);
    expect(settled.some(({ u }) => !start.some((state) => state.u === u))).toBe(true);
    expect(settled.map(({ shape }) => shape)).toEqual(settled.map((state) => shapeOf(state, fit)));
  });
});

describe("states that are all alike at first", () => {
  /** Wear all along the screw but for its far end, met alike by the first six stations. */
  const alike = (part: Partial<State> = {}) => {
    const fit = fitOf(
      sweeps(
        [0, 30, 60, 90, 120, 150, 300].map((position) => [position, position < 250 ? 0.3 : 0.2] as const),
        {
          resolution: 0.01,
          engagedLength: 10,
        },
      ),
      seededRandom(53),
    );
    const character = CHARACTERS.findIndex(({ name }) => name === "worn end");
    const u = Float64Array.of(1, 0.1, 5 / 6, 0, 0.2);
    const shape = shapeOf({ character, u }, fit);
    const state = { character, u, shape, level: 0.2, depth: 0.1, scatter: 4, ...part };
    const settled = settle(Array<State>(400).fill(state), fit);
    return { state, settled, worn: settled.filter((each) => each.u === u) };
  };

  it("come apart in scatter, in level and depth alone, and in their wear", () => {
    const { state, settled, worn } = alike();
    expect([...state.shape].map((share) => share > 0.999)).toEqual([...Array(6).fill(true), false]);
    const { level, depth } = state;
    expect(settled.filter(({ scatter }) => scatter !== 4).length).toBeGreaterThan(40);
    expect(worn.filter((each) => each.level !== level && each.depth !== depth).length).toBeGreaterThan(100);
    expect(settled.length - worn.length).toBeGreaterThan(10);
    expect(settled.every((each) => each.depth > 0)).toBe(true);
  });

  it("reach the least scatter from the one beside it", () => {
    const { settled } = alike({ scatter: 1 });
    expect(settled.some(({ scatter }) => scatter === 0)).toBe(true);
    expect(settled.every(({ scatter }) => scatter >= 0)).toBe(true);
  });
});

describe("level and depth of which the readings tell the sum alone", () => {
  const SUM = 0.305;
  /** Settled from the levels given, at 21 stations that meet the same wear. */
  const settledFrom = (levels: readonly number[]) => {
    const fit = fitOf(
      sweeps(
        evenlySpaced(0, 160, 21).map((position) => [position, 0.3, 0.31] as const),
        { resolution: 0.01, engagedLength: 10 },
      ),
      seededRandom(59),
    );
    const character = CHARACTERS.findIndex(({ name }) => name === "worn end");
    const u = Float64Array.of(1, 0.1, 5 / 6, 0, 0.2);
    const shape = shapeOf({ character, u }, fit);
    expect(shape.every((share) => share > 0.999)).toBe(true);
    const start = levels.map((level) => ({ character, u, shape, level, depth: SUM - level, scatter: 4 }));
    const settled = settle(start, fit);
    return {
      sameWear: settled.filter((each) => each.u === u),
      otherWear: settled.filter((each) => each.u !== u),
    };
  };

  it("move against each other, further than their sum does", () => {
    const { sameWear } = settledFrom(Array<number>(800).fill(0.205));
    const levels = momentsIn(sameWear.map(({ level }) => level));
    const sums = momentsIn(sameWear.map(({ level, depth }) => level + depth));
    // 42 readings of a deviation of 0.003 mm tell the sum to 0.0005 mm, and nothing tells the level.
    expect(sums.deviation).toBeLessThan(0.001);
    expect(levels.deviation).toBeGreaterThan(3 * sums.deviation);
  });

  it("move with the wear along the differences of others, which keep the sum, too", () => {
    const { otherWear } = settledFrom(evenlySpaced(0.105, 0.205, 800));
    expect(otherWear.length).toBeGreaterThan(200);
  });
});

describe("states that readings tell nothing of", () => {
  /** The posterior of readings that fit everything alike: the prior, to a constant. */
  const untold = () => {
    const fit = fitOf(
      sweeps([0, 75, 150, 225, 300].map((position) => [position, 0.2] as const)),
      seededRandom(61),
    );
    return { ...fit, rounded: () => 0 };
  };

  it("move their level about as far as one reading scatters", () => {
    const fit = untold();
    const even = {
      character: EVEN,
      u: new Float64Array(0),
      shape: new Float64Array(5),
      level: 0.2,
      depth: 0,
    };
    const settled = settle(Array<State>(2000).fill({ ...even, scatter: 4 }), fit);
    const moved = settled.flatMap(({ level }) => (level === 0.2 ? [] : Math.abs(level - 0.2)));
    expect(moved.length).toBeGreaterThan(1900);
    const middle = moved.sort((a, b) => a - b)[Math.floor(moved.length / 2)];
    expect(middle / fit.grid[4].sigma).toBeGreaterThan(0.6);
    expect(middle / fit.grid[4].sigma).toBeLessThan(2.4);
  });

  it("move along the difference of any two, which is none where all but one are alike", () => {
    const fit = untold();
    const character = CHARACTERS.findIndex(({ name }) => name === "worn end");
    // The last number is the nut's stiffness: it is as stiff at either.
    const start = Array.from({ length: 400 }, (_, i): State => {
      const u = Float64Array.of(0.5, 0.5, 5 / 6, 0.2, i === 0 ? 0.2 : 0.7);
      return { character, u, shape: shapeOf({ character, u }, fit), level: 0.2, depth: 0.1, scatter: 4 };
    });
    const stiffness = settle(start, fit).map(({ u }) => u[4]);
    // Of two drawn from 400, one is the odd one in one move of 200, and a state makes two moves or so.
    const far = stiffness.filter((each) => Math.abs(each - 0.7) > 0.05 && each !== 0.2);
    expect(far.length).toBeLessThan(20);
  });
});
