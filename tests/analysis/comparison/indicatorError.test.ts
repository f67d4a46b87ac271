import { standardDeviation } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { drawErrors, sameIndicator, withoutError } from "../../../src/analysis/comparison/indicatorError.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { pushPull } from "../examples.ts";

const DRAWS = 20_000;

const read = (indicator: Survey["indicator"]): Survey => pushPull([[0, 0.1]], { indicator });

/** The spread that indicators give to a change from 0.2 to 0.1 mm. */
function spreadOfChange(before: Survey, after: Survey): number {
  const random = seededRandom(3);
  const changes = Array.from({ length: DRAWS }, () => {
    const errors = drawErrors({ survey: before, greatest: 0.2 }, { survey: after, greatest: 0.1 }, random);
    return withoutError(0.1, errors.to) - withoutError(0.2, errors.from);
  });
  return standardDeviation(changes);
}

describe("the error of indicators in a change", () => {
  it("of two different ones counts for each: a rectangular limit over the root of three, squares added", () => {
    const spread = spreadOfChange(read({ name: "a", error: 0.006 }), read({ name: "b", error: 0.003 }));
    expect(spread).toBeCloseTo(Math.hypot(0.006, 0.003) / Math.sqrt(3), 3.8);
  });

  it("of one and the same counts only for what the two surveys do not share", () => {
    const one = read({ name: "a", error: 0.006 });
    // Half of the lost motion is common, and so is half of the error of scale.
    expect(spreadOfChange(one, one)).toBeCloseTo(0.003 / Math.sqrt(3), 4);
  });

  it("falls out where it is one indicator's hysteresis, and counts twice over for two", () => {
    const one = read({ name: "a", hysteresis: 0.004 });
    expect(spreadOfChange(one, one)).toBeCloseTo(0, 9);
    const other = read({ name: "b", hysteresis: 0.004 });
    expect(spreadOfChange(one, other)).toBeCloseTo((0.004 * Math.SQRT2) / Math.sqrt(12), 4);
  });

  it("is nothing where none is stated", () => {
    expect(spreadOfChange(read({}), read({}))).toBe(0);
  });
});

describe("one and the same indicator", () => {
  it("is one that both surveys name alike", () => {
    expect(sameIndicator(read({ name: "no. 4" }), read({ name: " no. 4" }))).toBe(true);
    expect(sameIndicator(read({ name: "no. 4" }), read({ name: "no. 5" }))).toBe(false);
    expect(sameIndicator(read({}), read({}))).toBe(false);
    expect(sameIndicator(read({ name: "" }), read({ name: "" }))).toBe(false);
  });
});
