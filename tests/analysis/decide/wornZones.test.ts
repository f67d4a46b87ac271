import { describe, expect, it } from "vitest";
import { wornZonesOf } from "../../../src/analysis/decide/wornZones.ts";
import { drawsOf, evenlySpaced } from "../examples.ts";

const POSITIONS = evenlySpaced(0, 100, 11);

/** Lost motion of 0.1 mm, and more by what is given at the given positions, every 10 mm from 0 to 100. */
function profile(rises: Readonly<Record<number, number>>): readonly number[] {
  return POSITIONS.map((position) => 0.1 + (rises[position] ?? 0));
}

function zones(profiles: readonly (readonly number[])[], engagedLength = 20, least = 0.01) {
  return wornZonesOf(drawsOf(POSITIONS, profiles), engagedLength, least);
}

describe("worn zones", () => {
  it("reach half a nut to either side of a rise, and are told from half of it up", () => {
    const [zone, ...others] = zones([profile({ 50: 0.2 })]);
    expect(others).toEqual([]);
    expect(zone.from).toBe(40);
    expect(zone.to).toBe(60);
    expect(zone.atLeast).toBeCloseTo(0.1, 12);
  });

  it("tell the deepest wear with its spread from draw to draw, and how much of the thread that leaves", () => {
    // Rises of 0.1, 0.11 … 0.3 mm: type 7 quantiles of 21 evenly spaced values.
    const draws = Array.from({ length: 21 }, (_, i) => profile({ 50: 0.1 + 0.01 * i, 60: 0.05 }));
    const [zone] = wornZonesOf(drawsOf(POSITIONS, draws), 20, 0.01, 2);
    expect(zone.deepest.value).toBeCloseTo(0.2, 12);
    expect(zone.deepest.low).toBeCloseTo(0.105, 12);
    expect(zone.deepest.high).toBeCloseTo(0.295, 12);
    expect(zone.thicknessLeft?.value).toBeCloseTo(0.9, 12);
    expect(zone.thicknessLeft?.low).toBeCloseTo(0.8525, 12);
    expect(zone.thicknessLeft?.high).toBeCloseTo(0.9475, 12);
    expect(zones(draws)[0].thicknessLeft).toBeNull();
  });

  it("leave nothing, not less, of a thread that has worn through", () => {
    const [zone] = wornZonesOf(drawsOf(POSITIONS, [profile({ 50: 3 })]), 20, 0.01, 2);
    expect(zone.thicknessLeft?.value).toBe(0);
  });

  it("reach no further than the nut", () => {
    const [zone] = zones([profile({ 50: 0.2 })], 19.9);
    expect([zone.from, zone.to]).toEqual([50, 50]);
    const [wide] = zones([profile({ 50: 0.2 })], 60);
    expect([wide.from, wide.to]).toEqual([20, 80]);
  });

  it("end where the travel does", () => {
    const [first, last] = zones([profile({ 0: 0.2, 100: 0.2 })]);
    expect([first.from, first.to, last.from, last.to]).toEqual([0, 10, 90, 100]);
  });

  it("leave out what has worn less than half as much as the deepest place beside it", () => {
    // A slope of 0.04 every 10 mm, with a nut of one place: half of 0.2 is first reached at 0.12.
    const slope = profile({ 20: 0.04, 30: 0.08, 40: 0.12, 50: 0.16, 60: 0.2 });
    const [zone, ...others] = zones([slope], 2);
    expect(others).toEqual([]);
    expect([zone.from, zone.to]).toEqual([40, 60]);
  });

  it("are several where good thread lies between, each measured by its own depth", () => {
    const found = zones([profile({ 20: 0.3, 80: 0.06 })]);
    expect(found.map(({ from, to }) => [from, to])).toEqual([
      [10, 30],
      [70, 90],
    ]);
    expect(found[0].atLeast).toBeCloseTo(0.15, 12);
    expect(found[1].atLeast).toBeCloseTo(0.03, 12);
  });

  it("are several where the thread between has worn less than half as much", () => {
    const found = zones([profile({ 20: 0.2, 30: 0.05, 40: 0.05, 50: 0.2 })], 2);
    expect(found.map(({ from, to }) => [from, to])).toEqual([
      [20, 20],
      [50, 50],
    ]);
  });

  it("tell each its own deepest wear, wherever in the zone that lies", () => {
    const deepest = (rises: Readonly<Record<number, number>>) =>
      zones([profile(rises)], 2).map(({ deepest }) => Math.round(1000 * deepest.value) / 1000);
    expect(deepest({ 20: 0.2, 30: 0.05, 40: 0.05, 50: 0.16 })).toEqual([0.2, 0.16]);
    expect(deepest({ 40: 0.12, 50: 0.2, 60: 0.16 })).toEqual([0.2]);
    expect(deepest({ 40: 0.12, 50: 0.16, 60: 0.2 })).toEqual([0.2]);
    expect(deepest({ 40: 0.2, 50: 0.16, 60: 0.12 })).toEqual([0.2]);
  });

  it("are not told where the wear is less than the least worth telling", () => {
    expect(zones([profile({ 50: 0.0099 })])).toEqual([]);
    expect(zones([profile({ 50: 0.0101 })])).toHaveLength(1);
  });

  it("are told from the least worth telling up where half of the wear is less", () => {
    const [zone] = zones([profile({ 50: 0.012 })]);
    expect(zone.atLeast).toBe(0.01);
  });

  it("are told where the wear is just the least worth telling", () => {
    const quarters = POSITIONS.map((position) => (position === 50 ? 0.5 : 0.25));
    expect(zones([quarters], 20, 0.25)).toMatchObject([{ from: 40, to: 60, atLeast: 0.25 }]);
  });

  it("are none on an even screw", () => {
    expect(zones([profile({})])).toEqual([]);
  });

  it("rise above the tight spot of each draw, not above a common one", () => {
    const deeper = profile({ 50: 0.2 }).map((backlash) => backlash + 1);
    const [zone] = zones([profile({ 50: 0.2 }), deeper]);
    expect(zone.atLeast).toBeCloseTo(0.1, 12);
  });

  it("are exceeded by all but a fortieth of the draws", () => {
    // The 2.5 % point of 41 values is the second smallest.
    const worn = profile({ 50: 0.2 });
    const [zone] = zones([...Array(40).fill(worn), profile({})]);
    expect(zone.atLeast).toBeCloseTo(0.1, 12);
    const [less] = zones([...Array(39).fill(worn), profile({ 50: 0.08 }), profile({})]);
    expect(less.atLeast).toBeCloseTo(0.04, 12);
    expect(zones([...Array(39).fill(worn), profile({}), profile({})])).toEqual([]);
  });
});
