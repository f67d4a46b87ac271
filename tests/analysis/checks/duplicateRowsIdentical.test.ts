import { describe, expect, it } from "vitest";
import { chanceOfIdentical } from "../../../src/analysis/checks/duplicateRows.ts";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { pushPull } from "../examples.ts";

const STEP = 0.01;
const TRIES = 100_000;
const corrected = correct(pushPull([[0, 0.2]], { indicator: { resolution: STEP } }), 4);

/** How often readings rounded to whole numbers all come out alike twice, by trying; scatter in graduations. */
function tried(counts: readonly number[], scatter: number, roundings: 1 | 2): number {
  const random = seededRandom(11);
  const normal = normals(random);
  const read = (place: number) => Math.round(place + scatter * normal());
  let alike = 0;
  for (let i = 0; i < TRIES; i++) {
    const isAlike = counts.every((count) =>
      Array.from({ length: roundings }, random).every((place) =>
        Array.from({ length: count }).every(() => {
          const first = read(place);
          return read(place) === first;
        }),
      ),
    );
    if (isAlike) alike++;
  }
  return alike / TRIES;
}

/** The same where two thousand repeats have shown how much a single reading scatters. */
function told(counts: readonly number[], scatter: number, roundings: 1 | 2): number {
  const variance = roundings * ((scatter * STEP) ** 2 + STEP ** 2 / 12);
  return chanceOfIdentical(counts, { squares: 2000 * variance, freedom: 2000 }, { ...corrected, roundings });
}

describe("the chance that readings come out the same twice", () => {
  // Four standard errors of so many tries come to 0.006.
  it.each([
    [[1], 0.3],
    [[1], 0.8],
    [[1], 2],
    [[3], 0.4],
    [[1, 1, 1], 0.4],
    [[2, 1], 1.2],
  ] as const)("is what trying gives: %j at %f graduations", (counts, scatter) => {
    expect(Math.abs(told(counts, scatter, 1) - tried(counts, scatter, 1))).toBeLessThan(0.012);
  });

  it("is that of both readings of pairs", () => {
    expect(Math.abs(told([1], 0.5, 2) - tried([1], 0.5, 2))).toBeLessThan(0.012);
    expect(Math.abs(told([2], 0.5, 2) - tried([2], 0.5, 2))).toBeLessThan(0.012);
  });
});
