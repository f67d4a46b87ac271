import { describe, expect, it } from "vitest";
import { exactAxis, roundStep, wideAxis, withRoomFor } from "../../src/picture/axis.ts";

describe("roundStep", () => {
  it.each([
    [300, 10, 50],
    [0.31, 6, 0.1],
    [10, 10, 1],
    [11.8, 10, 2],
    [0.04, 8, 0.005],
  ])("divides %d into about %d parts by steps of %d", (span, parts, step) => {
    expect(roundStep(span, parts)).toBeCloseTo(step, 12);
  });
});

describe("an axis of positions", () => {
  it("ends where the travel ends, with ticks only at round numbers", () => {
    const axis = exactAxis("mm", 12, 218, 10);
    expect([axis.from, axis.to]).toEqual([12, 218]);
    expect(axis.ticks.map(({ at }) => at)).toEqual([50, 100, 150, 200]);
  });

  it("has ticks on either side of zero", () => {
    expect(exactAxis("mm", -100, 100, 4).ticks.map(({ label }) => label)).toEqual([
      "-100",
      "-50",
      "0",
      "50",
      "100",
    ]);
  });
});

describe("an axis of lost motion", () => {
  it("begins at zero and is widened to the next tick", () => {
    const axis = wideAxis("mm", 0.08, 0.33, 6);
    expect(axis.ticks.map(({ label }) => label)).toEqual(["0.0", "0.1", "0.2", "0.3", "0.4"]);
    expect([axis.from, axis.to]).toEqual([0, 0.4]);
  });

  it("writes every tick with the decimals of its step, for inches too", () => {
    expect(wideAxis("in", 0, 0.0134, 6).ticks.map(({ label }) => label)).toEqual([
      "0.000",
      "0.005",
      "0.010",
      "0.015",
    ]);
  });

  it("reaches below zero where a reading does", () => {
    expect(wideAxis("mm", -0.03, 0.2, 5).from).toBe(-0.05);
  });

  it("ends at zero where everything lies below it", () => {
    const axis = wideAxis("mm", -0.2, -0.18, 4);
    expect([axis.from, axis.to]).toEqual([-0.2, 0]);
  });
});

describe("an axis with little room", () => {
  const axis = exactAxis("mm", 0, 1200, 12);

  it("keeps its ticks where their labels fit", () => {
    expect(withRoomFor(axis, 868)).toEqual(axis);
  });

  it("leaves out every second or more, evenly, from the first on", () => {
    // Labels of four figures take 42 pixels at most; ticks stand 25 apart.
    expect(withRoomFor(axis, 300).ticks.map(({ at }) => at)).toEqual([0, 200, 400, 600, 800, 1000, 1200]);
    expect(withRoomFor(axis, 120).ticks.map(({ at }) => at)).toEqual([0, 500, 1000]);
  });

  it("is left as it is with a single tick or none", () => {
    const one = exactAxis("mm", 95, 105, 1);
    expect(withRoomFor(one, 10)).toEqual(one);
    expect(withRoomFor({ ...axis, ticks: [] }, 10).ticks).toEqual([]);
  });
});
