import { describe, expect, it } from "vitest";
import { chancesOf, decide, type Extremes, limitAttainable, takenUp } from "../../src/analysis/decision.ts";
import type { Settings } from "../../src/analysis/settings.ts";

const settings: Settings = {
  travel: { from: 0, to: 300 },
  workingRange: { from: 0, to: 300 },
  lead: 4,
  pitch: 4,
  limit: 0.15,
  runningClearance: 0.025,
  endFloatAttainable: 0.01,
  engagedLength: 24,
  adjustable: true,
  takeUpLeft: Number.POSITIVE_INFINITY,
  takeUpUsed: 0,
  clearanceNew: 0,
  wearLimit: 0.5,
  holdsLoad: false,
  springHides: false,
};

/** Lost motion less end float at the loosest and the tightest spot, and the end float. */
function found(worst: number, tight: number, endFloat = 0, drivePlay = 0): Extremes {
  return { worst, tight, endFloat, drivePlay };
}

describe("the rule of decision", () => {
  // Each case is worked by hand from the rules; the boundary itself counts as met.
  it.each([
    ["leaves alone what is within the limit", found(0.12, 0.1, 0.02), "leave-alone"],
    ["leaves alone what is at the limit", found(0.13, 0.1, 0.02), "leave-alone"],
    ["corrects end float that alone is too much", found(0.131, 0.1, 0.02), "correct-end-float"],
    ["corrects end float up to worst + attainable = limit", found(0.14, 0.1, 0.08), "correct-end-float"],
    ["adjusts past that", found(0.141, 0.1, 0.08), "adjust-nut"],
    ["adjusts even wear", found(0.6, 0.5, 0), "adjust-nut"],
    ["adjusts where what is left meets the limit", found(0.34, 0.225, 0.01), "adjust-nut"],
    ["remakes where what is left is just over", found(0.3401, 0.225, 0.01), "remake-screw"],
    ["counts end float that can be left against the screw", found(0.345, 0.225, 0.005), "adjust-nut"],
    ["counts no more end float than attainable", found(0.34, 0.225, 0.09), "adjust-nut"],
    ["remakes uneven wear", found(0.4, 0.1, 0), "remake-screw"],
    ["replaces nuts that have worn out", found(0.51, 0.501, 0), "replace-nuts"],
    ["adjusts a nut worn just as far as it may be", found(0.51, 0.5, 0), "adjust-nut"],
    ["takes drive play with the reading as found", found(0.12, 0.1, 0, 0.02), "leave-alone"],
    ["corrects drive play with end float", found(0.12, 0.1, 0.01, 0.03), "correct-end-float"],
  ] as const)("%s", (_, extremes, action) => {
    expect(decide(extremes, settings)).toBe(action);
  });

  it("replaces nuts that cannot be adjusted", () => {
    expect(decide(found(0.3, 0.25), { ...settings, adjustable: false })).toBe("replace-nuts");
  });

  it("replaces nuts that have less to take up than is needed", () => {
    // need = 0.3 + 0 − 0.15 = 0.15
    expect(decide(found(0.3, 0.25), { ...settings, takeUpLeft: 0.15 })).toBe("adjust-nut");
    expect(decide(found(0.3, 0.25), { ...settings, takeUpLeft: 0.149 })).toBe("replace-nuts");
  });

  it("counts take-up already used, less the clearance when new, as wear", () => {
    expect(decide(found(0.3, 0.25), { ...settings, takeUpUsed: 0.26 })).toBe("replace-nuts");
    expect(decide(found(0.3, 0.25), { ...settings, takeUpUsed: 0.26, clearanceNew: 0.05 })).toBe(
      "adjust-nut",
    );
  });

  it("finds a limit attainable from running clearance and end float together", () => {
    expect(limitAttainable({ ...settings, limit: 0.035 })).toBe(true);
    expect(limitAttainable({ ...settings, limit: 0.034 })).toBe(false);
  });

  it("takes up to the running clearance, no more than is left, and never less than nothing", () => {
    expect(takenUp(0.225, settings)).toBeCloseTo(0.2, 12);
    expect(takenUp(0.225, { ...settings, takeUpLeft: 0.05 })).toBe(0.05);
    expect(takenUp(0.02, settings)).toBe(0);
    expect(takenUp(0.225, { ...settings, adjustable: false, takeUpLeft: 0.05 })).toBeCloseTo(0.2, 12);
  });

  it("gives each class its share of the draws", () => {
    const draws = [found(0.1, 0.1), found(0.1, 0.1), found(0.3, 0.25), found(0.4, 0.1)];
    expect(chancesOf(draws, settings)).toEqual({
      "leave-alone": 0.5,
      "correct-end-float": 0,
      "adjust-nut": 0.25,
      "replace-nuts": 0,
      "remake-screw": 0.25,
    });
  });
});
