import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { targetsOf } from "../../../src/analysis/correct/targets.ts";
import type { PositioningReading } from "../../../src/inspection/schema.ts";
import { surveyOf } from "../examples.ts";

const up = (run: number, reading: number, target = 50): PositioningReading => ({
  target,
  direction: "advancing",
  reading,
  run,
});
const down = (run: number, reading: number, target = 50): PositioningReading => ({
  ...up(run, reading, target),
  direction: "retracting",
});

const lostMotions = (...readings: readonly PositioningReading[]) =>
  correct(surveyOf({ method: "positioning", readings }), 4).readings.map(({ value, from }) => [
    Number(value.toFixed(6)),
    from,
  ]);

describe("lost motion from positions", () => {
  it("takes a reading given twice in one run for one pair only, the first", () => {
    expect(lostMotions(up(1, 50), down(1, 49.8), up(1, 50.3))).toEqual([[0.2, [0, 1]]]);
    expect(lostMotions(up(1, 50), up(1, 50.3), down(1, 49.8))).toEqual([[0.2, [0, 2]]]);
    expect(lostMotions(down(1, 49.8), down(1, 49.1), up(1, 50))).toEqual([[0.2, [0, 2]]]);
  });

  it("pairs a whole run that was given twice in the order given, no reading in two pairs", () => {
    expect(lostMotions(up(1, 50), down(1, 49.8), up(1, 50.1), down(1, 49.7))).toEqual([
      [0.2, [0, 1]],
      [0.4, [2, 3]],
    ]);
  });

  it("does not pair a struck reading, but one taken in its place", () => {
    const struck = { ...up(1, 55), excluded: "bumped" };
    expect(lostMotions(struck, down(1, 49.8), up(1, 50))).toEqual([[0.2, [1, 2]]]);
  });

  it("pairs readings whose targets differ by less than a micrometre", () => {
    expect(lostMotions(up(1, 50, 50), down(1, 49.8, 50.0004))).toEqual([[0.2, [0, 1]]]);
    expect(lostMotions(up(1, 50, 50), down(1, 49.8, 50.002))).toEqual([]);
  });
});

describe("targets", () => {
  it("stand in order of position, each with its readings from either side and their places in the file", () => {
    const readings = [
      up(1, 80, 80),
      down(1, 79.8, 80),
      up(1, 50),
      up(2, 50.1),
      { ...down(1, 49), excluded: "x" },
    ];
    const [first, second] = targetsOf(readings);
    expect(first.position).toBe(50);
    expect(first.advancing.map(({ index }) => index)).toEqual([2, 3]);
    expect(first.retracting).toEqual([]);
    expect(second.position).toBe(80);
    expect(second.retracting.map(({ index }) => index)).toEqual([1]);
  });

  it("are none where readings are of another shape", () => {
    expect(targetsOf([{ position: 0, backlash: 0.2 }])).toEqual([]);
  });
});
