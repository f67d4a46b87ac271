import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { conformanceOf, uncertaintyBudget } from "../../../src/analysis/decide/uncertainty.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { drawsOf, pushPull } from "../examples.ts";

/** Draws whose loosest spots have the standard deviation 0.01 mm: 0.19, 0.2 and 0.21. */
const PROFILE = drawsOf(
  [0, 100],
  [
    [0.1, 0.19],
    [0.1, 0.2],
    [0.1, 0.21],
  ],
  0.008,
);

function budget(survey: Survey, loosestAt = 200) {
  const corrected = correct(survey, 4);
  const loosest = { position: loosestAt, backlash: 0.2 };
  return uncertaintyBudget(PROFILE, loosest, stationsOf(corrected.readings), corrected, survey);
}

const lineOf = (survey: Survey, source: string, loosestAt?: number): number | undefined =>
  budget(survey, loosestAt).lines.find((line) => line.source === source)?.standard;

// One reading at 100 mm and four at 200 mm, on an indicator of 0.006 mm.
const SURVEY = pushPull(
  [
    [100, 0.1],
    [200, 0.2],
    [200, 0.2],
    [200, 0.2],
    [200, 0.2],
  ],
  { indicator: { resolution: 0.006, error: 0.003, hysteresis: 0.006 } },
);

describe("the uncertainty budget", () => {
  it("has a line for each source, worked by hand", () => {
    const { lines } = budget(SURVEY);
    const repeatability = 0.008 / 2;
    const rounding = 0.006 / Math.sqrt(12);
    const expected = [
      ["repeatability", repeatability],
      ["rounding", rounding],
      ["indicator's stated error", 0.003 / Math.sqrt(3)],
      ["indicator's hysteresis", 0.006 / Math.sqrt(12)],
      ["end float (part of lost motion as found)", 0],
      ["interpolation between stations", Math.sqrt(0.0001 - repeatability ** 2 - rounding ** 2)],
    ] as const;
    expect(lines.map((line) => line.source)).toEqual(expected.map(([source]) => source));
    lines.forEach((line, i) => {
      expect(line.standard).toBeCloseTo(expected[i][1], 12);
    });
  });

  it("says of each line whether it is known: all but what an indicator may leave unstated", () => {
    const indicators = ["indicator's stated error", "indicator's hysteresis"];
    const unstated = (survey: Survey): readonly string[] =>
      budget(survey)
        .lines.filter(({ stated }) => !stated)
        .map(({ source }) => source);
    expect(unstated(SURVEY)).toEqual([]);
    expect(unstated({ ...SURVEY, indicator: { error: 0, hysteresis: 0 } })).toEqual([]);
    expect(unstated({ ...SURVEY, indicator: { resolution: 0.006 } })).toEqual(indicators);
  });

  it("combines the lines by the root of the sum of squares, and expands it by two", () => {
    const { combined, expanded } = budget(SURVEY);
    // What the draws spread, 0.01² in all, and what the indicator adds: 0.003² / 3 + 0.006² / 12.
    const byHand = Math.sqrt(0.0001 + 0.000003 + 0.000003);
    expect(combined).toBeCloseTo(byHand, 12);
    expect(expanded).toBeCloseTo(2 * byHand, 12);
  });

  it("takes the repeats of the station nearest to the loosest spot", () => {
    expect(lineOf(SURVEY, "repeatability", 151)).toBeCloseTo(0.004, 12);
    expect(lineOf(SURVEY, "repeatability", 149)).toBeCloseTo(0.008, 12);
    expect(lineOf(SURVEY, "repeatability", 0)).toBeCloseTo(0.008, 12);
    expect(lineOf(SURVEY, "repeatability", 300)).toBeCloseTo(0.004, 12);
  });

  it("counts two roundings for a pair", () => {
    const readings = [0, 100].map((position) => ({ position, advancing: 0.5, retracting: 0.3 }));
    const pairs = pushPull([], { method: "indicator-pair", indicator: { resolution: 0.006 }, readings });
    expect(lineOf(pairs, "rounding")).toBeCloseTo(0.006 / Math.sqrt(6), 12);
  });

  it("has nothing for an indicator whose error is not stated", () => {
    const survey = pushPull([[0, 0.1]], { indicator: { resolution: 0.006 } });
    expect(lineOf(survey, "indicator's stated error")).toBe(0);
    expect(lineOf(survey, "indicator's hysteresis")).toBe(0);
    const { indicator: _, ...bare } = survey;
    expect(lineOf(bare, "indicator's stated error")).toBe(0);
    expect(lineOf(bare, "indicator's hysteresis")).toBe(0);
  });

  it("has nothing for interpolation where repeatability and rounding explain the spread", () => {
    const single = pushPull([[100, 0.2]], { indicator: { resolution: 0.06 } });
    expect(lineOf(single, "interpolation between stations")).toBe(0);
  });
});

describe("conformance with the limit", () => {
  // The guard band is 1.65 × 0.01 = 0.0165 mm to either side of 0.15 mm.
  it.each([
    [0.1334, "proven"],
    [0.1336, "not proven"],
    [0.15, "not proven"],
    [0.1664, "not proven"],
    [0.1666, "disproven"],
  ] as const)("of %f is %s", (worst, conformance) => {
    expect(conformanceOf(worst, 0.01, 0.15)).toBe(conformance);
  });

  it("is proven where the guard band reaches just to the limit, and not disproven there", () => {
    // A guard band of 16.5, whole halves that binary fractions hold exactly.
    expect(conformanceOf(0.5, 10, 17)).toBe("proven");
    expect(conformanceOf(17, 10, 0.5)).toBe("not proven");
    expect(conformanceOf(17.5, 10, 0.5)).toBe("disproven");
  });

  it("of what is known without error is proven at the limit itself", () => {
    expect(conformanceOf(0.15, 0, 0.15)).toBe("proven");
    expect(conformanceOf(0.1501, 0, 0.15)).toBe("disproven");
  });
});
