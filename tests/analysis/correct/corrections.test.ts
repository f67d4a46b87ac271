import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { surveyOf } from "../examples.ts";

const values = (given: Survey, lead = 4): number[] => correct(given, lead).readings.map(({ value }) => value);

describe("corrections", () => {
  it("takes a sweep as it is", () => {
    expect(values(surveyOf({ method: "push-pull", readings: [{ position: 10, backlash: 0.21 }] }))).toEqual([
      0.21,
    ]);
  });

  it("multiplies by the cosine of the indicator's angle to the travel", () => {
    const given = surveyOf({
      method: "push-pull",
      indicator: { angleToTravel: 60 },
      readings: [{ position: 10, backlash: 0.2 }],
    });
    expect(values(given)[0]).toBeCloseTo(0.1, 12);
  });

  it("gives pairs the sign that most of them have, and keeps the one against it negative", () => {
    const readings = [
      { position: 0, advancing: 0.1, retracting: 0.3 },
      { position: 10, advancing: 0.1, retracting: 0.35 },
      { position: 20, advancing: 0.14, retracting: 0.1 },
    ];
    const [a, b, c] = values(surveyOf({ method: "indicator-pair", readings }));
    expect(a).toBeCloseTo(0.2, 12);
    expect(b).toBeCloseTo(0.25, 12);
    expect(c).toBeCloseTo(-0.04, 12);
  });

  it("reads across the dial's zero: 98 to 3 of 100 is five divisions", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100 };
    const readings = [{ position: 0, advancing: 3, retracting: 98 }];
    expect(values(surveyOf({ method: "dial-pair", dial, readings }))[0]).toBeCloseTo(0.1, 12);
  });

  it("halves a dial graduated on diameter", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100, graduatedOnDiameter: true };
    const readings = [{ position: 0, advancing: 3, retracting: 98 }];
    expect(values(surveyOf({ method: "dial-pair", dial, readings }))[0]).toBeCloseTo(0.05, 12);
  });

  it("finds how many divisions a dial has from the lead where the survey does not say", () => {
    const dial = { travelPerDivision: 0.05 };
    const readings = [{ position: 0, advancing: 3, retracting: 78 }];
    // A lead of 4 mm at 0.05 mm a division makes 80 divisions: 78 to 3 is five.
    expect(values(surveyOf({ method: "dial-pair", dial, readings }), 4)[0]).toBeCloseTo(0.25, 12);
  });

  it("does not correct a dial for the indicator's angle", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100 };
    const readings = [{ position: 0, advancing: 10, retracting: 5 }];
    const given = surveyOf({ method: "dial-pair", dial, indicator: { angleToTravel: 60 }, readings });
    expect(values(given)[0]).toBeCloseTo(0.1, 12);
  });

  it("leaves out struck readings and keeps the numbers of the others", () => {
    const readings = [
      { position: 0, backlash: 0.2 },
      { position: 10, backlash: 2.2, excluded: "slipped" },
      { position: 20, backlash: 0.3 },
    ];
    const corrected = correct(surveyOf({ method: "push-pull", readings }), 4);
    expect(corrected.readings.map(({ from }) => from)).toEqual([[0], [2]]);
  });

  it("pairs positioning readings of one run at one target", () => {
    const readings = [
      { target: 50, direction: "advancing", reading: 50.002, run: 1 },
      { target: 50, direction: "retracting", reading: 50.012, run: 1 },
      { target: 50, direction: "advancing", reading: 50.003, run: 2 },
    ] as const;
    const corrected = correct(surveyOf({ method: "positioning", readings }), 4);
    expect(corrected.readings).toHaveLength(1);
    expect(corrected.readings[0].value).toBeCloseTo(0.01, 12);
    expect(corrected.readings[0].from).toEqual([0, 1]);
  });

  it("keeps both readings of a pair, turned with its sign and the indicator's angle allowed for", () => {
    const readings = [{ position: 0, advancing: 0.1, retracting: 0.3 }];
    const given = surveyOf({ method: "indicator-pair", indicator: { angleToTravel: 60 }, readings });
    const [{ value, pair }] = correct(given, 4).readings;
    expect(value).toBeCloseTo(0.1, 12);
    expect(pair?.advancing).toBeCloseTo(-0.05, 12);
    expect(pair?.retracting).toBeCloseTo(-0.15, 12);
  });

  it("keeps pairs as they are where as many have one sign as the other", () => {
    const readings = [
      { position: 0, advancing: 0.3, retracting: 0.1 },
      { position: 1, advancing: 0.1, retracting: 0.2 },
    ];
    const [a, b] = values(surveyOf({ method: "indicator-pair", readings }));
    expect(a).toBeCloseTo(0.2, 12);
    expect(b).toBeCloseTo(-0.1, 12);
  });

  it("reads across the dial's zero either way, and keeps the readings such that they differ by the value", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100 };
    const readings = [
      { position: 0, advancing: 97, retracting: 4 },
      { position: 1, advancing: 20, retracting: 30 },
      { position: 2, advancing: 60, retracting: 90 },
    ];
    const corrected = correct(surveyOf({ method: "dial-pair", dial, readings }), 4);
    [0.14, 0.2, 0.6].forEach((expected, i) => {
      const { value, pair } = corrected.readings[i];
      expect(value).toBeCloseTo(expected, 12);
      expect((pair?.advancing ?? 0) - (pair?.retracting ?? 0)).toBeCloseTo(expected, 12);
    });
  });

  it("takes dial readings as they are where neither survey nor lead tells how many divisions there are", () => {
    const readings = [{ position: 0, advancing: 70, retracting: 5 }];
    // A lead of 4 mm is 57.1 divisions of 0.07 mm: not a dial that closes on itself.
    const given = surveyOf({ method: "dial-pair", dial: { travelPerDivision: 0.07 }, readings });
    expect(values(given)[0]).toBeCloseTo(65 * 0.07, 12);
    // One of 4.0028 mm is 80.056 divisions of 0.05 mm; one of 4.0004 mm is near enough to 80.
    const fine = surveyOf({ method: "dial-pair", dial: { travelPerDivision: 0.05 }, readings });
    expect(values(fine, 4.0028)[0]).toBeCloseTo(65 * 0.05, 12);
    expect(values(fine, 4.0004)[0]).toBeCloseTo(15 * 0.05, 12);
    // A lead shorter than half a division leaves no divisions at all.
    expect(values(fine, 0.0001)[0]).toBeCloseTo(65 * 0.05, 12);
  });

  it("finds how many divisions a dial graduated on diameter has", () => {
    const dial = { travelPerDivision: 0.05, graduatedOnDiameter: true };
    const readings = [{ position: 0, advancing: 3, retracting: 158 }];
    // A lead of 4 mm at 0.025 mm a division makes 160 divisions.
    expect(values(surveyOf({ method: "dial-pair", dial, readings }), 4)[0]).toBeCloseTo(0.125, 12);
  });

  it("refuses a survey in dial divisions without its dial, which no inspection can hold", () => {
    const readings = [{ position: 0, advancing: 3, retracting: 1 }];
    expect(() => correct(surveyOf({ method: "dial-pair", readings }), 4)).toThrow(
      "A survey in dial divisions needs its dial.",
    );
  });

  it("keeps runs and targets of positioning apart, in the order of their first reading", () => {
    const readings = [
      { target: 50, direction: "retracting", reading: 50.03, run: 1 },
      { target: 80, direction: "advancing", reading: 80.01, run: 1 },
      { target: 80, direction: "retracting", reading: 80.03, run: 1 },
      { target: 50, direction: "advancing", reading: 50.01, run: 2 },
      { target: 50, direction: "advancing", reading: 50, run: 1 },
      { target: 50, direction: "retracting", reading: 50.02, run: 2 },
    ] as const;
    const corrected = correct(surveyOf({ method: "positioning", readings }), 4);
    expect(corrected.readings.map(({ position, from }) => [position, from])).toEqual([
      [50, [0, 4]],
      [80, [1, 2]],
      [50, [3, 5]],
    ]);
    [0.03, 0.02, 0.01].forEach((expected, i) => {
      expect(corrected.readings[i].value).toBeCloseTo(expected, 12);
    });
    expect(corrected.asPairs).toBe(true);
    // Most are greater when retracting, so both readings are turned.
    expect(corrected.readings[0].pair).toEqual({ advancing: -50, retracting: -50.03 });
  });

  it("allows for the angle of an indicator that reads positions", () => {
    const readings = [
      { target: 50, direction: "advancing", reading: 50, run: 1 },
      { target: 50, direction: "retracting", reading: 49.8, run: 1 },
    ] as const;
    const given = surveyOf({ method: "positioning", indicator: { angleToTravel: 60 }, readings });
    expect(values(given)[0]).toBeCloseTo(0.1, 12);
  });

  it("keeps lost motion that was worked out in its place among pairs", () => {
    const readings = [
      { position: 0, advancing: 0.3, retracting: 0.1 },
      { position: 1, backlash: 0.25 },
      { position: 2, advancing: 0.4, retracting: 0.1 },
    ];
    const corrected = correct(surveyOf({ method: "indicator-pair", readings }), 4);
    expect(corrected.readings.map(({ from }) => from)).toEqual([[0], [1], [2]]);
    expect(corrected.readings[1].value).toBe(0.25);
    expect(corrected.readings[1].pair).toBeUndefined();
  });
});
