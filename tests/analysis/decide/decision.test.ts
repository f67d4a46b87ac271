import { describe, expect, it } from "vitest";
import {
  chancesOf,
  decide,
  type Extremes,
  endFloatLeft,
  greatestAfterRepair,
  isLimitAttainable,
  marginsOf,
  removedByAdjusting,
  removedByTakeUp,
} from "../../../src/analysis/decide/decision.ts";
import { SETTINGS } from "../examples.ts";

/** Lost motion without end float at the loosest and the tight spot, and the end float. */
function extremes(worst: number, tight: number, endFloat = 0, drivePlay = 0): Extremes {
  return { worst, tight, endFloat, drivePlay };
}

describe("the rule of decision", () => {
  // Each case is worked by hand from the rules; the boundary itself counts as met.
  it.each([
    ["leaves alone what is within the limit", extremes(0.12, 0.1, 0.02), "leave-alone"],
    ["leaves alone what is at the limit", extremes(0.13, 0.1, 0.02), "leave-alone"],
    ["corrects end float that alone is too much", extremes(0.131, 0.1, 0.02), "correct-end-float"],
    ["corrects end float up to worst + attainable = limit", extremes(0.14, 0.1, 0.08), "correct-end-float"],
    ["adjusts past that", extremes(0.141, 0.1, 0.08), "adjust-nut"],
    ["adjusts even wear", extremes(0.6, 0.5, 0), "adjust-nut"],
    ["adjusts where what is left meets the limit", extremes(0.34, 0.225, 0.01), "adjust-nut"],
    ["remakes where what is left is just over", extremes(0.3401, 0.225, 0.01), "remake-screw"],
    ["counts end float that can be left against the screw", extremes(0.345, 0.225, 0.005), "adjust-nut"],
    ["counts no more end float than attainable", extremes(0.34, 0.225, 0.09), "adjust-nut"],
    ["remakes uneven wear", extremes(0.4, 0.1, 0), "remake-screw"],
    ["replaces nuts that have worn out", extremes(0.51, 0.501, 0), "replace-nuts"],
    ["adjusts a nut worn just as far as it may be", extremes(0.51, 0.5, 0), "adjust-nut"],
    ["takes drive play with the reading as found", extremes(0.12, 0.1, 0, 0.02), "leave-alone"],
    ["corrects drive play with end float", extremes(0.12, 0.1, 0.01, 0.03), "correct-end-float"],
  ] as const)("%s", (_, given, action) => {
    expect(decide(given, SETTINGS)).toBe(action);
  });

  it("replaces nuts that cannot be adjusted", () => {
    expect(decide(extremes(0.3, 0.25), { ...SETTINGS, adjustable: false })).toBe("replace-nuts");
  });

  it("replaces nuts that have less to take up than is needed", () => {
    // need = 0.3 + 0 − 0.15 = 0.15
    expect(decide(extremes(0.3, 0.25), { ...SETTINGS, takeUpLeft: 0.15 })).toBe("adjust-nut");
    expect(decide(extremes(0.3, 0.25), { ...SETTINGS, takeUpLeft: 0.149 })).toBe("replace-nuts");
  });

  it("counts take-up already used, less the clearance when new, as wear", () => {
    expect(decide(extremes(0.3, 0.25), { ...SETTINGS, takeUpUsed: 0.26 })).toBe("replace-nuts");
    expect(decide(extremes(0.3, 0.25), { ...SETTINGS, takeUpUsed: 0.26, clearanceNew: 0.05 })).toBe(
      "adjust-nut",
    );
  });

  it("finds a limit attainable from running clearance and end float together", () => {
    expect(isLimitAttainable({ ...SETTINGS, limit: 0.035 })).toBe(true);
    expect(isLimitAttainable({ ...SETTINGS, limit: 0.034 })).toBe(false);
    // 0.0002 in and 0.0005 in, whose sum binary fractions make a little more than 0.0007 in.
    const inches = {
      runningClearance: 0.0002 * 25.4,
      endFloatAttainable: 0.0005 * 25.4,
      limit: 0.0007 * 25.4,
    };
    expect(isLimitAttainable({ ...SETTINGS, ...inches })).toBe(true);
  });

  it("takes up to the running clearance, no more than is left, and never less than nothing", () => {
    expect(removedByTakeUp(0.225, SETTINGS)).toBeCloseTo(0.2, 12);
    expect(removedByTakeUp(0.225, { ...SETTINGS, takeUpLeft: 0.05 })).toBe(0.05);
    expect(removedByTakeUp(0.02, SETTINGS)).toBe(0);
    expect(removedByTakeUp(0.225, { ...SETTINGS, adjustable: false, takeUpLeft: 0.05 })).toBeCloseTo(0.2, 12);
  });

  it("gives each class its share of the draws", () => {
    const draws = [extremes(0.1, 0.1), extremes(0.1, 0.1), extremes(0.3, 0.25), extremes(0.4, 0.1)];
    expect(chancesOf(draws, SETTINGS)).toEqual({
      "leave-alone": 0.5,
      "correct-end-float": 0,
      "adjust-nut": 0.25,
      "replace-nuts": 0,
      "remake-screw": 0.25,
    });
  });

  it("gives each class nothing where no draw is in it", () => {
    expect(chancesOf([extremes(0.4, 0.1)], SETTINGS)).toEqual({
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
    const margins = marginsOf(extremes(0.3, 0.21, 0.04, 0.02), settings);
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
    expect(marginsOf(extremes(0.1, 0.1, 0.004), SETTINGS).withEndFloat).toBeCloseTo(0.046, 12);
  });
});

describe("several draws", () => {
  // As found: 0.12, 0.32, 0.4 and 0.5 mm, with an end float of 0.02 mm.
  const DRAWS = [
    extremes(0.1, 0.08, 0.02),
    extremes(0.3, 0.28, 0.02),
    extremes(0.38, 0.08, 0.02),
    extremes(0.48, 0.08, 0.02),
  ];

  it("give each action its share of them", () => {
    const margins = DRAWS.map((draw) => Math.round(marginsOf(draw, SETTINGS).asFound * 1000));
    expect(margins).toEqual([30, -170, -250, -350]);
    expect(chancesOf(DRAWS, SETTINGS)).toEqual({
      "leave-alone": 0.25,
      "correct-end-float": 0,
      "adjust-nut": 0.25,
      "replace-nuts": 0,
      "remake-screw": 0.5,
    });
  });

  const WORN = [extremes(0.28, 0.26, 0.02), extremes(0.31, 0.27, 0.02), extremes(0.34, 0.28, 0.02)];

  it("keep 0.01 mm of end float and the running clearance above the tight spot, and are never negative", () => {
    const left = greatestAfterRepair(WORN, SETTINGS, removedByTakeUp);
    [0.02, 0.04, 0.06].forEach((uneven, i) => {
      expect(left[i]).toBeCloseTo(uneven + 0.025 + 0.01, 5);
    });
    expect(greatestAfterRepair(WORN, SETTINGS, () => 1)).toEqual([0, 0, 0]);
  });

  it("lose what the nut takes up, drive play, and the end float that need not stay", () => {
    const draws = [0.28, 0.29, 0.3].map((tight) => extremes(tight, tight - 0.05, 0.02, 0.03));
    const removed = removedByAdjusting(draws, SETTINGS);
    [0.28, 0.29, 0.3].forEach((tight, i) => {
      // All but running clearance and 0.01 mm of end float.
      expect(removed[i]).toBeCloseTo(tight - 0.025 - 0.01, 5);
    });
  });
});
