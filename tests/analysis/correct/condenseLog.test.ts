import { describe, expect, it } from "vitest";
import { condenseLog } from "../../../src/analysis/correct/condenseLog.ts";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import type { Settings } from "../../../src/analysis/decide/settings.ts";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { assessed, inspectionOf, pushPull, SETTINGS, surveyOf } from "../examples.ts";

const TRAVEL = 300;
const normal = normals(seededRandom(7));

/** A log of so many readings along the travel, whose scatter wanders slowly, as a slide's drag does. */
function log(count: number) {
  let wander = 0;
  return Array.from({ length: count }, (_, i) => {
    wander = 0.999 * wander + 0.0002 * normal();
    const position = (TRAVEL * i) / (count - 1);
    return [position, Math.round((0.2 + wander + 0.003 * normal()) * 1000) / 1000] as const;
  });
}

const GIVEN = { indicator: { resolution: 0.001 }, endFloat: [0.01, 0.01] };

describe("a log from an indicator's cable", () => {
  it("counts as one reading for each short stretch, and says so", () => {
    const { stations, assumed } = assessed(inspectionOf(pushPull(log(20_000), GIVEN)));
    expect(stations.length).toBeGreaterThan(50);
    expect(stations.length).toBeLessThan(120);
    expect(stations.every(({ readings }) => readings.length === 1)).toBe(true);
    expect(assumed.join(" ")).toMatch(/The 20000 readings of the log count as \d+/);
  });

  it("does not shrink its interval as if neighbouring readings were independent", () => {
    const width = (count: number): number => {
      const { uniform } = assessed(inspectionOf(pushPull(log(count), GIVEN)));
      return uniform.high - uniform.low;
    };
    // A hundred times as many independent readings would make the interval ten times narrower.
    expect(width(1_000) / width(100_000)).toBeLessThan(4);
  });

  it("leaves a survey by hand as it is", () => {
    const { stations, assumed } = assessed(inspectionOf(pushPull(log(100), GIVEN)));
    expect(stations).toHaveLength(100);
    expect(assumed.join(" ")).not.toContain("log");
  });
});

describe("a log, condensed", () => {
  /** Readings every 2 mm, each its own number in thousandths. */
  const every2mm = (count: number, from = 0) =>
    correct(pushPull(Array.from({ length: count }, (_, i) => [from + 2 * i, 0.001 * i] as const)), 4);
  const of = (count: number, part: Partial<Settings> = {}) =>
    condenseLog(every2mm(count), { ...SETTINGS, ...part });

  it("has the median place and value of each stretch of a quarter of the nut, with all its readings", () => {
    // Stretches of 5 mm hold 0, 2 and 4 mm; 6 and 8 mm; 10, 12 and 14 mm …
    const { readings } = of(150, { engagedLength: 20 });
    expect(readings).toHaveLength(60);
    expect(readings[0]).toEqual({ position: 2, value: expect.closeTo(0.001, 12), from: [0, 1, 2] });
    expect(readings[1]).toEqual({ position: 7, value: expect.closeTo(0.0035, 12), from: [3, 4] });
    expect(readings[59].from).toEqual([148, 149]);
  });

  it("has stretches of a sixtieth of the travel for a long nut", () => {
    // 600 mm / 60 = 10 mm: five readings each.
    const { readings } = of(150, { travel: { from: 0, to: 600 }, engagedLength: 400 });
    expect(readings).toHaveLength(30);
    expect(readings[0].from).toEqual([0, 1, 2, 3, 4]);
    const elsewhere = { ...SETTINGS, travel: { from: 200, to: 800 }, engagedLength: 400 };
    expect(condenseLog(every2mm(150, 200), elsewhere).readings).toHaveLength(30);
  });

  it("has stretches of a quarter of a short nut, though a sixtieth of the travel is longer", () => {
    // 4 mm: two readings each.
    const { readings } = of(150, { engagedLength: 16 });
    expect(readings.map(({ from }) => from).slice(0, 2)).toEqual([
      [0, 1],
      [2, 3],
    ]);
  });

  it("has its stretches counted from the start of the travel", () => {
    const shifted = { ...SETTINGS, travel: { from: 101, to: 401 }, engagedLength: 20 };
    const { readings } = condenseLog(every2mm(150, 101), shifted);
    expect(readings[0].from).toEqual([0, 1, 2]);
  });

  it("is what has more than a hundred and twenty stations", () => {
    expect(of(120)).toEqual(every2mm(120));
    expect(of(121).readings.length).toBeLessThan(121);
  });

  it("is not a survey by hand of many repeats", () => {
    const repeats = Array.from({ length: 300 }, (_, i) => [2 * (i % 100), 0.2] as const);
    expect(condenseLog(correct(pushPull(repeats), 4), SETTINGS).readings).toHaveLength(300);
  });

  it("has pairs whose difference is its value, where it is of pairs", () => {
    const readings = Array.from({ length: 150 }, (_, i) => ({
      position: 2 * i,
      advancing: 0.5 + 0.01 * (i % 2),
      retracting: 0.3 - 0.01 * (i % 3),
    }));
    const pairs = correct(surveyOf({ method: "indicator-pair", readings }), 4);
    for (const { value, pair } of condenseLog(pairs, SETTINGS).readings) {
      expect((pair?.advancing ?? 0) - (pair?.retracting ?? 0)).toBeCloseTo(value, 12);
      expect(Math.abs((pair?.advancing ?? 0) - 0.505)).toBeLessThan(0.006);
    }
    expect(condenseLog(every2mm(150), SETTINGS).readings.every(({ pair }) => pair === undefined)).toBe(true);
  });

  it("keeps its resolution and its kind", () => {
    const before = every2mm(150);
    const after = of(150);
    expect(after.resolution).toEqual(before.resolution);
    expect(after.roundings).toBe(before.roundings);
    expect(after.asPairs).toBe(before.asPairs);
  });
});
