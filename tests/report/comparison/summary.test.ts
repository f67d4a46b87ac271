import { describe, expect, it } from "vitest";
import type { Comparison } from "../../../src/analysis/comparison/comparison.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { comparisonSummary } from "../../../src/report/comparison/summary.ts";
import { EVEN, exampleAssessment } from "../exampleAssessment.ts";
import { exampleComparison } from "./exampleComparison.ts";

const words = (changes: Partial<Comparison> = {}): string =>
  comparisonSummary(exampleComparison(changes), lengthsIn("mm", 0.01));

const { change, from, to, acceptance } = exampleComparison();
const NO_CHANGE = { value: 0.001, low: -0.01, high: 0.01 };
const even = { ...to, assessment: exampleAssessment(EVEN) };

describe("a comparison in words", () => {
  it("says what adjusting removed, what it left, and whether the limit is kept", () => {
    expect(words()).toBe(
      "Taking up the nut removed 0.08 mm, give or take 0.01, everywhere; the uneven 0.20 mm is still there. " +
        'In the survey "after", the greatest lost motion over the working range is 0.23 mm, give or take 0.01. ' +
        "That is over the limit of 0.15 mm, proven.",
    );
  });

  it("names what was done, and claims nothing of it where that is not known", () => {
    expect(words({ done: "parts-replaced" })).toMatch(/^Fitting the new parts removed 0\.08 mm/);
    expect(words({ done: "repaired" })).toMatch(/^The repair removed 0\.08 mm/);
    expect(words({ done: null })).toMatch(/^Lost motion is less by 0\.08 mm/);
  });

  it("says where the change is not the same everywhere", () => {
    expect(words({ sameEverywhere: false })).toContain("at the tight spot, and not the same everywhere");
  });

  it("says that lost motion has grown, or that the readings show no change", () => {
    const uniform = { value: 0.05, low: 0.04, high: 0.06 };
    expect(words({ change: { ...change, uniform } })).toMatch(/^Lost motion has grown by 0\.05 mm/);
    expect(words({ change: { ...change, uniform: NO_CHANGE } })).toMatch(
      /^The uniform part has not changed as far as the readings show \(by anything from -0\.01 to 0\.01 mm\)/,
    );
  });

  it.each([
    [
      "less, and some is left",
      { value: -0.1, low: -0.12, high: -0.08 },
      from,
      to,
      /uneven part is less by 0\.10 mm.*and 0\.20 mm of it is still there/,
    ],
    [
      "gone",
      { value: -0.2, low: -0.22, high: -0.18 },
      from,
      even,
      /of the uneven 0\.20 mm the readings no longer show anything/,
    ],
    [
      "more",
      { value: 0.1, low: 0.08, high: 0.12 },
      from,
      to,
      /uneven part has grown by 0\.10 mm.*, to 0\.20 mm/,
    ],
    [
      "lost sight of",
      NO_CHANGE,
      from,
      even,
      /whether the uneven 0\.20 mm is still there, the readings do not show/,
    ],
    ["never there", NO_CHANGE, even, even, /neither survey shows an uneven part/],
  ])("says of the uneven part that it is %s", (_, uneven, before, after, expected) => {
    expect(words({ change: { ...change, uneven }, from: before, to: after })).toMatch(expected);
  });

  it("tells of end float only where it has changed", () => {
    expect(words()).not.toContain("End float");
    const endFloat = { value: -0.05, low: -0.06, high: -0.04 };
    expect(words({ change: { ...change, endFloat } })).toContain(
      "End float, a share of that, is less by 0.05 mm",
    );
  });

  it("says what stands against a claim", () => {
    const held = { ...acceptance, conformance: "not proven", withheld: "coverage" } as const;
    expect(words({ acceptance: held })).toContain(
      "That is within or over the limit of 0.15 mm, not proven, for its stations are too few or too far apart.",
    );
  });
});
