import { describe, expect, it } from "vitest";
import type { Action, Chances, Finding } from "../../../src/analysis/assessment.ts";
import { correct, type LostMotion } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { readingsKey } from "../../../src/analysis/decide/whatIf.ts";
import { stopDecisiveOutliers, subsetsToSample } from "../../../src/analysis/outliers/decisiveOutliers.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { assessed, inspectionOf, pushPull } from "../examples.ts";

const PLACES = Array.from({ length: 13 }, (_, i) => 25 * i);
const FLAT = [0.23, 0.22, 0.23, 0.23, 0.22, 0.23, 0.24, 0.23, 0.22, 0.23, 0.23, 0.22, 0.23];
const GIVEN = { indicator: { resolution: 0.01 }, endFloat: [0.01, 0.01] };

const flat = (change: (value: number, i: number) => number = (value) => value) =>
  PLACES.map((position, i) => [position, change(FLAT[i], i)] as const);

describe("a reading that decides the verdict alone", () => {
  it("must be read again if it disagrees with its repeat", () => {
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

  it("must be read again if its station was read once", () => {
    const high = flat((value, i) => (i === 5 ? 0.53 : value));
    const { verdict, checks } = assessed(inspectionOf(pushPull(high, GIVEN)));
    expect(verdict).toBe("measure-more");
    const finding = checks.find(({ check }) => check === "reading that decides alone");
    expect(finding).toMatchObject({ severity: "stop", readings: [5] });
    expect(finding?.message).toContain("Reading 6 at 125 mm (0.53 mm) stands out");
  });

  it("must be read again at an end, but not two stations there that agree", () => {
    const lone = assessed(
      inspectionOf(
        pushPull(
          flat((value, i) => (i === 12 ? value + 0.3 : value)),
          GIVEN,
        ),
      ),
    );
    expect(lone.checks.filter(({ severity }) => severity === "stop")).toMatchObject([{ readings: [12] }]);
    const step = assessed(
      inspectionOf(
        pushPull(
          flat((value, i) => (i >= 11 ? value + 0.3 : value)),
          GIVEN,
        ),
      ),
    );
    expect(step.verdict).toBe("remake-screw");
    expect(step.checks.filter(({ severity }) => severity === "stop")).toEqual([]);
  });

  it("is the only one named, at a station of three", () => {
    const readings = [
      ...flat(),
      ...flat().toReversed(),
      ...flat((value, i) => (i === 4 ? 10 * value : value)),
    ];
    const { checks } = assessed(inspectionOf(pushPull(readings, GIVEN)));
    expect(checks.filter(({ severity }) => severity !== "note")).toMatchObject([
      { check: "slip", severity: "stop", readings: [30] },
    ]);
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

describe("a decisive outlier", () => {
  /** The given chance for one action, and the rest for leaving the slide alone. */
  const led = (action: Action, chance: number): Chances => {
    const none = { "leave-alone": 1 - chance, "correct-end-float": 0, "adjust-nut": 0 };
    return { ...none, "replace-nuts": 0, "remake-screw": 0, [action]: chance };
  };

  /** The findings where all readings lead to a remake and any subset has the given chances. */
  function stopsFor(
    readings: readonly (readonly [position: number, backlash: number])[],
    others: Chances,
    findings: readonly Finding[],
    standOut: readonly number[] = [],
    allChances = led("remake-screw", 0.99),
  ) {
    const corrected = correct(pushPull(readings), 4);
    const stations = stationsOf(corrected.readings);
    const seen: (readonly number[])[] = [];
    const toConfirm = standOut.map((index) => corrected.readings[index]);
    const chancesOfSubset = (subset: readonly LostMotion[]) => {
      seen.push(subset.flatMap(({ from }) => from));
      return others;
    };
    const review = { findings, stations, toConfirm };
    const found = stopDecisiveOutliers(review, allChances, chancesOfSubset, lengthsIn("mm", 0.01));
    return { stops: found.filter(({ severity }) => severity === "stop"), found, seen };
  }

  const at = (...values: readonly number[]) => values.map((value, i) => [50 * i, value] as const);
  const FIVE = at(0.2, 0.21, 0.5, 0.2, 0.2);
  const ADJUST = led("adjust-nut", 0.97);
  const outlying: Finding = {
    check: "outlying reading",
    severity: "warning",
    message: "Far off.",
    readings: [2],
  };

  it("is found by deciding without it", () => {
    const { stops, seen } = stopsFor(FIVE, ADJUST, [], [2]);
    expect(seen).toEqual([[0, 1, 3, 4]]);
    expect(stops).toEqual([
      {
        check: "reading that decides alone",
        severity: "stop",
        message:
          "Reading 3 at 100 mm (0.50 mm) stands out from the stations beside it and decides the verdict alone. Read it again before anything is done.",
        readings: [2],
      },
    ]);
  });

  it("names several outliers together", () => {
    const { stops, seen } = stopsFor(FIVE, ADJUST, [], [1, 4]);
    expect(seen).toEqual([[0, 2, 3]]);
    expect(stops.map(({ readings, message }) => [readings, message])).toEqual([
      [
        [1, 4],
        "Reading 2 at 50 mm (0.21 mm), Reading 5 at 200 mm (0.20 mm) stand out from the stations beside them and decide the verdict alone. Read them again before anything is done.",
      ],
    ]);
  });

  it("is not looked for if a stop has named it, or nothing stands out", () => {
    const slip: Finding = { check: "slip", severity: "stop", message: "Tenfold.", readings: [2] };
    expect(stopsFor(FIVE, ADJUST, [slip], [2])).toMatchObject({ found: [slip], seen: [] });
    expect(stopsFor(FIVE, ADJUST, [])).toMatchObject({ found: [], seen: [] });
  });

  it.each([
    ["the same", led("remake-screw", 0.96), 0],
    ["the same, as surely as it takes", led("remake-screw", 0.95), 0],
    ["the same, but not surely", led("remake-screw", 0.9), 1],
    ["another, not surely", led("adjust-nut", 0.9), 1],
  ] as const)("depends on whether the others lead to %s", (_, others, count) => {
    expect(stopsFor(FIVE, others, [], [2]).stops).toHaveLength(count);
  });

  it("depends on where the others lead, even if neither chance is enough for a verdict", () => {
    const perhaps = led("remake-screw", 0.9);
    expect(stopsFor(FIVE, led("adjust-nut", 0.9), [], [2], perhaps).stops).toHaveLength(1);
    expect(stopsFor(FIVE, led("remake-screw", 0.8), [], [2], perhaps).stops).toHaveLength(0);
  });

  it.each(["outlying reading", "negative lost motion", "outside the travel", "duplicate rows"])(
    "makes a stop of the warning of %s",
    (check) => {
      const doubt = { ...outlying, check };
      const drift = { ...outlying, check: "drift", readings: [0] };
      const { found, seen } = stopsFor(FIVE, ADJUST, [doubt, drift]);
      expect(seen).toEqual([[0, 1, 3, 4]]);
      expect(found).toEqual([
        {
          ...doubt,
          severity: "stop",
          message: "Far off. This decides the verdict, so none is given yet.",
        },
        drift,
      ]);
      const same = stopsFor(FIVE, led("remake-screw", 0.96), [doubt]);
      expect(same.found).toEqual([doubt]);
      const note: Finding = { ...doubt, severity: "note" };
      expect(stopsFor(FIVE, ADJUST, [note]).found).toEqual([note]);
    },
  );

  it("needs other readings to decide from", () => {
    const { found, seen } = stopsFor(at(0.2), ADJUST, [{ ...outlying, readings: [0] }]);
    expect(seen).toEqual([]);
    expect(found[0].severity).toBe("warning");
  });
});

describe("the subsets of the readings that may have to be sampled", () => {
  const at = (...values: readonly number[]) => values.map((value, i) => [50 * i, value] as const);
  const { readings } = correct(pushPull(at(0.2, 0.2, 0.5, -0.2, 0.4, 0.2, 0.2)), 4);
  const stations = stationsOf(readings);
  const finding = (check: string, severity: Finding["severity"], ...of: readonly number[]): Finding => ({
    check,
    severity,
    message: "",
    readings: of,
  });
  const FINDINGS = [
    finding("slip", "stop", 1),
    finding("outlying reading", "warning", 2),
    finding("negative lost motion", "warning", 3),
    finding("outside the travel", "note", 6),
    finding("duplicate rows", "warning", 2, 5),
    finding("drift", "warning", 0),
  ];
  const toConfirm = [1, 2, 3, 4].map((index) => readings[index]);
  const REVIEW = { findings: FINDINGS, stations, toConfirm };
  const left = (subsets: readonly (readonly LostMotion[])[]) =>
    new Set(
      subsets.map((subset) => readings.flatMap((reading, i) => (subset.includes(reading) ? [] : i)).join()),
    );

  it("leave out what one check names, and the readings to confirm that no stop names then", () => {
    const subsets = left(subsetsToSample(REVIEW));
    expect(subsets).toEqual(new Set(["2", "3", "2,5", "2,3,4", "3,4", "2,4", "4"]));
  });

  it("are all that may be requested, whichever checks are decisive", () => {
    const known = new Set(subsetsToSample(REVIEW).map((subset) => readingsKey(subset)));
    const requested = new Set<string>();
    const remake = { "leave-alone": 0, "correct-end-float": 0, "adjust-nut": 0, "replace-nuts": 0 };
    const all = { ...remake, "remake-screw": 1 };
    const other = { ...remake, "remake-screw": 0, "adjust-nut": 1 };
    // Each of the three checks may or may not decide.
    for (let way = 0; way < 8; way++) {
      const decisive = ["2", "3", "2,5"].filter((_, bit) => (way >> bit) & 1);
      const chancesOfSubset = (subset: readonly LostMotion[]) => {
        requested.add(readingsKey(subset));
        return decisive.some((without) => left([subset]).has(without)) ? other : all;
      };
      stopDecisiveOutliers(REVIEW, all, chancesOfSubset, lengthsIn("mm", 0.01));
    }
    expect(requested).toEqual(known);
  });

  it("leave out a pair if one of its readings is named", () => {
    const pair = { ...readings[2], from: [2, 9] };
    const given = stationsOf([...readings.slice(0, 2), pair, ...readings.slice(3)]);
    const kept = (findings: readonly Finding[], toConfirm: readonly LostMotion[]) =>
      subsetsToSample({ findings, stations: given, toConfirm }).map((subset) =>
        subset.map(({ position }) => position),
      );
    expect(kept([finding("duplicate rows", "warning", 9)], [])).toEqual([[0, 50, 150, 200, 250, 300]]);
    expect(kept([finding("slip", "stop", 9)], [pair, readings[4]])).toEqual([[0, 50, 100, 150, 250, 300]]);
  });

  it("are none if nothing is named, or everything", () => {
    expect(subsetsToSample({ findings: [], stations, toConfirm: [] })).toEqual([]);
    expect(
      subsetsToSample({ findings: FINDINGS.slice(0, 1), stations, toConfirm: toConfirm.slice(0, 1) }),
    ).toEqual([]);
    const everything = finding("duplicate rows", "warning", 0, 1, 2, 3, 4, 5, 6);
    expect(subsetsToSample({ findings: [everything], stations, toConfirm: [] })).toEqual([]);
  });
});
