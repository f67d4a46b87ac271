import { describe, expect, it } from "vitest";
import { runChecks } from "../../../src/analysis/checks/index.ts";
import { withoutPartner } from "../../../src/analysis/checks/withoutPartner.ts";
import type { PositioningReading } from "../../../src/inspection/schema.ts";
import { surveyOf } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

type Direction = PositioningReading["direction"];
const at = (target: number, direction: Direction, run: number): PositioningReading => ({
  target,
  direction,
  reading: target + (direction === "advancing" ? -0.1 : 0.1),
  run,
});
const pair = (target: number, run: number) => [at(target, "advancing", run), at(target, "retracting", run)];
const seen = (...readings: readonly PositioningReading[]) =>
  surveyed(surveyOf({ method: "positioning", readings }));
const found = (...readings: readonly PositioningReading[]) => withoutPartner(seen(...readings));

describe("readings without their partner", () => {
  it("are named", () => {
    expect(found(...pair(50, 1), at(50, "advancing", 2), ...pair(80, 1))).toEqual([
      {
        check: "reading without its partner",
        severity: "warning",
        message:
          "There is no reading from the other side in the same run for reading 3 (advancing at 50 mm, run 2), so no lost motion comes of it. Take what is missing, or correct the run.",
        readings: [2],
      },
    ]);
  });

  it("are found from either side, and where the partner was struck", () => {
    const struck = { ...at(50, "advancing", 2), excluded: "bumped" };
    const [finding] = found(struck, ...pair(50, 1), at(50, "retracting", 2), at(80, "retracting", 1));
    expect(finding.readings).toEqual([3, 4]);
    expect(finding.message).toContain(
      "reading 5 (retracting at 80 mm, run 1), so no lost motion comes of them.",
    );
  });

  it("are named one by one up to four, and all listed", () => {
    const alone = [10, 20, 30, 40, 50, 60].map((target) => at(target, "advancing", 1));
    const [finding] = found(...alone, ...pair(80, 1));
    expect(finding.message).toContain("reading 4 (advancing at 40 mm, run 1) and 2 more, so");
    expect(finding.readings).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it("are none where every run was read from both sides, nor among sweeps", () => {
    expect(found(...pair(50, 1), ...pair(50, 2), ...pair(80, 1))).toEqual([]);
    expect(withoutPartner(surveyed(CLEAN))).toEqual([]);
  });
});

describe("a run given twice", () => {
  it("is named with all its readings, and the one that is left over too", () => {
    const findings = found(...pair(50, 1), at(50, "advancing", 1), ...pair(50, 2));
    expect(findings.map(({ check, readings }) => [check, readings])).toEqual([
      ["reading without its partner", [2]],
      ["run given twice", [0, 2]],
    ]);
    expect(findings[1].message).toBe(
      "One run was given more than once from one side: reading 1 (advancing at 50 mm, run 1), reading 3 (advancing at 50 mm, run 1). The first was taken with the first from the other side. Correct the run, or strike what was read in error.",
    );
  });

  it("is named where both sides were given twice, which leaves none over", () => {
    const findings = found(...pair(50, 1), ...pair(50, 1));
    expect(findings.map(({ check, readings }) => [check, readings])).toEqual([
      ["run given twice", [0, 1, 2, 3]],
    ]);
  });

  it("is told with the other checks", () => {
    const checks = runChecks(seen(...pair(50, 1), at(50, "advancing", 1))).map(({ check }) => check);
    expect(checks).toEqual(expect.arrayContaining(["reading without its partner", "run given twice"]));
  });
});
