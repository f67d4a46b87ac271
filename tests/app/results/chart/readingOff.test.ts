import { describe, expect, it } from "vitest";
import { nearestStop, readTo, stopsAlong } from "../../../../src/app/results/chart/readingOff.ts";
import { partOf } from "../../../../src/app/results/chart/zoom.ts";
import { profilePicture } from "../../../../src/picture/profilePicture.ts";
import { exampleAssessment } from "../../../report/exampleAssessment.ts";

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
  const STOPS = [
    { x: 26, isStation: false },
    { x: 27.5, isStation: true },
    { x: 34, isStation: false },
    { x: 37, isStation: false },
  ];
  const stopAt = (x: number, reach?: number) => STOPS[nearestStop(STOPS, x, reach)]?.x;

  it.each([
    [30, 27.5],
    [26, 27.5],
    [33, 27.5],
    [36, 37],
  ])("takes the station that it is close to, else the nearest stop: %s px reads %s off", (at, read) => {
    expect(stopAt(at, 8)).toBe(read);
  });

  it("takes the nearest stop, a station or not, where stations have no reach", () => {
    expect(stopAt(33)).toBe(34);
    expect(stopAt(27)).toBe(27.5);
  });

  it("stops nowhere where there are no stops", () => {
    expect(nearestStop([], 30, 8)).toBe(-1);
  });
});

describe("the stops of a profile", () => {
  const picture = profilePicture(exampleAssessment(), "mm");

  it("are its ends, its stations, and round positions in order, on the profile", () => {
    const stops = stopsAlong(partOf(picture, { from: 100.3, to: 150 }));
    expect(stops.slice(0, 3).map(({ x }) => x)).toEqual([100.3, 100.4, 100.6]);
    expect(stops.at(-1)?.x).toBe(150);
    expect(stops.filter(({ isStation }) => isStation).map(({ x }) => x)).toEqual([125, 150]);
    expect(stops.map(({ x }) => x)).toEqual(stops.map(({ x }) => x).toSorted((a, b) => a - b));
    const [known] = picture.median.points.filter(({ x }) => x === 125);
    expect(stops.find(({ x }) => x === 125)?.y).toBe(known?.y);
  });
});
