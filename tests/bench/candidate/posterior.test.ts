import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "../../analysis/profile/data.ts";
import { discrepancyOf, EVEN, engagedAtStations, numbersOf, posteriorOf, wearOf } from "./posterior.ts";
import { DISCREPANCY } from "./priors.ts";
import { dimensionsOf, WEAR_SHAPES, wornBy } from "./wearShapes.ts";

const DATA = sweeps(
  [
    [100, 0.2, 0.21],
    [175, 0.26],
    [250, 0.3, 0.3, 0.31],
  ],
  { travel: { from: 100, to: 300 }, workingRange: { from: 100, to: 300 }, engagedLength: 20 },
);
const COARSE = posteriorOf(DATA, seededRandom(1));
const FINE = posteriorOf({ ...DATA, resolution: 0.001 }, seededRandom(1));

const engaged = (shape: number, ...u: readonly number[]) => {
  const into = new Float64Array(3).fill(9);
  engagedAtStations({ shape, u: Float64Array.from(u) }, COARSE, into);
  return [...into];
};

describe("what is fitted", () => {
  it("has its stations, and half the nut, as shares of the travel", () => {
    expect([...COARSE.places]).toEqual([0, 0.375, 0.75]);
    expect(COARSE.reach).toBe(0.05);
    expect(COARSE.data).toBe(DATA);
  });

  it("has the wear that the nut meets at each station", () => {
    // A bump in the middle, 0.237 wide: with the nut 0.125 away from it at worst at 0.375 + 0.05 … 0.375 − 0.05.
    const half = Math.sqrt(0.08 * 0.7) / 2;
    const bell = (distance: number) => 2 ** -((distance / half) ** 2);
    const found = engaged(0, 0.5, 0.5, 0.5, 0);
    [0.55, 0.175, 0.3].forEach((distance, i) => {
      expect(found[i]).toBeCloseTo(bell(distance), 4);
    });
  });

  it("has no wear anywhere for an even profile", () => {
    expect(engaged(EVEN)).toEqual([0, 0, 0]);
  });
});

describe("the wear of a particle", () => {
  it("is that of its shape and numbers, and none for an even profile", () => {
    WEAR_SHAPES.forEach((wearShape, shape) => {
      const u = new Float64Array(dimensionsOf(wearShape)).fill(0.3);
      expect(wearOf({ shape, u })).toEqual(wornBy(wearShape, u));
    });
    expect(wearOf({ shape: EVEN, u: new Float64Array(0) })).toBeUndefined();
  });
});

describe("the discrepancy of a particle", () => {
  const at = (last: number) =>
    discrepancyOf({ shape: 0, u: Float64Array.of(0.5, 0.5, 0.5, 0.5, last) }, FINE);

  it("is one number more, and none where readings are too coarse to show it", () => {
    expect(numbersOf(0, FINE)).toBe(numbersOf(0, COARSE) + 1);
    expect(COARSE.discrepancies).toEqual([undefined]);
    expect(discrepancyOf({ shape: 0, u: Float64Array.of(0.5, 0.5, 0.5, 0.99) }, COARSE)).toBe(0);
  });

  it("is none as often as its prior says, and else each as likely as another", () => {
    const { none } = DISCREPANCY;
    const count = FINE.discrepancies.length - 1;
    const found = Array.from({ length: 10_000 }, (_, i) => at((i + 0.5) / 10_000));
    expect(found.filter((each) => each === 0).length / 10_000).toBeCloseTo(none, 3);
    for (let each = 1; each <= count; each++) {
      const share = found.filter((one) => one === each).length / 10_000;
      expect(Math.abs(share - (1 - none) / count)).toBeLessThan(3e-4);
    }
  });

  it("is none for an even profile", () => {
    expect(discrepancyOf({ shape: EVEN, u: new Float64Array(0) }, FINE)).toBe(0);
  });

  it("has lengths in multiples of the nut's", () => {
    const lengths = new Set(FINE.discrepancies.flatMap((each) => each?.length ?? []));
    expect([...lengths]).toEqual(DISCREPANCY.lengths.map((length) => 20 * length));
  });
});
