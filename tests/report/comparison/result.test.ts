import { describe, expect, it } from "vitest";
import { comparisonResult } from "../../../src/report/comparison/result.ts";
import { exampleInspection } from "../exampleInspection.ts";
import { exampleComparison, exampleRunningIn } from "./exampleComparison.ts";
import { comparisonSchema } from "./resultSchema.ts";

const result = comparisonResult("x.json", exampleComparison(), exampleRunningIn(), exampleInspection(), [
  "a",
]);
const inches = comparisonResult(
  "x.json",
  exampleComparison(),
  exampleRunningIn({ by: "hours", lookAgain: { at: 25.4, why: "limit" } }),
  exampleInspection({ units: "in" }),
  [],
);

describe("the result of a comparison", () => {
  it("has the published keys and no others, also after being written and read", () => {
    expect(comparisonSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
  });

  it("gives a slide kept in inches its lengths in inches", () => {
    // 0.08 mm / 25.4 = 0.00315 in; 0.15 mm = 0.005906 in; 300 mm = 11.811024 in; 0.02 mm = 0.000787 in.
    expect(inches.change.uniform.value).toBe(-0.00315);
    expect(inches.acceptance.limit).toBe(0.005906);
    expect(inches.difference.at(-1)).toMatchObject({ position: 11.811024, change: -0.00315 });
    expect(inches.runningIn?.growth.value).toBe(0.000787);
    expect(inches.runningIn?.trend[0]?.uniform).toBe(0.001969);
    expect(inches.from.profile.at(-1)?.position).toBe(11.811024);
  });

  it("does not convert chances, nor hours", () => {
    expect(inches.runningIn?.chances.steady).toBe(0.8);
    expect(inches.runningIn?.lookAgain.at).toBe(25.4);
    expect(result.acceptance.chance).toBe(0);
  });

  it("writes times as dates where the trend goes by date", () => {
    expect(result.runningIn?.surveys.at(-1)?.at).toBe("2026-07-20");
    expect(result.runningIn?.limitReached.horizon).toBe("2029-04-15");
  });

  it("keeps null for what is not known", () => {
    const { change } = exampleComparison();
    const silent = comparisonResult(
      "x.json",
      exampleComparison({ change: { ...change, endFloat: null, uniformLessEndFloat: null }, done: null }),
      null,
      exampleInspection(),
      [],
    );
    expect(comparisonSchema.parse(JSON.parse(JSON.stringify(silent)))).toEqual(silent);
    expect([silent.change.endFloat, silent.runningIn, silent.done]).toEqual([null, null, null]);
  });
});
