import { sampleCorrelation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import type { AssessedSurvey } from "../../../src/analysis/assess.ts";
import { type Pair, pairsOf } from "../../../src/analysis/comparison/pairedDraws.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { drawn } from "./drawn.ts";

const NONE = { from: 0, to: 0 };

/** So many draws, each of which is known by its lost motion: 0, 1, 2 … mm at its tight spot, and 10 mm more elsewhere. */
function numbered(count: number, survey: Partial<Survey> = {}): AssessedSurvey {
  return drawn(
    [0, 300],
    Array.from({ length: count }, (_, i) => [i, i + 10]),
    survey,
  );
}

const times = (values: readonly number[], value: number): number =>
  values.filter((each) => each === value).length;

describe("the draws of two surveys", () => {
  const pairs = pairsOf(numbered(400), numbered(400), NONE);
  const met = pairs.map(({ from, to }) => [from.tight, to.tight] as const);

  it("meet four times each", () => {
    expect(pairs).toHaveLength(1600);
    const fourOfEach = Array.from({ length: 1600 }, (_, i) => Math.floor(i / 4));
    const inOrder = (one: 0 | 1): readonly number[] => met.map((pair) => pair[one]).sort((a, b) => a - b);
    expect(inOrder(0)).toEqual(fourOfEach);
    expect(inOrder(1)).toEqual(fourOfEach);
  });

  it("meet by chance", () => {
    // The correlation of 1600 independent pairs is within 4/√1600 but in one of sixteen thousand tries.
    const [from, to] = [met.map(([draw]) => draw), met.map(([, draw]) => draw)];
    expect(Math.abs(sampleCorrelation(from, to))).toBeLessThan(0.1);
    // One of each round is expected to meet the draw of its own number; more than twelve come in one of 3600 tries.
    expect(met.filter(([one, other]) => one === other).length).toBeLessThanOrEqual(12);
  });

  it("meet the one as well as the other of two", () => {
    const two = pairsOf(numbered(2), numbered(2), NONE).map(({ from, to }) => `${from.tight} ${to.tight}`);
    expect(new Set(two).size).toBe(4);
  });

  it.each([
    [3, 5],
    [5, 3],
  ])("meet as many of the other as there are: %i and %i", (one, other) => {
    const few = pairsOf(numbered(one), numbered(other), NONE);
    expect(few).toHaveLength(12);
    const draws = few.map(({ from, to }) => (one < other ? from : to).tight);
    expect([0, 1, 2].map((draw) => times(draws, draw))).toEqual([4, 4, 4]);
  });
});

describe("a draw that meets another", () => {
  const even = (survey: Partial<Survey> = {}): AssessedSurvey =>
    drawn(
      [0, 300],
      Array.from({ length: 400 }, () => [0.1, 0.2]),
      survey,
    );

  it("has its drive play taken off lost motion, and not off its end float", () => {
    const [{ from, to }] = pairsOf(even(), even(), { from: 0.03, to: 0.01 });
    expect(from.tight).toBeCloseTo(0.07, 12);
    expect(from.loose).toBeCloseTo(0.17, 12);
    expect(from.trueOf(0.15)).toBeCloseTo(0.12, 12);
    expect(to.tight).toBeCloseTo(0.09, 12);
    expect([from.endFloat, to.endFloat]).toEqual([0.01, 0.01]);
  });

  const errors = (pairs: readonly Pair[]): readonly number[] => pairs.map(({ to }) => to.trueOf(0.2) - 0.2);

  it("errs in scale by up to the indicator's limit at the greatest lost motion", () => {
    const found = errors(pairsOf(even(), even({ indicator: { error: 0.02 } }), NONE));
    // 0.2 mm read by up to a tenth too great or too small.
    expect(Math.min(...found)).toBeGreaterThanOrEqual(0.2 / 1.1 - 0.2);
    expect(Math.max(...found)).toBeLessThanOrEqual(0.2 / 0.9 - 0.2);
    expect(Math.max(...found) - Math.min(...found)).toBeGreaterThan(0.95 * (0.2 / 0.9 - 0.2 / 1.1));
  });

  it("errs as the other does where the indicator is the same, and on its own where it is not", () => {
    const named = (name: string): AssessedSurvey => even({ indicator: { name, hysteresis: 0.01 } });
    const apart = (pairs: readonly Pair[]): number =>
      Math.max(...pairs.map(({ from, to }) => Math.abs(to.loose - from.loose)));
    expect(apart(pairsOf(named("no. 4"), named("no. 4"), NONE))).toBe(0);
    // Two hystereses, each anywhere within half of 0.01 mm of its middle.
    const two = apart(pairsOf(named("no. 4"), named("no. 5"), NONE));
    expect(two).toBeGreaterThan(0.009);
    expect(two).toBeLessThanOrEqual(0.01 + 1e-12);
  });
});
