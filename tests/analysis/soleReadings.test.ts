import { describe, expect, it } from "vitest";
import { assessed, inspectionOf, pushPull } from "./examples.ts";

const PLACES = Array.from({ length: 13 }, (_, i) => 25 * i);
const FLAT = [0.23, 0.22, 0.23, 0.23, 0.22, 0.23, 0.24, 0.23, 0.22, 0.23, 0.23, 0.22, 0.23];
const GIVEN = { indicator: { resolution: 0.01 }, endFloat: [0.01, 0.01] };

const flat = (change: (value: number, i: number) => number = (value) => value) =>
  PLACES.map((position, i) => [position, change(FLAT[i], i)] as const);

describe("a reading that decides the verdict alone", () => {
  it("is asked for again where it disagrees with its repeat", () => {
    const high = flat((value, i) => (i === 5 ? 0.73 : value));
    const { verdict, reasons, checks } = assessed(
      inspectionOf(pushPull([...flat(), ...high.toReversed()], GIVEN)),
    );
    expect(verdict).toBe("measure-more");
    expect(reasons).toContain("checks");
    const finding = checks.find(({ check }) => check === "outlying reading");
    expect(finding?.severity).toBe("stop");
    expect(finding?.readings).toContain(20);
  });

  it("is asked for again where its station was read once", () => {
    const high = flat((value, i) => (i === 5 ? 0.53 : value));
    const { verdict, checks } = assessed(inspectionOf(pushPull(high, GIVEN)));
    expect(verdict).toBe("measure-more");
    const finding = checks.find(({ check }) => check === "reading that decides alone");
    expect(finding).toMatchObject({ severity: "stop", readings: [5] });
    expect(finding?.message).toContain("Reading 6 at 125 mm (0.53 mm) stands out");
  });

  it("does not hold up a verdict that it does not change", () => {
    const high = flat((value, i) => (i === 5 ? value + 0.06 : value));
    const { verdict, checks } = assessed(inspectionOf(pushPull([...flat(), ...high.toReversed()], GIVEN)));
    expect(verdict).toBe("adjust-nut");
    expect(checks.every(({ severity }) => severity !== "stop")).toBe(true);
  });

  it("is none in a flat survey", () => {
    const { verdict, checks } = assessed(inspectionOf(pushPull([...flat(), ...flat().toReversed()], GIVEN)));
    expect(verdict).toBe("adjust-nut");
    expect(checks.filter(({ severity }) => severity === "stop")).toEqual([]);
  });
});
