import { describe, expect, it } from "vitest";
import { gap } from "../../../src/analysis/checks/gap.ts";
import { CLEAN, found, surveyed } from "./checkInput.ts";

describe("a gap in coverage", () => {
  it("is warned of, for each", () => {
    // Stations at 24 and 124 mm with a nut of 24 mm leave 48 to 100 mm and 148 to 300 mm.
    expect(
      found(gap, [
        [24, 0.2],
        [124, 0.2],
      ]),
    ).toEqual([
      {
        check: "gap in coverage",
        severity: "warning",
        message:
          "No station lies within the nut's length of the stretch from 48 mm to 100 mm. Read at least one there.",
        readings: [],
      },
      {
        check: "gap in coverage",
        severity: "warning",
        message:
          "No station lies within the nut's length of the stretch from 148 mm to 300 mm. Read at least one there.",
        readings: [],
      },
    ]);
  });

  it("is told in whole millimetres", () => {
    expect(found(gap, [[24.4, 0.2]])[0].message).toContain("from 0 mm to 0 mm");
    expect(found(gap, [[124.7, 0.2]])[0].message).toContain("from 0 mm to 101 mm");
  });

  it("is none in a clean survey", () => {
    expect(gap(surveyed(CLEAN))).toEqual([]);
  });
});
