import { describe, expect, it } from "vitest";
import { fewGraduations } from "../../../src/analysis/checks/fewGraduations.ts";
import { CLEAN, found, surveyed } from "./checkInput.ts";

const values = (...given: readonly number[]) =>
  found(
    fewGraduations,
    given.map((value, i) => [10 * i, value]),
  );

describe("readings on one or two graduations", () => {
  it("are noted, on two", () => {
    expect(values(0.2, 0.21, 0.2, 0.21, 0.2)).toEqual([
      {
        check: "one or two graduations",
        severity: "note",
        message:
          "All readings lie on two graduations of 0.01 mm. An indicator with finer graduations would show whether lost motion is the same everywhere.",
        readings: [0, 1, 2, 3, 4],
      },
    ]);
  });

  it("are noted, on one, whatever binary fractions make of it", () => {
    expect(values(0.2, 0.2, 0.2, 0.2 + 1e-12, 0.2 - 1e-12)[0].message).toContain(
      "lie on one graduation of 0.01 mm",
    );
  });

  it("are not noted of fewer than five, or on three graduations", () => {
    expect(values(0.2, 0.2, 0.2, 0.2)).toEqual([]);
    expect(values(0.2, 0.21, 0.22, 0.2, 0.2)).toEqual([]);
    expect(fewGraduations(surveyed(CLEAN))).toEqual([]);
  });
});
