import { describe, expect, it } from "vitest";
import type { AssessedSurvey } from "../../../src/analysis/assess.ts";
import { differenceOf, isSameEverywhere } from "../../../src/analysis/comparison/difference.ts";
import type { Pair, Sample } from "../../../src/analysis/comparison/pairedDraws.ts";
import { SETTINGS } from "../examples.ts";
import { drawn } from "./drawn.ts";

const asRead = (lostMotion: number): number => lostMotion;

function sample({ profile }: AssessedSurvey, index: number, trueOf: (lostMotion: number) => number): Sample {
  return { draw: profile.draws[index], trueOf, tight: 0, loose: 0, endFloat: 0 };
}

/** Every draw of one survey with the draw of the same number of the other. */
function pairs(from: AssessedSurvey, to: AssessedSurvey, trueOf = asRead): readonly Pair[] {
  return from.profile.draws.map((_, i) => ({
    from: sample(from, i, asRead),
    to: sample(to, i, trueOf),
  }));
}

describe("the change along the travel", () => {
  // Rises evenly from 0.1 to 0.4 mm; falls from 0.3 to 0.1 mm within 100 mm and stays there.
  const from = drawn([0, 150, 300], [[0.1, 0.25, 0.4]]);
  const to = drawn([0, 100, 300], [[0.3, 0.1, 0.1]]);
  const at = (position: number, trueOf = asRead): number =>
    differenceOf(from, to, pairs(from, to, trueOf)).find((each) => each.position === position)?.change ??
    Number.NaN;

  it.each([
    [0, 0.2],
    [30, 0.24 - 0.13],
    [99, 0.102 - 0.199],
    [150, 0.1 - 0.25],
    [300, 0.1 - 0.4],
  ])(
    "lies on straight lines between the positions that either profile is kept at: at %i mm",
    (position, change) => {
      expect(at(position)).toBeCloseTo(change, 12);
    },
  );

  it("is that of lost motion as it is, not as it was read", () => {
    expect(at(30, (lostMotion) => 2 * lostMotion)).toBeCloseTo(0.48 - 0.13, 12);
  });

  it("is told at a hundred even steps from one end of the travel to the other", () => {
    const settings = { ...SETTINGS, travel: { from: 50, to: 250 } };
    const part = { assessment: { ...to.assessment, settings } };
    const shorter = drawn([50, 249.9], [[0.1, 0.2]], {}, part);
    const found = differenceOf(from, shorter, pairs(from, shorter));
    expect(found.map(({ position }) => position)).toEqual(Array.from({ length: 101 }, (_, i) => 50 + 2 * i));
    // A profile kept to just short of the end holds to it: 0.2 − 0.35.
    expect(found[100].change).toBeCloseTo(-0.15, 12);
  });

  it("has the median and the 95 % interval of the draws at each position", () => {
    const even = (value: number): readonly number[] => [value, value];
    const before = drawn(
      [0, 300],
      Array.from({ length: 41 }, () => even(0.1)),
    );
    const after = drawn(
      [0, 300],
      Array.from({ length: 41 }, (_, i) => even(0.1 + i / 100)),
    );
    // Of 0, 0.01 … 0.4 the quantiles are their shares of 0.4.
    for (const { change, low, high } of differenceOf(before, after, pairs(before, after))) {
      expect([change, low, high].map((each) => Number(each.toFixed(9)))).toEqual([0.2, 0.01, 0.39]);
    }
  });
});

describe("one change all along the travel", () => {
  const band = (...intervals: readonly (readonly [low: number, high: number])[]) =>
    isSameEverywhere(
      intervals.map(([low, high], i) => ({ position: i, change: (low + high) / 2, low, high })),
    );

  it("lies within bands that all overlap or touch", () => {
    expect(band([0.1, 0.3], [0.2, 0.5])).toBe(true);
    expect(band([0.1, 0.25], [0.25, 0.5])).toBe(true);
    expect(band([-0.3, -0.1], [-0.2, 0.1])).toBe(true);
  });

  it("does not lie within bands of which two are apart", () => {
    expect(band([0.1, 0.24], [0.25, 0.5])).toBe(false);
    expect(band([0.25, 0.5], [0.1, 0.6], [0.1, 0.24])).toBe(false);
  });
});
