import { describe, expect, it } from "vitest";
import {
  type OneWay,
  type Positioning,
  positioningOf,
} from "../../../src/analysis/positioning/positioning.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import type { PositioningReading, Reading, Survey } from "../../../src/inspection/schema.ts";
import reference from "../../reference/positioning.json" with { type: "json" };
import { assessed, inspectionOf, surveyOf } from "../examples.ts";
import { ADJUST } from "../knownDraws.ts";

type Runs = readonly (readonly number[])[];

/** Readings at each target from both sides, run by run: out over all targets, and back. */
function cycles(targets: readonly number[], advancing: Runs, retracting: Runs): PositioningReading[] {
  return advancing[0].flatMap((_, run) => {
    const way = (direction: PositioningReading["direction"], readings: Runs) =>
      targets.map((target, i) => ({ target, direction, reading: readings[i][run], run: run + 1 }));
    return [...way("advancing", advancing), ...way("retracting", retracting).toReversed()];
  });
}

function positionsOf(readings: readonly Reading[], part: Partial<Survey> = {}): Positioning {
  const survey = surveyOf({ method: "positioning", readings, ...part });
  const positioning = positioningOf(survey, 0.001, seededRandom(1));
  if (positioning === undefined) throw new Error("No target was read from both sides.");
  return positioning;
}

const REFERENCE = cycles(reference.targets, reference.readings.advancing, reference.readings.retracting);

describe("the quantities of ISO 230-2", () => {
  it.each(["advancing", "retracting"] as const)("of each target while %s are those of R", (way) => {
    const found = positionsOf(REFERENCE);
    for (const quantity of ["deviation", "standardDeviation", "repeatability"] as const) {
      found.targets.forEach((target, i) => {
        expect(target[way][quantity]).toBeCloseTo(reference[way][quantity][i], 9);
      });
    }
  });

  it("of each target both ways are those of R", () => {
    const found = positionsOf(REFERENCE);
    expect(found.targets.map(({ target }) => target)).toEqual(reference.targets);
    found.targets.forEach(({ reversal, repeatability }, i) => {
      expect(reversal).toBeCloseTo(reference.reversals[i], 9);
      expect(repeatability).toBeCloseTo(reference.repeatabilities[i], 9);
    });
  });

  it.each(["repeatability", "systematicDeviation", "accuracy"] as const)("of the axis: %s", (quantity) => {
    const found = positionsOf(REFERENCE);
    for (const way of ["advancing", "retracting", "bidirectional"] as const) {
      expect(found[quantity][way]).toBeCloseTo(reference[quantity][way], 9);
    }
  });

  it.each(["reversal", "meanReversal", "meanDeviationRange"] as const)("of the axis: %s", (quantity) => {
    expect(positionsOf(REFERENCE)[quantity]).toBeCloseTo(reference[quantity], 9);
  });

  it.each(["advancing", "retracting"] as const)("are told with how uneven %s is along the travel", (way) => {
    expect(positionsOf(REFERENCE).flanks?.[way].range).toBeCloseTo(reference.range[way], 9);
  });

  it("are those worked out by hand for two targets and two runs", () => {
    const { targets, ...axis } = positionsOf(
      cycles(
        [0, 10],
        [
          [-0.01, -0.03],
          [9.99, 9.99],
        ],
        [
          [0.01, 0.01],
          [10.03, 10.05],
        ],
      ),
    );
    // Deviations −0.02 and 0.01, then −0.01 and 0.04; where two readings differ by 0.02, s is 0.01 √2.
    const s = 0.01 * Math.SQRT2;
    const close = (value: number) => expect.closeTo(value, 12);
    const way = (deviation: number, standardDeviation: number): OneWay => ({
      deviation: close(deviation),
      standardDeviation: close(standardDeviation),
      repeatability: close(4 * standardDeviation),
    });
    expect(targets).toEqual([
      {
        target: 0,
        advancing: way(-0.02, s),
        retracting: way(0.01, 0),
        reversal: close(-0.03),
        repeatability: close(2 * s + 0.03),
      },
      {
        target: 10,
        advancing: way(-0.01, 0),
        retracting: way(0.04, s),
        reversal: close(-0.05),
        repeatability: close(2 * s + 0.05),
      },
    ]);
    expect(axis).toEqual({
      runs: 2,
      correctedTo20: false,
      reversal: close(0.05),
      meanReversal: close(-0.04),
      repeatability: {
        advancing: close(4 * s),
        retracting: close(4 * s),
        bidirectional: close(2 * s + 0.05),
      },
      meanDeviationRange: close(0.02),
      systematicDeviation: { advancing: close(0.01), retracting: close(0.03), bidirectional: close(0.06) },
      accuracy: {
        advancing: close(4 * s),
        retracting: close(0.03 + 2 * s),
        bidirectional: close(0.06 + 4 * s),
      },
      flanks: null,
    });
  });

  it("take the scatter of one direction for the repeatability where it is the greatest", () => {
    const wide = [[-0.1, 0.1]];
    const still = [[0, 0]];
    // 4 s with s = 0.1 √2; both ways only 2 s.
    expect(positionsOf(cycles([0], wide, still)).targets[0].repeatability).toBeCloseTo(0.4 * Math.SQRT2, 12);
    expect(positionsOf(cycles([0], still, wide)).targets[0].repeatability).toBeCloseTo(0.4 * Math.SQRT2, 12);
  });

  it("are the same in whatever order the readings stand", () => {
    const found = positionsOf(REFERENCE);
    const reversed = positionsOf(REFERENCE.toReversed());
    expect(reversed.targets.map(({ target }) => target)).toEqual(reference.targets);
    expect(reversed.reversal).toBeCloseTo(found.reversal, 12);
    expect(reversed.accuracy.bidirectional).toBeCloseTo(found.accuracy.bidirectional ?? 0, 12);
  });
});

