import { describe, expect, it } from "vitest";
import { readAt, readTo } from "../../../../src/app/results/chart/readingOff.ts";

const WHOLE = { from: 0, to: 300 };
const STATIONS = [0, 27.5, 150, 300];

describe("reading a profile off by keys", () => {
  it.each([
    ["PageUp", 27.5, 150],
    ["PageUp", 100, 150],
    ["PageUp", 300, 300],
    ["PageDown", 100, 27.5],
    ["PageDown", 0, 0],
    ["ArrowRight", 100, 101],
    ["ArrowLeft", 100, 99],
    ["Home", 100, 0],
    ["End", 100, 300],
  ] as const)("%s goes from %s mm to %s mm", (key, at, to) => {
    expect(readTo(key, at, WHOLE, WHOLE, STATIONS)).toBe(to);
  });

  it("goes in smaller steps where less is shown, and beyond what is shown", () => {
    expect(readTo("ArrowRight", 60, { from: 30, to: 60 }, WHOLE, STATIONS)).toBeCloseTo(60.1, 9);
  });

  it("leaves other keys alone", () => {
    expect(readTo("Tab", 100, WHOLE, WHOLE, STATIONS)).toBeNull();
  });
});

describe("reading a profile off with a pointer", () => {
  const onePixelEach = (one: number, other: number): number => Math.abs(one - other);

  it("takes the station that it is close to", () => {
    expect(readAt(30, WHOLE, STATIONS, onePixelEach)).toBe(27.5);
  });

  it("takes a round place elsewhere", () => {
    expect(readAt(90.37, WHOLE, STATIONS, onePixelEach)).toBe(90);
  });
});
