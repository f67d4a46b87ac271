import { describe, expect, it } from "vitest";
import { correct } from "../../src/analysis/corrected.ts";
import { stationsOf } from "../../src/analysis/stations.ts";
import type { Survey } from "../../src/inspection/schema.ts";

function survey(part: Partial<Survey> & Pick<Survey, "method" | "readings">): Survey {
  return { id: "s", taken: "2026-03-14", stage: "before-repair", ...part };
}

const values = (given: Survey, lead = 4): number[] => correct(given, lead).readings.map(({ value }) => value);

describe("corrections", () => {
  it("takes a sweep as it is", () => {
    expect(values(survey({ method: "push-pull", readings: [{ position: 10, backlash: 0.21 }] }))).toEqual([
      0.21,
    ]);
  });

  it("multiplies by the cosine of the indicator's angle to the travel", () => {
    const given = survey({
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
    const [a, b, c] = values(survey({ method: "indicator-pair", readings }));
    expect(a).toBeCloseTo(0.2, 12);
    expect(b).toBeCloseTo(0.25, 12);
    expect(c).toBeCloseTo(-0.04, 12);
  });

  it("reads across the dial's zero: 98 to 3 of 100 is five divisions", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100 };
    const readings = [{ position: 0, advancing: 3, retracting: 98 }];
    expect(values(survey({ method: "dial-pair", dial, readings }))[0]).toBeCloseTo(0.1, 12);
  });

  it("halves a dial graduated on diameter", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100, graduatedOnDiameter: true };
    const readings = [{ position: 0, advancing: 3, retracting: 98 }];
    expect(values(survey({ method: "dial-pair", dial, readings }))[0]).toBeCloseTo(0.05, 12);
  });

  it("finds how many divisions a dial has from the lead where the survey does not say", () => {
    const dial = { travelPerDivision: 0.05 };
    const readings = [{ position: 0, advancing: 3, retracting: 78 }];
    // A lead of 4 mm at 0.05 mm a division makes 80 divisions: 78 to 3 is five.
    expect(values(survey({ method: "dial-pair", dial, readings }), 4)[0]).toBeCloseTo(0.25, 12);
  });

  it("does not correct a dial for the indicator's angle", () => {
    const dial = { travelPerDivision: 0.02, divisions: 100 };
    const readings = [{ position: 0, advancing: 10, retracting: 5 }];
    const given = survey({ method: "dial-pair", dial, indicator: { angleToTravel: 60 }, readings });
    expect(values(given)[0]).toBeCloseTo(0.1, 12);
  });

  it("leaves out struck readings and keeps the numbers of the others", () => {
    const readings = [
      { position: 0, backlash: 0.2 },
      { position: 10, backlash: 2.2, excluded: "slipped" },
      { position: 20, backlash: 0.3 },
    ];
    const corrected = correct(survey({ method: "push-pull", readings }), 4);
    expect(corrected.readings.map(({ from }) => from)).toEqual([[0], [2]]);
  });

  it("pairs positioning readings of one run at one target", () => {
    const readings = [
      { target: 50, direction: "advancing", reading: 50.002, run: 1 },
      { target: 50, direction: "retracting", reading: 50.012, run: 1 },
      { target: 50, direction: "advancing", reading: 50.003, run: 2 },
    ] as const;
    const corrected = correct(survey({ method: "positioning", readings }), 4);
    expect(corrected.readings).toHaveLength(1);
    expect(corrected.readings[0].value).toBeCloseTo(0.01, 12);
    expect(corrected.readings[0].from).toEqual([0, 1]);
  });

  it("finds the graduation that readings lie on, not the distance of two that happen to be far apart", () => {
    const readings = [0.16, 0.26, 0.16].map((backlash, i) => ({ position: i, backlash }));
    expect(correct(survey({ method: "push-pull", readings }), 4).resolution.step).toBeCloseTo(0.02, 9);
    const inches = [0.0005, 0.003, 0.0125].map((inch, i) => ({ position: i, backlash: inch * 25.4 }));
    expect(correct(survey({ method: "push-pull", readings: inches }), 4).resolution.step).toBeCloseTo(
      0.0127,
      9,
    );
  });

  it("believes a stated resolution", () => {
    const given = survey({
      method: "push-pull",
      indicator: { resolution: 0.01 },
      readings: [{ position: 0, backlash: 0.2 }],
    });
    expect(correct(given, 4).resolution).toEqual({ step: 0.01, stated: true });
  });
});

describe("stations", () => {
  it("takes positions within a micrometre of each other for one station", () => {
    const readings = [
      { position: 10, backlash: 0.2 },
      { position: 0, backlash: 0.1 },
      { position: 10.0009, backlash: 0.22 },
      { position: 10.0021, backlash: 0.5 },
    ];
    const stations = stationsOf(correct(survey({ method: "push-pull", readings }), 4).readings);
    expect(stations.map(({ readings: each }) => each.length)).toEqual([1, 2, 1]);
    expect(stations[1].mean).toBeCloseTo(0.21, 12);
  });
});
