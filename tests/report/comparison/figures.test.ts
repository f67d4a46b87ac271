import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { changeOf, comparedQuantities, withoutEndFloat } from "../../../src/report/comparison/figures.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleComparison } from "./exampleComparison.ts";

const lengths = lengthsIn("mm", 0.01);
const comparison = exampleComparison();

describe("a change as a figure", () => {
  it.each([
    [{ value: -0.08, low: -0.09, high: -0.07 }, "0.08 mm less", "give or take 0.01"],
    [{ value: 0.08, low: 0.07, high: 0.09 }, "0.08 mm more", "give or take 0.01"],
    [{ value: -0.08, low: -0.18, high: -0.07 }, "0.08 mm less", "between 0.07 and 0.18"],
    [{ value: 0.02, low: -0.01, high: 0.05 }, "none shown", "from -0.01 to 0.05 mm"],
    [{ value: 0.002, low: 0.001, high: 0.003 }, "none shown", "from 0.00 to 0.00 mm"],
  ])("of %j is %s, %s", (change, value, interval) => {
    expect(changeOf(change, lengths)).toEqual({ value, interval });
  });
});

describe("the quantities that surveys are compared by", () => {
  it("are given before, after and as a change, each with its interval", () => {
    const quantities = comparedQuantities(comparison, lengths);
    expect(quantities.map(({ name }) => name)).toEqual([
      "Uniform part",
      "Uneven part",
      "Greatest lost motion",
      "End float",
    ]);
    expect(quantities[0]).toEqual({
      name: "Uniform part",
      before: { value: "0.11 mm", interval: "give or take 0.01" },
      after: { value: "0.03 mm", interval: "give or take 0.01" },
      change: { value: "0.08 mm less", interval: "give or take 0.01" },
    });
  });

  it("say where end float was not measured, and claim no change of it", () => {
    const { from, change } = comparison;
    const quantities = comparedQuantities(
      exampleComparison({
        from: { ...from, assessment: exampleAssessment({ endFloat: null }) },
        change: { ...change, endFloat: null, uniformLessEndFloat: null },
      }),
      lengths,
    );
    expect(quantities.at(-1)).toEqual({
      name: "End float",
      before: { value: "not measured", interval: "" },
      after: { value: "0.01 mm", interval: "give or take less than 0.01" },
      change: { value: "not known", interval: "" },
    });
  });

  it("tell what changed in nut and screw alone, where end float was measured both times", () => {
    expect(withoutEndFloat(comparison, lengths)[0]).toContain(
      "nut and screw alone: 0.08 mm less, give or take 0.01.",
    );
    const change = { ...comparison.change, uniformLessEndFloat: null };
    expect(withoutEndFloat(exampleComparison({ change }), lengths)).toEqual([]);
  });
});
