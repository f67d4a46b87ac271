import { describe, expect, it } from "vitest";
import { misfit } from "../../../src/analysis/checks/misfit.ts";
import { pushPull } from "../examples.ts";
import { CLEAN, surveyed } from "./surveyed.ts";

/** Three stations read once; the profile passes through 0.2 mm everywhere. */
const off = (value: number, deviation = 0) =>
  misfit(
    surveyed(
      pushPull([
        [0, 0.2],
        [50, value],
        [100, 0.2],
      ]),
      { fitted: [0.2, 0.2, 0.2], stationEffect: { chance: 0, deviation } },
    ),
  );

describe("readings that fit no worn screw", () => {
  it("stop the verdict, and are named", () => {
    expect(off(0.4)).toEqual([
      {
        check: "readings fit no worn screw",
        severity: "stop",
        message:
          "No wear of a screw passes through the readings at 50 mm. Read this station again, and look at the sheet for figures that were swapped.",
        readings: [1],
      },
    ]);
  });

  // Seven times √(0.004² + 0.01²/12): 0.0345 mm.
  it("lie seven standard deviations from the profile, rounding included", () => {
    expect(off(0.234)).toEqual([]);
    expect(off(0.235)).toHaveLength(1);
    expect(off(0.165)).toHaveLength(1);
  });

  it("may be explained by what stations add", () => {
    expect(off(0.4, 0.05)).toEqual([]);
  });

  it("are none in a clean survey", () => {
    expect(misfit(surveyed(CLEAN))).toEqual([]);
  });
});
