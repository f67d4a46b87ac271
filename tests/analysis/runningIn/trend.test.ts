import { describe, expect, it } from "vitest";
import type { Observation } from "../../../src/analysis/runningIn/leastSquares.ts";
import { type TrendDraw, trendOf } from "../../../src/analysis/runningIn/trend.ts";
import { TREND_KINDS } from "../../../src/analysis/runningIn/trendShapes.ts";
import { estimateOf } from "../../../src/analysis/statistics/estimate.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { SETS } from "./reference.ts";

const trend = (observations: readonly Observation[]) => trendOf(observations, 2000, seededRandom(1));

const at = (draws: readonly TrendDraw[], time: number) => estimateOf(draws.map((draw) => draw.at(time)));

describe("the trend of a history", () => {
  it.each(Object.entries(SETS))("weighs the courses of %s as quadrature in R does", (_, set) => {
    const { chances } = trend(set.observations);
    for (const kind of TREND_KINDS) expect(chances[kind]).toBeCloseTo(set.chances[kind] ?? Number.NaN, 2);
  });

  it("draws each course as often as its chance has it", () => {
    const { draws, chances } = trend(SETS.settling?.observations ?? []);
    expect(draws).toHaveLength(2000);
    for (const kind of TREND_KINDS) {
      const share = draws.filter((draw) => draw.kind === kind).length / draws.length;
      expect(Math.abs(share - chances[kind])).toBeLessThan(0.002);
    }
  });

  it("passes through steady growth that is known exactly, and carries it on", () => {
    const observations = [0, 0.25, 0.5, 0.75, 1].map((time) => ({
      time,
      value: 0.05 + 0.04 * time,
      deviation: 1e-4,
    }));
    const { draws } = trend(observations);
    expect(at(draws, 0.6).value).toBeCloseTo(0.074, 3);
    expect(at(draws, 2).low).toBeLessThan(0.13);
    expect(at(draws, 2).high).toBeGreaterThan(0.129);
  });

  it("never shrinks", () => {
    const falling = [0, 0.5, 1].map((time) => ({ time, value: 0.06 - 0.01 * time, deviation: 0.002 }));
    for (const draw of trend(falling).draws) expect(draw.at(1) - draw.at(0)).toBeGreaterThanOrEqual(0);
  });

  it("is less certain the further it is carried", () => {
    const { draws } = trend(SETS.rising?.observations ?? []);
    const width = (time: number): number => at(draws, time).high - at(draws, time).low;
    expect(width(2)).toBeGreaterThan(width(1));
    expect(width(4)).toBeGreaterThan(width(2));
  });
});