describe("the readings that count", () => {
  const at = (
    direction: PositioningReading["direction"],
    run: number,
    reading: number,
    target = 50,
  ): PositioningReading => ({ target, direction, run, reading });
  const both = [at("advancing", 1, 49.98), at("retracting", 1, 50.02)];

  it("are not the struck ones", () => {
    const { targets, runs } = positionsOf([...both, { ...at("advancing", 2, 60), excluded: "bumped" }]);
    expect(targets[0].advancing.deviation).toBeCloseTo(-0.02, 12);
    expect(runs).toBe(1);
  });

  it("are those without a partner too, in the mean of their direction", () => {
    const { targets } = positionsOf([...both, at("advancing", 2, 49.96)]);
    expect(targets[0].advancing.deviation).toBeCloseTo(-0.03, 12);
    expect(targets[0].reversal).toBeCloseTo(-0.05, 12);
  });

  it("are those at targets that were read from both sides", () => {
    const { targets, reversal } = positionsOf([
      ...both,
      at("advancing", 1, 80.5, 80),
      at("retracting", 1, 90.5, 90),
    ]);
    expect(targets.map(({ target }) => target)).toEqual([50]);
    expect(reversal).toBeCloseTo(0.04, 12);
  });

  it("give no scatter where one target was read once from a side, and the rest all the same", () => {
    const { targets, repeatability, accuracy, systematicDeviation, runs } = positionsOf([
      ...both,
      at("advancing", 2, 49.97),
      ...[1, 2].flatMap((run) => [at("advancing", run, 79.98, 80), at("retracting", run, 80, 80)]),
    ]);
    expect(runs).toBe(1);
    expect(targets[0].retracting.standardDeviation).toBeNull();
    expect(targets[0].repeatability).toBeNull();
    expect(positionsOf([...both, at("retracting", 2, 50.01)]).targets[0].repeatability).toBeNull();
    expect(targets[1].repeatability).toBeCloseTo(0.02, 12);
    const advancing = expect.closeTo(0.02 * Math.SQRT2, 12);
    expect(repeatability).toEqual({ advancing, retracting: null, bidirectional: null });
    expect(accuracy).toMatchObject({ retracting: null, bidirectional: null });
    expect(systematicDeviation.bidirectional).toBeCloseTo(0.045, 12);
  });

  it("are none in a survey by another method, nor in one that was read from one side", () => {
    const sweeps = surveyOf({ method: "push-pull", readings: [{ position: 0, backlash: 0.2 }] });
    expect(positioningOf(sweeps, 0.001, seededRandom(1))).toBeUndefined();
    const oneSide = surveyOf({ method: "positioning", readings: both.slice(0, 1) });
    expect(positioningOf(oneSide, 0.001, seededRandom(1))).toBeUndefined();
  });
});

