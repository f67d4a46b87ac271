import { describe, expect, it } from "vitest";
import {
  HORIZON,
  limitReachedOf,
  nextSurveyTime,
  reachingTimes,
} from "../../../src/analysis/runningIn/limitReached.ts";
import type { TrendDraw } from "../../../src/analysis/runningIn/trend.ts";

const line = (level: number, slope: number): TrendDraw => ({
  kind: "steady",
  scatter: 0,
  at: (time) => level + slope * time,
});

const inHours = (time: number): number => 100 + 50 * time;

describe("when the limit is reached", () => {
  it("is where the trend and what lies above it come to the limit", () => {
    // 0.05 + 0.02 t + 0.03 = 0.12 at t = 2.
    expect(reachingTimes([line(0.05, 0.02)], [0.03], 0.12)[0]).toBeCloseTo(2, 9);
  });

  it("is no earlier than the last survey, and never where it lies beyond the horizon", () => {
    const times = reachingTimes([line(0.2, 0), line(0.05, 0), line(0, 0.1 / (HORIZON + 1))], [0, 0, 0], 0.1);
    expect(times).toEqual([1, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
  });

  it("is told as median and interval of the draws, with the chances", () => {
    const reaching = Array.from({ length: 1000 }, (_, i) => 1 + i / 1000);
    const { value, low, high, chanceAlready, chanceByHorizon, horizon } = limitReachedOf(reaching, inHours);
    expect(value).toBeCloseTo(175, 6);
    expect(low).toBeCloseTo(151.25, 6);
    expect(high).toBeCloseTo(198.75, 6);
    expect([chanceAlready, chanceByHorizon, horizon]).toEqual([0.001, 1, 100 + 50 * HORIZON]);
  });

  it("has no end where too many draws never reach it", () => {
    const reaching = [...Array(60).fill(2), ...Array(40).fill(Number.POSITIVE_INFINITY)];
    expect(limitReachedOf(reaching, inHours)).toMatchObject({
      value: 200,
      low: 200,
      high: null,
      chanceByHorizon: 0.6,
    });
    const hardly = [...Array(2).fill(2), ...Array(98).fill(Number.POSITIVE_INFINITY)];
    expect(limitReachedOf(hardly, inHours)).toMatchObject({ value: null, low: null, high: null });
  });
});

describe("when to look again", () => {
  const share = (early: number, time: number): readonly number[] => [
    ...Array(early).fill(time),
    ...Array(100 - early).fill(Number.POSITIVE_INFINITY),
  ];

  it.each([
    ["now, where the limit may have been reached", share(6, 1), { at: 150, why: "now" }],
    ["when one draw in twenty has reached it", share(6, 1.4), { at: 170, why: "limit" }],
    ["after as long again at the latest", share(6, 3), { at: 200, why: "watched" }],
    ["after as long again where hardly a draw reaches it", share(4, 1.4), { at: 200, why: "watched" }],
  ])("is %s", (_, reaching, expected) => {
    expect(nextSurveyTime(reaching, inHours)).toEqual(expected);
  });
});
