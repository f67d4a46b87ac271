import { describe, expect, it } from "vitest";
import { outsideTravel } from "../../../src/analysis/checks/outsideTravel.ts";
import { CLEAN, found, surveyed } from "./checkInput.ts";

describe("readings outside the travel", () => {
  const within = [0, 100, 200, 300].map((position) => [position, 0.1] as const);

  it("are warned of, one of them", () => {
    expect(found(outsideTravel, [...within, [310, 0.1]])).toEqual([
      {
        check: "outside the travel",
        severity: "warning",
        message:
          "A reading lies outside the travel from 0 mm to 300 mm (310 mm). Correct the position, or the travel.",
        readings: [4],
      },
    ]);
  });

  it("stop the verdict where all are", () => {
    const severity = (readings: readonly (readonly [number, number])[]) =>
      found(outsideTravel, readings).map((finding) => finding.severity);
    expect(severity([...within.slice(3), [310, 0.1], [320, 0.1]])).toEqual(["warning"]);
    expect(
      severity([
        [310, 0.1],
        [320, 0.1],
      ]),
    ).toEqual(["stop"]);
  });

  it("are named once for each place", () => {
    const [finding] = found(outsideTravel, [
      [-20, 0.2],
      [310, 0.2],
      [310, 0.3],
      [50, 0.2],
    ]);
    expect(finding.message).toBe(
      "3 readings lie outside the travel from 0 mm to 300 mm (-20 mm, 310 mm). Correct the position, or the travel.",
    );
    expect(finding.readings).toEqual([0, 1, 2]);
  });

  it.each([
    [4, "(310 mm, 320 mm, 330 mm, 340 mm)"],
    [5, "(310 mm, 320 mm, 330 mm, 340 mm …)"],
  ])("are named by four places at most: %i", (count, places) => {
    const readings = Array.from({ length: count }, (_, i): [number, number] => [310 + 10 * i, 0.2]);
    expect(found(outsideTravel, readings)[0].message).toContain(places);
  });

  it("are none within a micrometre of its ends", () => {
    expect(
      found(outsideTravel, [
        [-0.0009, 0.2],
        [300.0009, 0.2],
      ]),
    ).toEqual([]);
    expect(found(outsideTravel, [[-0.0011, 0.2]])).toHaveLength(1);
    expect(found(outsideTravel, [[300.0011, 0.2]])).toHaveLength(1);
  });

  it("are none in a clean survey", () => {
    expect(outsideTravel(surveyed(CLEAN))).toEqual([]);
  });
});
