import { describe, expect, it } from "vitest";
import type { CheckInput } from "../../../src/analysis/checks/check.ts";
import { misfit } from "../../../src/analysis/checks/misfit.ts";
import { pushPull } from "../examples.ts";
import { CLEAN, scattering, surveyed } from "./checkInput.ts";

/** Stations so far apart, read twice each, 0.2 mm everywhere but in the middle one. */
const low = (apart: number, value: number, part: Partial<CheckInput> = {}) =>
  misfit(
    surveyed(
      pushPull(
        [-2, -1, 0, 1, 2, 2, 1, 0, -1, -2].map((i) => [100 + apart * i, i === 0 ? value : 0.2] as const),
      ),
      part,
    ),
  );

/** The same with a profile that passes at 0.2 mm everywhere, through stations too far apart for the nut to tell. */
const off = (value: number, stationEffect = { chance: 0, deviation: 0 }) =>
  low(40, value, { fitted: [0.2, 0.2, 0.2, 0.2, 0.2], stationEffect, scatter: scattering(0.005) });

describe("a station below those on both sides of it", () => {
  it("stops the verdict where the nut, of 24 mm, reaches from one side to the other", () => {
    expect(low(12, 0.1)).toEqual([
      {
        check: "readings fit no worn screw",
        severity: "stop",
        message:
          "No nut as long as this one meets so little lost motion at 100 mm, with more of it on both sides. Read this station again, and look at the sheet for figures that were swapped.",
        readings: [2, 7],
      },
    ]);
    expect(low(12.1, 0.1)).toEqual([]);
  });

  it("is nothing where it lies above them: high places can be narrow", () => {
    expect(low(12, 0.3)).toEqual([]);
  });

  // Each of two means of two carries 0.006²/2 and 0.01²/12, three stations have two neighbours: 3.2087 × 0.00726 mm.
  it("is not what scatter and rounding explain", () => {
    const part = { scatter: scattering(0.006) };
    expect(low(12, 0.2 - 0.0231, part)).toEqual([]);
    expect(low(12, 0.2 - 0.0235, part)).toHaveLength(1);
  });
});

describe("readings that no profile passes through", () => {
  it("stop the verdict, and are named", () => {
    expect(off(0.4)).toEqual([
      {
        check: "readings fit no worn screw",
        severity: "stop",
        message:
          "No wear of a screw that this program can draw passes through the readings at 100 mm. Read this station again, and look at the sheet for figures that were swapped.",
        readings: [2, 7],
      },
    ]);
  });

  // One chance in 500 for five stations both ways: 3.5401 × √(0.005²/2 + 0.01²/12) = 0.01615 mm.
  it("lie further from it than scatter and rounding explain", () => {
    expect(off(0.216)).toEqual([]);
    expect(off(0.2163)).toHaveLength(1);
    expect(off(0.184)).toEqual([]);
    expect(off(0.1837)).toHaveLength(1);
  });

  it("may be explained by what stations add", () => {
    expect(off(0.3, { chance: 1, deviation: 0.05 })).toEqual([]);
  });

  it("are none in a clean survey", () => {
    expect(misfit(surveyed(CLEAN))).toEqual([]);
  });
});
