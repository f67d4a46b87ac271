import { describe, expect, it } from "vitest";
import { fewRuns } from "../../../src/analysis/checks/fewRuns.ts";
import { runChecks } from "../../../src/analysis/checks/index.ts";
import type { PositioningReading } from "../../../src/inspection/schema.ts";
import { surveyOf } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

const runs = (target: number, count: number): PositioningReading[] =>
  Array.from({ length: count }, (_, i) => i + 1).flatMap((run) => [
    { target, direction: "advancing", reading: target - 0.1, run },
    { target, direction: "retracting", reading: target + 0.1, run },
  ]);
const seen = (...readings: readonly PositioningReading[]) =>
  surveyed(surveyOf({ method: "positioning", readings }));

describe("fewer runs than five", () => {
  it("are noted, with the readings of the targets concerned", () => {
    expect(fewRuns(seen(...runs(50, 5), ...runs(80, 3), ...runs(90, 4)))).toEqual([
      {
        check: "fewer runs than the standard asks for",
        severity: "note",
        message:
          "ISO 230-2 asks for 5 runs each way at every target, and here there are as few as 3: its figures are computed, and are less sure than they look.",
        readings: Array.from({ length: 14 }, (_, i) => 10 + i),
      },
    ]);
  });

  it("are counted from each side, without struck readings", () => {
    const readings = runs(50, 5).map((item, i) => (i === 3 ? { ...item, excluded: "bumped" } : item));
    const [finding] = fewRuns(seen(...readings));
    expect(finding.message).toContain("as few as 4");
    expect(finding.readings).toEqual([1, 5, 7, 9]);
  });

  it("are told with the other checks", () => {
    const checks = runChecks(seen(...runs(50, 3))).map(({ check }) => check);
    expect(checks).toContain("fewer runs than the standard asks for");
  });

  it("are none with five runs, with more, and among sweeps", () => {
    expect(fewRuns(seen(...runs(50, 5), ...runs(80, 6)))).toEqual([]);
    expect(fewRuns(surveyed(CLEAN))).toEqual([]);
  });
});
