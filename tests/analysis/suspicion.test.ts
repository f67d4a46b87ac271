import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { suspicionsOf } from "../../src/analysis/suspicion.ts";
import { type MetricSlide, slideInMillimetres } from "../../src/inspection/metric.ts";
import type { Survey } from "../../src/inspection/schema.ts";
import { type Fault, NO_FAULT } from "../simulator/faults.ts";
import { simulateSlide } from "../simulator/simulatedSlide.ts";
import { pushPull, surveyOf } from "./examples.ts";

const SLIDE: MetricSlide = {
  id: "slide",
  name: "Slide",
  units: "mm",
  travel: { from: 0, to: 300 },
  screw: { lead: 4 },
  backlashLimit: 0.15,
};

const told = (survey: Survey): readonly (readonly [number, string])[] =>
  [...suspicionsOf(SLIDE, survey, "mm")].map(([index, { message }]) => [index, message] as const);
const marked = (...readings: Parameters<typeof pushPull>[0]) => told(pushPull(readings));

describe("a reading that looks like a slip beside those before it", () => {
  test.each([
    [2.1, "2.10 mm is ten times what the readings around it say (0.21 mm): a slipped decimal point?"],
    [0.021, "0.02 mm is a tenth of what the readings around it say (0.21 mm): a slipped decimal point?"],
    [5.33, "5.33 mm is 25.4 times what the readings around it say (0.21 mm): millimetres taken for inches?"],
    [21, "21.00 mm is far from what the readings around it say (0.21 mm)."],
    [-0.21, "-0.21 mm is below nothing: type lost motion without its sign."],
  ])("of %f mm after 0.21 mm", (backlash, words) => {
    expect(marked([0, 0.21], [25, 0.2], [50, 0.21], [75, 0.21], [100, backlash])).toEqual([[4, words]]);
  });

  test("is told already at the second station, and the first is not blamed", () => {
    expect(marked([0, 0.2], [25, 2])).toEqual([[1, expect.stringContaining("ten times")]]);
    expect(marked([25, 0.2], [0, 2])).toEqual([[1, expect.stringContaining("ten times")]]);
  });

  test("is told against its repeat", () => {
    expect(marked([0, 0.2], [0, 0.29])).toEqual([
      [1, "0.29 mm does not agree with the other reading here, 0.20 mm."],
    ]);
    expect(marked([0, 0.2], [0, 2])).toEqual([[1, expect.stringContaining("ten times")]]);
  });

  test("of two repeats, is the one that the stations around speak against", () => {
    expect(marked([0, 0.2], [25, 0.9], [50, 0.21], [25, 0.2])).toEqual([
      [1, expect.stringContaining("agree")],
    ]);
    expect(marked([0, 0.2], [25, 0.9], [50, 0.21], [25, 0.2], [25, 0.21])).toEqual([
      [1, expect.stringContaining("agree")],
    ]);
  });

  test("lies beyond the travel", () => {
    expect(marked([0, 0.2], [25, 0.2], [500, 0.2])).toEqual([
      [2, "500 mm lies outside the travel from 0 mm to 300 mm."],
    ]);
    expect(marked([0, 0.2], [300, 0.2])).toEqual([]);
  });

  test("does not count once it is struck", () => {
    const readings = [
      { position: 0, backlash: 0.2 },
      { position: 25, backlash: 2, excluded: "Misread" },
    ];
    expect(told(surveyOf({ method: "push-pull", readings }))).toEqual([]);
  });
});

test("a pair of the other sign than the rest is told, the first one setting the sign until there are more", () => {
  const pairs = (...all: readonly (readonly [number, number, number])[]) =>
    told(
      surveyOf({
        method: "indicator-pair",
        readings: all.map(([position, advancing, retracting]) => ({ position, advancing, retracting })),
      }),
    );
  const words =
    "The lost motion comes out as -0.20 mm, against the others: were advancing and retracting swapped?";
  expect(pairs([0, 0.2, 0], [25, 0, 0.2])).toEqual([[1, words]]);
  expect(pairs([0, 0, 0.2], [25, 0.2, 0])).toEqual([[1, words]]);
  expect(pairs([0, 0, 0.2], [25, 0.2, 0], [50, 0.2, 0])).toEqual([[0, words]]);
});

test("a dial read across its zero is no slip", () => {
  const readings = [
    { position: 0, advancing: 98, retracting: 3 },
    { position: 25, advancing: 40, retracting: 45 },
    { position: 50, advancing: 97, retracting: 2 },
  ];
  const dial = { travelPerDivision: 0.04, divisions: 100 };
  expect(told(surveyOf({ method: "dial-pair", dial, readings }))).toEqual([]);
});

test("a screw worn at a sharp edge is not taken for a slip", () => {
  expect(marked([0, 0.05], [25, 0.05], [50, 0.36], [75, 0.38], [100, 0.05])).toEqual([]);
});

describe("on simulated surveys", () => {
  const SLIPPED: Fault = { name: "slipped point", shows: [], slip: true };
  const simulated = (seed: number, fault: Fault) => {
    const { inspection } = simulateSlide(seed, fault);
    const [survey] = inspection.surveys;
    if (survey === undefined) throw new Error("A simulated slide has a survey.");
    return { slide: slideInMillimetres(inspection.slide), survey };
  };

  test("no sound reading is marked, neither when it is entered nor later", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const { slide, survey } = simulated(seed, NO_FAULT);
      for (let count = 1; count <= survey.readings.length; count++) {
        const soFar = { ...survey, readings: survey.readings.slice(0, count) };
        expect([...suspicionsOf(slide, soFar, "mm").values()], `seed ${seed}, ${count} readings`).toEqual([]);
      }
    }
  });

  test("of slips, three in four or more are marked", () => {
    let found = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const { slide, survey } = simulated(seed, SLIPPED);
      if (suspicionsOf(slide, survey, "mm").size > 0) found++;
    }
    expect(found).toBeGreaterThanOrEqual(75);
  });
});

test("any survey has its marks on readings that it holds", () => {
  const figure = fc.double({ min: -500, max: 500, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.record({ position: figure, backlash: figure })), (readings) => {
      const marks = [...suspicionsOf(SLIDE, surveyOf({ method: "push-pull", readings }), "mm").keys()];
      expect(marks.every((index) => index < readings.length)).toBe(true);
    }),
  );
});
