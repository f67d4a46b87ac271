import { describe, expect, it } from "vitest";
import type { Action, Chances, Finding } from "../../src/analysis/assessment.ts";
import { correct, type LostMotion } from "../../src/analysis/corrected.ts";
import { judge } from "../../src/analysis/judgement.ts";
import { withStops } from "../../src/analysis/soleReadings.ts";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { assessed, drawsOf, inspectionOf, pushPull, SETTINGS } from "./examples.ts";

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

describe("whether a reading decides alone", () => {
  /** Chances of which so much lies with one action, and the rest with leaving the slide alone. */
  const led = (action: Action, chance: number): Chances => {
    const none = { "leave-alone": 1 - chance, "correct-end-float": 0, "adjust-nut": 0 };
    return { ...none, "replace-nuts": 0, "remake-screw": 0, [action]: chance };
  };

  /** Stops among findings, where all readings lead to a remake and the others to what is given. */
  function stopsFor(
    readings: readonly (readonly [position: number, backlash: number])[],
    others: Chances,
    findings: readonly Finding[] = [],
  ) {
    const corrected = correct(pushPull(readings), 4);
    const given = { settings: SETTINGS, corrected, endFloat: [0], drivePlay: 0 };
    const model = () => drawsOf([0, 300], [[0.2, 0.2]], 0.005);
    const all = { ...judge(corrected.readings, given, model), chances: led("remake-screw", 0.99) };
    const seen: (readonly LostMotion[])[] = [];
    const found = withStops(findings, all, lengthsIn("mm", 0.01), (rest) => {
      seen.push(rest);
      return { ...all, chances: others };
    });
    return { stops: found.filter(({ severity }) => severity === "stop"), found, seen };
  }

  const at = (...values: readonly number[]) => values.map((value, i) => [50 * i, value] as const);
  const ADJUST = led("adjust-nut", 0.97);
  const outlying: Finding = {
    check: "outlying reading",
    severity: "warning",
    message: "Far off.",
    readings: [2],
  };

  it("is judged by what the others lead to without it", () => {
    const { stops, seen } = stopsFor(at(0.2, 0.21, 0.5, 0.2, 0.2), ADJUST);
    expect(seen.map((rest) => rest.flatMap(({ from }) => from))).toEqual([[0, 1, 3, 4]]);
    expect(stops).toEqual([
      {
        check: "reading that decides alone",
        severity: "stop",
        message:
          "Reading 3 at 100 mm (0.50 mm) stands out from the stations to either side and decides the verdict alone. Read it again before anything is done.",
        readings: [2],
      },
    ]);
  });

  it("is told of several together", () => {
    const { stops, seen } = stopsFor(at(0.2, 0.5, 0.2, 0.2, 0.2, 0.2, 0.01, 0.2), ADJUST);
    expect(seen).toHaveLength(1);
    expect(stops[0].readings).toEqual([1, 6]);
    expect(stops[0].message).toBe(
      "Reading 2 at 50 mm (0.50 mm), Reading 7 at 300 mm (0.01 mm) stand out from the stations to either side and decide the verdict alone. Read them again before anything is done.",
    );
  });

  // Six times 0.005 mm above, or below, the two stations to either side.
  it.each([
    [0.2301, 1],
    [0.2299, 0],
    [0.1699, 1],
    [0.1701, 0],
  ])("is asked of a lone reading far above or below its neighbours: %f among 0.2", (value, count) => {
    expect(stopsFor(at(0.2, 0.2, value, 0.2, 0.2), ADJUST).stops).toHaveLength(count);
  });

  it("is not asked of a reading that one of two stations beside it bears out, or of one without two beside it", () => {
    const named = (...values: readonly number[]) =>
      stopsFor(at(...values), ADJUST).stops.flatMap((finding) => finding.readings);
    expect(named(0.2, 0.2, 0.48, 0.5, 0.2, 0.2)).toEqual([]);
    expect(named(0.2, 0.48, 0.2, 0.5, 0.2, 0.2)).toEqual([]);
    expect(named(0.2, 0.2, 0.5, 0.2, 0.48, 0.2)).toEqual([]);
    expect(named(0.48, 0.2, 0.2, 0.5, 0.2, 0.2)).toEqual([0, 3]);
    const beside = [[0, 0.2] as const, [0, 0.2] as const, [50, 0.5] as const];
    expect(stopsFor(beside, ADJUST).stops).toEqual([]);
    expect(named(0.5, 0.2, 0.2)).toEqual([0]);
    expect(named(0.2, 0.2, 0.5)).toEqual([2]);
  });

  it("is not asked of a station that was read twice", () => {
    expect(stopsFor([...at(0.2, 0.2, 0.5, 0.2, 0.2), [100, 0.5]], ADJUST).stops).toEqual([]);
  });

  it.each([
    ["the same", led("remake-screw", 0.96), 0],
    ["the same, but not surely", led("remake-screw", 0.9), 1],
    ["another, not surely", led("adjust-nut", 0.9), 1],
  ] as const)("hangs on whether the others lead to %s", (_, others, count) => {
    expect(stopsFor(at(0.2, 0.2, 0.5, 0.2, 0.2), others).stops).toHaveLength(count);
  });

  it("makes a stop of the warning of a check that a reading strays from its repeats", () => {
    const readings = [...at(0.2, 0.2, 0.5, 0.2, 0.2), [100, 0.2] as const];
    const { found } = stopsFor(readings, ADJUST, [outlying, { ...outlying, check: "drift", readings: [0] }]);
    expect(found).toEqual([
      { ...outlying, severity: "stop", message: "Far off. It decides the verdict, so none is given yet." },
      { ...outlying, check: "drift", readings: [0] },
    ]);
    const same = stopsFor(readings, led("remake-screw", 0.96), [outlying]);
    expect(same.found).toEqual([outlying]);
    const note: Finding = { ...outlying, severity: "note" };
    expect(stopsFor(readings, ADJUST, [note]).found).toEqual([note]);
  });

  it("is not judged by no reading at all", () => {
    const { found, seen } = stopsFor(at(0.2), ADJUST, [{ ...outlying, readings: [0] }]);
    expect(seen).toEqual([]);
    expect(found[0].severity).toBe("warning");
  });
});
