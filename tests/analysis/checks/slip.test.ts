import { describe, expect, it } from "vitest";
import { slip } from "../../../src/analysis/checks/slip.ts";
import { CLEAN, found, surveyed } from "./surveyed.ts";

/** A station of four readings of which the last may have slipped, between two others. */
const among = (value: number, usual = 0.2) =>
  found(slip, [
    [0, usual],
    [0, usual],
    [50, usual],
    [50, usual],
    [50, usual],
    [50, value],
    [100, usual],
    [100, usual],
  ]);

describe("a slipped reading", () => {
  it.each([
    [2, "2.00 mm, ten times what the readings around it say: a slipped decimal point?"],
    [0.02, "0.02 mm, a tenth of what the readings around it say: a slipped decimal point?"],
    [5.08, "5.08 mm, 25.4 times what the readings around it say: millimetres taken for inches?"],
    [0.008, "0.01 mm, 1/25.4 of what the readings around it say: inches taken for millimetres?"],
  ])("of %f mm among 0.2 mm stops the verdict", (value, words) => {
    expect(among(value)).toEqual([
      {
        check: "slip",
        severity: "stop",
        message: `Reading 6 at 50 mm is ${words} Look at the sheet, or take it again.`,
        readings: [5],
      },
    ]);
  });

  // The ratio may be off by a factor of e^0.15 = 1.162: from 8.61 to 11.62, and from 21.86 to 29.51.
  it.each([
    [1.73, 1],
    [1.71, 0],
    [2.32, 1],
    [2.33, 0],
    [4.38, 1],
    [4.36, 0],
    [5.89, 1],
    [5.91, 0],
    [0.0231, 1],
    [0.0233, 0],
    [0.0173, 1],
    [0.0171, 0],
  ])("is one whose ratio to the others comes near to the factor: %f to 0.2", (value, count) => {
    expect(among(value)).toHaveLength(count);
  });

  it("is not one that repeatability and graduation explain", () => {
    // Five times 0.004 and two graduations of 0.01: 0.04 mm.
    expect(among(0.005, 0.046)).toHaveLength(1);
    expect(among(0.004, 0.0439)).toHaveLength(0);
  });

  it("is found between its neighbours where it has no repeats", () => {
    const findings = found(slip, [
      [0, 0.2],
      [50, 0.2],
      [100, 2],
      [150, 0.2],
      [200, 0.2],
    ]);
    expect(findings.map(({ readings }) => readings)).toEqual([[2]]);
  });

  it("is not looked for where nothing is expected, or lost motion below nothing", () => {
    expect(found(slip, [[0, 0.2]])).toEqual([]);
    expect(among(-2)).toEqual([]);
    expect(among(-2, -0.2)).toEqual([]);
    expect(among(2, 0)).toEqual([]);
  });

  it("is told once for several", () => {
    const readings = CLEAN.readings.map((reading, i) =>
      i % 5 === 0 ? { position: 25 * i, backlash: 2 } : reading,
    );
    const [finding, ...others] = slip(surveyed({ ...CLEAN, readings }));
    expect(others).toEqual([]);
    expect(finding.readings.length).toBeGreaterThan(1);
    expect(finding.message).toContain("differ from those around them");
  });

  it("is none in a clean survey", () => {
    expect(slip(surveyed(CLEAN))).toEqual([]);
  });
});
