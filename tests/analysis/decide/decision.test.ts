import { describe, expect, it } from "vitest";
import {
  chancesOf,
  decide,
  type Extremes,
  endFloatLeft,
  limitAttainable,
  marginsOf,
  takenUp,
} from "../../../src/analysis/decide/decision.ts";
import { SETTINGS } from "../examples.ts";

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
    expect(decide(extremes, SETTINGS)).toBe(action);
  });

  it("replaces nuts that cannot be adjusted", () => {
    expect(decide(found(0.3, 0.25), { ...SETTINGS, adjustable: false })).toBe("replace-nuts");
  });

  it("replaces nuts that have less to take up than is needed", () => {
    // need = 0.3 + 0 − 0.15 = 0.15
    expect(decide(found(0.3, 0.25), { ...SETTINGS, takeUpLeft: 0.15 })).toBe("adjust-nut");
    expect(decide(found(0.3, 0.25), { ...SETTINGS, takeUpLeft: 0.149 })).toBe("replace-nuts");
  });

  it("counts take-up already used, less the clearance when new, as wear", () => {
    expect(decide(found(0.3, 0.25), { ...SETTINGS, takeUpUsed: 0.26 })).toBe("replace-nuts");
    expect(decide(found(0.3, 0.25), { ...SETTINGS, takeUpUsed: 0.26, clearanceNew: 0.05 })).toBe(
      "adjust-nut",
    );
  });

  it("finds a limit attainable from running clearance and end float together", () => {
    expect(limitAttainable({ ...SETTINGS, limit: 0.035 })).toBe(true);
    expect(limitAttainable({ ...SETTINGS, limit: 0.034 })).toBe(false);
    // 0.0002 in and 0.0005 in, whose sum binary fractions make a little more than 0.0007 in.
    const inches = {
      runningClearance: 0.0002 * 25.4,
      endFloatAttainable: 0.0005 * 25.4,
      limit: 0.0007 * 25.4,
    };
    expect(limitAttainable({ ...SETTINGS, ...inches })).toBe(true);
  });

  it("takes up to the running clearance, no more than is left, and never less than nothing", () => {
    expect(takenUp(0.225, SETTINGS)).toBeCloseTo(0.2, 12);
    expect(takenUp(0.225, { ...SETTINGS, takeUpLeft: 0.05 })).toBe(0.05);
    expect(takenUp(0.02, SETTINGS)).toBe(0);
    expect(takenUp(0.225, { ...SETTINGS, adjustable: false, takeUpLeft: 0.05 })).toBeCloseTo(0.2, 12);
  });

  it("gives each class its share of the draws", () => {
    const draws = [found(0.1, 0.1), found(0.1, 0.1), found(0.3, 0.25), found(0.4, 0.1)];
    expect(chancesOf(draws, SETTINGS)).toEqual({
      "leave-alone": 0.5,
      "correct-end-float": 0,
      "adjust-nut": 0.25,
      "replace-nuts": 0,
      "remake-screw": 0.25,
    });
  });

  it("gives each class nothing where no draw is in it", () => {
    expect(chancesOf([found(0.4, 0.1)], SETTINGS)).toEqual({
      "leave-alone": 0,
      "correct-end-float": 0,
      "adjust-nut": 0,
      "replace-nuts": 0,
      "remake-screw": 1,
    });
  });
});

describe("the margins of the rule", () => {
  it("are how far each question is from changing its answer", () => {
    const settings = { ...SETTINGS, takeUpLeft: 0.3, takeUpUsed: 0.12, clearanceNew: 0.05 };
    const margins = marginsOf(found(0.3, 0.21, 0.04, 0.02), settings);
    // As found: 0.15 − 0.36; end float put right to 0.01: 0.15 − 0.31; taken up: 0.15 − (0.09 + 0.025 + 0.01);
    // needs 0.16 of 0.3; has worn by 0.21 + 0.12 − 0.05 of 0.5.
    expect(margins.asFound).toBeCloseTo(-0.21, 12);
    expect(margins.withEndFloat).toBeCloseTo(-0.16, 12);
    expect(margins.withTakeUp).toBeCloseTo(0.025, 12);
    expect(margins.takeUpLeft).toBeCloseTo(0.14, 12);
    expect(margins.wear).toBeCloseTo(0.22, 12);
  });

  it("count no more end float as left than there is", () => {
    expect(endFloatLeft(0.004, SETTINGS)).toBe(0.004);
    expect(endFloatLeft(0.04, SETTINGS)).toBe(0.01);
    expect(marginsOf(found(0.1, 0.1, 0.004), SETTINGS).withEndFloat).toBeCloseTo(0.046, 12);
  });
});
