import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { surveyOf } from "../examples.ts";

describe("the resolution of a survey", () => {
  it("finds the graduation that readings lie on, not the distance of two that happen to be far apart", () => {
    const readings = [0.16, 0.26, 0.16].map((backlash, i) => ({ position: i, backlash }));
    expect(correct(surveyOf({ method: "push-pull", readings }), 4).resolution.step).toBeCloseTo(0.02, 9);
    const inches = [0.0005, 0.003, 0.0125].map((inch, i) => ({ position: i, backlash: inch * 25.4 }));
    expect(correct(surveyOf({ method: "push-pull", readings: inches }), 4).resolution.step).toBeCloseTo(
      0.0127,
      9,
    );
  });

  it("takes a hundredth for the graduation where readings do not differ", () => {
    const readings = [0.2, 0.2].map((backlash, i) => ({ position: i, backlash }));
    expect(correct(surveyOf({ method: "push-pull", readings }), 4).resolution).toEqual({
      step: 0.01,
      stated: false,
    });
  });

  it("looks for the graduation in what was read, before the indicator's angle is allowed for", () => {
    const readings = [0.16, 0.26].map((backlash, i) => ({ position: i, backlash }));
    const found = correct(surveyOf({ method: "push-pull", indicator: { angleToTravel: 60 }, readings }), 4);
    expect(found.resolution.step).toBeCloseTo(0.01, 12);
    expect(found.resolution.stated).toBe(false);
    const stated = { angleToTravel: -60, resolution: 0.01 };
    const believed = correct(surveyOf({ method: "push-pull", indicator: stated, readings }), 4);
    expect(believed.resolution.step).toBeCloseTo(0.005, 12);
    expect(believed.resolution.stated).toBe(true);
  });

  it("looks for the graduation in both readings of a pair, and in positions", () => {
    const pairs = [
      { position: 0, advancing: 0.5, retracting: 0.3 },
      { position: 1, advancing: 0.55, retracting: 0.35 },
    ];
    expect(correct(surveyOf({ method: "indicator-pair", readings: pairs }), 4).resolution.step).toBeCloseTo(
      0.05,
      12,
    );
    const targets = [
      { target: 10, direction: "advancing", reading: 10.002, run: 1 },
      { target: 10, direction: "retracting", reading: 10.014, run: 1 },
      { target: 20, direction: "advancing", reading: 20.008, run: 1 },
    ] as const;
    expect(correct(surveyOf({ method: "positioning", readings: targets }), 4).resolution.step).toBeCloseTo(
      0.002,
      12,
    );
  });

  it("does not look for the graduation in struck readings", () => {
    const readings = [
      { position: 0, backlash: 0.16 },
      { position: 1, backlash: 0.26 },
      { position: 2, backlash: 0.2001, excluded: "from another indicator" },
    ];
    expect(correct(surveyOf({ method: "push-pull", readings }), 4).resolution.step).toBeCloseTo(0.02, 12);
  });

  it("has a dial's graduation from its divisions, a whole one where readings do not differ", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100 };
    const halves = [{ position: 0, advancing: 10.5, retracting: 4 }];
    const stated = { resolution: 0.5 };
    expect(
      correct(surveyOf({ method: "dial-pair", dial, indicator: stated, readings: halves }), 4).resolution,
    ).toEqual({ step: 0.01, stated: false });
    const same = [{ position: 0, advancing: 10, retracting: 10 }];
    expect(correct(surveyOf({ method: "dial-pair", dial, readings: same }), 4).resolution).toEqual({
      step: 0.02,
      stated: false,
    });
    const onDiameter = { ...dial, graduatedOnDiameter: true };
    expect(
      correct(surveyOf({ method: "dial-pair", dial: onDiameter, readings: same }), 4).resolution.step,
    ).toBe(0.01);
  });

  it("does not take the readings of an indicator for dial divisions, though a dial is described", () => {
    const dial = { travelPerDivision: 0.05, divisions: 100 };
    const readings = [{ position: 0, advancing: 0.5, retracting: 0.3 }];
    const indicator = { resolution: 0.01 };
    expect(correct(surveyOf({ method: "indicator-pair", dial, indicator, readings }), 4).resolution).toEqual({
      step: 0.01,
      stated: true,
    });
  });

  it("does not take worked-out lost motion for dial divisions", () => {
    const dial = { travelPerDivision: 0.05, divisions: 100 };
    const readings = [0.2, 0.24, 0.3].map((backlash, i) => ({ position: i, backlash }));
    const corrected = correct(surveyOf({ method: "dial-pair", dial, readings }), 4);
    expect(corrected.resolution.step).toBeCloseTo(0.02, 12);
    expect(corrected.readings.map(({ value }) => value)).toEqual([0.2, 0.24, 0.3]);
    expect(corrected.roundings).toBe(1);
  });

  it("counts one rounding for a sweep and two for a pair, and knows which readings carry drive play", () => {
    const sweep = correct(surveyOf({ method: "push-pull", readings: [{ position: 0, backlash: 0.2 }] }), 4);
    expect([sweep.roundings, sweep.asPairs]).toEqual([1, false]);
    const pairs = [{ position: 0, advancing: 0.5, retracting: 0.3 }];
    const pair = correct(surveyOf({ method: "indicator-pair", readings: pairs }), 4);
    expect([pair.roundings, pair.asPairs]).toEqual([2, true]);
    const workedOut = correct(
      surveyOf({ method: "indicator-pair", readings: [{ position: 0, backlash: 1 }] }),
      4,
    );
    expect([workedOut.roundings, workedOut.asPairs]).toEqual([1, true]);
  });

  it("believes a stated resolution", () => {
    const given = surveyOf({
      method: "push-pull",
      indicator: { resolution: 0.01 },
      readings: [{ position: 0, backlash: 0.2 }],
    });
    expect(correct(given, 4).resolution).toEqual({ step: 0.01, stated: true });
  });
});
