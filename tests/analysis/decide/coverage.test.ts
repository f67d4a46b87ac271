import { describe, expect, it } from "vitest";
import type { Station } from "../../../src/analysis/correct/stations.ts";
import { coverageOf } from "../../../src/analysis/decide/coverage.ts";
import type { Settings } from "../../../src/analysis/decide/settings.ts";
import { SETTINGS } from "../examples.ts";

/** A travel of 100 mm and a nut of 20 mm. */
const SHORT: Settings = {
  ...SETTINGS,
  travel: { from: 0, to: 100 },
  workingRange: { from: 0, to: 100 },
  engagedLength: 20,
};

const at = (...positions: readonly number[]): readonly Station[] =>
  positions.map((position) => ({ position, mean: 0.1, squares: 0, readings: [] }));

describe("coverage", () => {
  it("asks for five stations", () => {
    expect(coverageOf(at(0, 25, 50, 75, 100), SHORT)).toEqual({
      enoughStations: true,
      gaps: [],
      unreadEnds: [],
    });
    expect(coverageOf(at(0, 33, 67, 100), SHORT).enoughStations).toBe(false);
  });

  it.each([
    ["none where stations are two nuts apart", [20, 60, 100], []],
    ["one between stations further apart", [20, 61, 100], [{ from: 40, to: 41 }]],
    ["one before the first station", [25, 60, 90], [{ from: 0, to: 5 }]],
    ["one after the last station", [20, 60, 75], [{ from: 95, to: 100 }]],
    [
      "each of several",
      [30, 75],
      [
        { from: 0, to: 10 },
        { from: 50, to: 55 },
        { from: 95, to: 100 },
      ],
    ],
    ["the whole range where there is no station", [], [{ from: 0, to: 100 }]],
    ["none that a wider one before it already covers", [20, 21, 60, 100], []],
  ])("finds gaps further than the nut's length from any station: %s", (_, places, gaps) => {
    expect(coverageOf(at(...places), SHORT).gaps).toEqual(gaps);
  });

  it("finds none that only binary fractions make: stations two nuts apart in inches", () => {
    const inch = (...lengths: readonly number[]) => lengths.map((length) => length * 25.4);
    const travel = { from: 0, to: 7.5 * 25.4 };
    const settings = { ...SHORT, travel, workingRange: travel, engagedLength: 0.75 * 25.4 };
    expect(coverageOf(at(...inch(0.75, 2.25, 3.75, 5.25, 6.75)), settings).gaps).toEqual([]);
  });

  it("looks for gaps in the working range only", () => {
    const settings = { ...SHORT, workingRange: { from: 40, to: 60 } };
    expect(coverageOf(at(30, 70), settings).gaps).toEqual([]);
    expect(coverageOf(at(19, 81), settings).gaps).toEqual([{ from: 40, to: 60 }]);
    expect(coverageOf(at(30, 81), settings).gaps).toEqual([{ from: 50, to: 60 }]);
    expect(coverageOf(at(10, 70), settings).gaps).toEqual([{ from: 40, to: 50 }]);
  });

  it("ends a gap where the working range ends, though the next station is far beyond", () => {
    const settings = { ...SHORT, workingRange: { from: 0, to: 30 } };
    expect(coverageOf(at(0, 100), settings).gaps).toEqual([{ from: 20, to: 30 }]);
    expect(coverageOf(at(20, 100), settings).gaps).toEqual([]);
    expect(coverageOf(at(10, 100), settings).gaps).toEqual([]);
  });

  it("counts a station outside the travel for as far as the nut reaches from it", () => {
    expect(coverageOf(at(-20, 20, 60, 100), SHORT).gaps).toEqual([]);
    expect(coverageOf(at(-20, 25, 60, 100), SHORT).gaps).toEqual([{ from: 0, to: 5 }]);
  });

  it.each([
    ["both read, half a nut away", [10, 50, 90], []],
    ["the first unread", [10.001, 50, 90], [0]],
    ["the last unread", [10, 50, 89.999], [100]],
    ["both unread", [50], [0, 100]],
    ["both read from outside the travel", [-10, 110], []],
  ])("finds ends of the travel with no station within half the nut's length: %s", (_, places, ends) => {
    expect(coverageOf(at(...places), SHORT).unreadEnds).toEqual(ends);
  });

  it("asks for the ends of the travel, whatever the working range", () => {
    const settings = { ...SHORT, workingRange: { from: 40, to: 60 } };
    expect(coverageOf(at(40, 60), settings).unreadEnds).toEqual([0, 100]);
  });
});