describe("positions at 20 °C", () => {
  const readings = cycles([0, 1000], [[0], [1000.02]], [[0.05], [1000.07]]);
  const deviations = (conditions: unknown) => {
    const { targets, correctedTo20 } = positionsOf(readings, { conditions });
    return [correctedTo20, targets[0].advancing.deviation, targets[1].advancing.deviation];
  };

  it("are what is left of them when the screw has grown by less", () => {
    // 11.5 µm/m for each of 5 K is 0.0575 mm in 1000.02 mm.
    const [corrected, atZero, far] = deviations({ temperature: 25, expansion: 11.5 });
    expect(corrected).toBe(true);
    expect(atZero).toBe(0);
    expect(far).toBeCloseTo(0.02 - 0.0575, 5);
  });

  it.each([
    ["nothing", undefined],
    ["only a temperature", { temperature: 25 }],
    ["only an expansion", { expansion: 11.5 }],
    ["a temperature in words", { temperature: "25 °C", expansion: 11.5 }],
    ["words", "25 °C"],
  ])("are the positions as read where the conditions give %s", (_, conditions) => {
    const [corrected, , far] = deviations(conditions);
    expect(corrected).toBe(false);
    expect(far).toBeCloseTo(0.02, 9);
  });

  it("are assumed where nothing says otherwise", () => {
    const line = "Positions were read at 20 °C: the survey's conditions give no temperature and expansion.";
    const said = (conditions: unknown) =>
      assessed(inspectionOf(surveyOf({ method: "positioning", conditions, readings: REFERENCE })), ADJUST)
        .assumed;
    expect(said(undefined)).toContain(line);
    expect(said({ temperature: 25, expansion: 11.5 })).not.toContain(line);
  });

  it("allow for a scale out of line with the travel", () => {
    const indicator = { angleToTravel: 60 };
    const { targets } = positionsOf(cycles([50], [[100.2]], [[100.4]]), { indicator });
    expect(targets[0].advancing.deviation).toBeCloseTo(0.1, 9);
    expect(targets[0].retracting.deviation).toBeCloseTo(0.2, 9);
  });
});

describe("the assessment of a positioning survey", () => {
  const survey = surveyOf({ method: "positioning", readings: REFERENCE });
  const assessment = () => assessed(inspectionOf(survey), ADJUST);

  it("holds the quantities, and lost motion by target and run", () => {
    const { positioning, stations } = assessment();
    expect(positioning?.reversal).toBeCloseTo(reference.reversal, 9);
    expect(stations.map(({ readings }) => readings.length)).toEqual(Array(9).fill(5));
    stations.forEach(({ mean }, i) => {
      expect(mean).toBeCloseTo(-reference.reversals[i], 9);
    });
  });

  it("sees that the first target was read again at the end of the last run", () => {
    expect(assessment().checks.map(({ check }) => check)).not.toContain("first station not read again");
  });

  it("is in millimetres for an inspection in inches", () => {
    const inInches = {
      ...survey,
      readings: REFERENCE.map((item) => ({
        ...item,
        target: item.target / 25.4,
        reading: item.reading / 25.4,
      })),
    };
    const slide = {
      units: "in",
      travel: { from: 0, to: 12 },
      screw: { lead: 0.2 },
      backlashLimit: 0.006,
    } as const;
    const { positioning } = assessed(inspectionOf(inInches, slide), ADJUST);
    expect(positioning?.runs).toBe(5);
    expect(positioning?.targets[8].target).toBeCloseTo(299, 9);
    expect(positioning?.accuracy.bidirectional).toBeCloseTo(reference.accuracy.bidirectional, 9);
  });

  it("is refused, with what is missing, where no target was read from both sides", () => {
    const oneSide = REFERENCE.filter(({ direction }) => direction === "advancing");
    expect(() => assessed(inspectionOf({ ...survey, readings: oneSide }), ADJUST)).toThrow(
      "there are no readings to assess",
    );
  });
});
