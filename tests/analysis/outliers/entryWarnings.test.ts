import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { entryWarnings } from "../../../src/analysis/outliers/entryWarnings.ts";
import { type MetricSlide, slideInMillimetres } from "../../../src/inspection/metric.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { type Fault, NO_FAULT } from "../../simulator/faults.ts";
import { simulateSlide } from "../../simulator/simulatedSlide.ts";
import { pushPull, surveyOf } from "../examples.ts";

const SLIDE: MetricSlide = {
  id: "slide",
  name: "Slide",
  units: "mm",
  travel: { from: 0, to: 300 },
  screw: { lead: 4 },
  backlashLimit: 0.15,
};

const told = (survey: Survey): readonly (readonly [number, string])[] =>
  [...entryWarnings(SLIDE, survey, "mm")].map(([index, { message }]) => [index, message] as const);
const marked = (...readings: Parameters<typeof pushPull>[0]) => told(pushPull(readings));
const kinds = (...readings: Parameters<typeof pushPull>[0]) =>
  [...entryWarnings(SLIDE, pushPull(readings), "mm")].map(([index, { kind }]) => [index, kind] as const);

describe("a reading that looks like a slip beside those before it", () => {
  test.each([
    [2.1, "2.10 mm is ten times what the readings around it say (0.21 mm): a slipped decimal point?"],
    [0.021, "0.02 mm is a tenth of what the readings around it say (0.21 mm): a slipped decimal point?"],
    [5.33, "5.33 mm is 25.4 times what the readings around it say (0.21 mm): millimetres taken for inches?"],
    [21, "21.00 mm is far from what the readings around it say (0.21 mm)."],
    [-0.21, "-0.21 mm is negative: enter lost motion without its sign."],
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

describe("how far off a reading may be", () => {
  /** Five stations 25 mm apart, the middle one as given and the others at one height. */
  const amid = (usual: number, value: number) =>
    kinds([0, usual], [25, usual], [50, value], [75, usual], [100, usual]);

  test.each([
    ["a tenth, no further off than scatter brings", 0.04, 0.004, undefined],
    ["a tenth, further off", 0.05, 0.005, "slip"],
    ["fourteen times", 0.2, 2.8, undefined],
    ["sixteen times", 0.2, 3.2, "far"],
    ["a fourteenth", 3, 3 / 14, undefined],
    ["a thirtieth", 3, 0.1, "far"],
    // Three deviations of 0.004 mm and half a graduation of 0.01 mm.
    ["less negative than scatter and rounding bring", 0.02, -0.0169, undefined],
    ["more negative", 0.02, -0.0171, "sign"],
  ])("of what is around: %s", (_, usual, value, kind) => {
    expect(amid(usual, value)).toEqual(kind === undefined ? [] : [[2, kind]]);
  });

  test("is more where the repeats at three stations scatter more", () => {
    // By 1.4826 / √2 of 0.036 mm: five deviations and two graduations are 0.2087 mm.
    const twice = [0, 25].flatMap((at) => [[at, 0.007] as const, [at, 0.043] as const]);
    const thrice = [...twice, [50, 0.007] as const, [50, 0.043] as const];
    expect(kinds(...thrice, [75, 0.233])).toEqual([]);
    expect(kinds(...thrice, [75, 0.235])).toEqual([[6, "slip"]]);
    expect(kinds(...twice, [50, 0.025], [75, 0.233])).toEqual([[5, "slip"]]);
  });

  test("from its repeats: five deviations of a difference and a graduation", () => {
    // 5 √2 · 0.004 mm + 0.01 mm is 0.0383 mm.
    expect(kinds([0, 0.2], [0, 0.238])).toEqual([]);
    expect(kinds([0, 0.2], [0, 0.2386])).toEqual([[1, "repeat"]]);
  });

  test("beyond the travel, at either end: no further than is one place with it", () => {
    expect(kinds([0, 0.2], [300.0009, 0.2], [-0.0009, 0.2])).toEqual([]);
    expect(kinds([0, 0.2], [300.0011, 0.2], [-0.0011, 0.2])).toEqual([
      [2, "outside"],
      [1, "outside"],
    ]);
  });
});

describe("of readings at one station that do not agree", () => {
  test("the one against several is told, though it was the first", () => {
    expect(kinds([0, 0.9], [0, 0.2], [0, 0.2])).toEqual([[0, "repeat"]]);
  });

  test("the lower of two is told where the stations around bear the higher out", () => {
    expect(kinds([0, 0.9], [25, 0.9], [25, 0.25], [50, 0.9])).toEqual([[2, "repeat"]]);
  });
});

test("lost motion that is no difference of a pair is not turned round, however many are negative", () => {
  expect(kinds([0, -0.2], [25, 0.2])).toEqual([[0, "sign"]]);
});

test("a log of more than a thousand readings is left to the checks", () => {
  const log = (count: number) =>
    Array.from({ length: count }, (_, i) => [i / 4, i === 500 ? 2 : 0.2] as const);
  expect(kinds(...log(1000))).toEqual([[500, "slip"]]);
  expect(kinds(...log(1001))).toEqual([]);
});

describe("on simulated surveys", () => {
  const SLIPPED: Fault = { name: "slipped point", shows: [], slip: true };
  const simulated = (seed: number, fault: Fault) => {
    const { inspection } = simulateSlide(seed, fault);
    const [survey] = inspection.surveys;
    if (survey === undefined) throw new Error("A simulated slide has a survey.");
    return { slide: slideInMillimetres(inspection.slide), survey };
  };

  test("no clean reading is marked, neither when it is entered nor later", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const { slide, survey } = simulated(seed, NO_FAULT);
      for (let count = 1; count <= survey.readings.length; count++) {
        const soFar = { ...survey, readings: survey.readings.slice(0, count) };
        expect([...entryWarnings(slide, soFar, "mm").values()], `seed ${seed}, ${count} readings`).toEqual(
          [],
        );
      }
    }
  });

  test("of slips, three in four or more are marked", () => {
    let found = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const { slide, survey } = simulated(seed, SLIPPED);
      if (entryWarnings(slide, survey, "mm").size > 0) found++;
    }
    expect(found).toBeGreaterThanOrEqual(75);
  });
});

test("any survey has its marks on readings that it holds", () => {
  const figure = fc.double({ min: -500, max: 500, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.record({ position: figure, backlash: figure })), (readings) => {
      const marks = [...entryWarnings(SLIDE, surveyOf({ method: "push-pull", readings }), "mm").keys()];
      expect(marks.every((index) => index < readings.length)).toBe(true);
    }),
  );
});
