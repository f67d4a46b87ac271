import { describe, expect, it } from "vitest";
import { runChecks } from "../../../src/analysis/checks/index.ts";
import { pushPull, SETTINGS } from "../examples.ts";
import { CLEAN, CLEAN_PLACES, surveyed } from "./checkInput.ts";

describe("the checks", () => {
  it("find nothing in a clean survey", () => {
    expect(runChecks(surveyed(CLEAN))).toEqual([]);
  });

  it("tell findings in one order, whichever reading they are about", () => {
    // Stations a whole number of turns apart and far apart, one beyond the travel; three mistakes among sixty readings.
    const readings = [0, 60, 120, 180, 240, 400].flatMap((position) =>
      Array.from({ length: 10 }, (_, i) => [position, 0.2 + (i % 2) / 100] as const),
    );
    const mistaken = [
      [120, 2],
      [60, 0.3],
      [240, -0.2],
    ] as const;
    const survey = pushPull([...readings, ...mistaken]);
    const findings = runChecks(surveyed(survey, { settings: { ...SETTINGS, limit: 0.03 } }));
    expect([...new Set(findings.map(({ check }) => check))]).toEqual([
      "limit not attainable",
      "slip",
      "outlying reading",
      "negative lost motion",
      "outside the travel",
      "first station not read again",
      "end float not measured",
      "gap in coverage",
      "in step with the lead",
    ]);
  });

  it("include what only surveys of another kind show", () => {
    const noRepeats = runChecks(surveyed(pushPull([0, 25, 51, 77, 102].map((position) => [position, 0.2]))));
    expect(noRepeats.map(({ check }) => check)).toEqual(
      expect.arrayContaining(["no repeats", "one or two graduations", "first station not read again"]),
    );
    const rows = Array.from({ length: 30 }, (_, i) => ({ position: 10 * i, backlash: 0.2 + 0.01 * i }));
    const pasted = runChecks(surveyed({ ...CLEAN, readings: [...rows, ...rows] }));
    expect(pasted.map(({ check }) => check)).toContain("duplicate rows");
    const growing = [0, 1, 2].flatMap((repeat) =>
      CLEAN_PLACES.map((position, i) => ({
        position,
        backlash: 0.2 + (repeat === 1 ? 0.01 * (i < 7 ? 1 : 6) : 0),
      })),
    );
    expect(runChecks(surveyed({ ...CLEAN, readings: growing })).map(({ check }) => check)).toContain(
      "scatter grows along the travel",
    );
  });
});
