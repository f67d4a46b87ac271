import { describe, expect, it } from "vitest";
import { findingsOf } from "../../../src/analysis/checks/index.ts";
import { pushPull, SETTINGS } from "../examples.ts";
import { CLEAN, surveyed } from "./surveyed.ts";

describe("the checks", () => {
  it("find nothing in a clean survey", () => {
    expect(findingsOf(surveyed(CLEAN))).toEqual([]);
  });

  it("tell findings in one order, whichever reading they are about", () => {
    // Five stations a whole number of turns apart and far apart, one of them beyond the travel and one tenfold.
    const readings = [0, 60, 120, 180, 400].map(
      (position) => [position, position === 120 ? 2 : 0.2] as const,
    );
    const survey = pushPull([...readings, [0, -0.2]]);
    const findings = findingsOf(surveyed(survey, { settings: { ...SETTINGS, limit: 0.03 } }));
    expect([...new Set(findings.map(({ check }) => check))]).toEqual([
      "limit not attainable",
      "slip",
      "outlying reading",
      "negative lost motion",
      "outside the travel",
      "end float not measured",
      "gap in coverage",
      "in step with the lead",
    ]);
  });

  it("include what only surveys of another kind show", () => {
    const noRepeats = findingsOf(surveyed(pushPull([0, 25, 51, 77].map((position) => [position, 0.2]))));
    expect(noRepeats.map(({ check }) => check)).toEqual(
      expect.arrayContaining(["no repeats", "one or two graduations", "first station not read again"]),
    );
    const rows = CLEAN.readings.slice(0, 13);
    const pasted = findingsOf(surveyed({ ...CLEAN, readings: [...rows, ...rows] }));
    expect(pasted.map(({ check }) => check)).toContain("duplicate rows");
    const growing = CLEAN.readings.map((_, i) => ({
      position: 25 * (i % 13),
      backlash: i < 13 ? 0.2 : 0.2 + 0.01 * (i - 13),
    }));
    expect(findingsOf(surveyed({ ...CLEAN, readings: growing })).map(({ check }) => check)).toContain(
      "scatter grows along the travel",
    );
  });
});
