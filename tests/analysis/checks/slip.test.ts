import { describe, expect, it } from "vitest";
import { slip } from "../../../src/analysis/checks/slip.ts";
import reference from "../../reference/scatter.json";
import { CLEAN, found, surveyed } from "./checkInput.ts";

/** A station of four readings of which the last may have slipped, between two others. */
const among = (value: number, usual = 0.2) =>
  found(slip, [
    [0, usual],
    [0, usual],
    [50, usual],
    [50, usual],
    [50, usual],
    [50, value],
    [100, usual],
    [100, usual],
  ]);

describe("a slipped reading", () => {
  it.each([
    [2, "2.00 mm, ten times what the readings around it say: a slipped decimal point?"],
    [0.02, "0.02 mm, a tenth of what the readings around it say: a slipped decimal point?"],
    [5.08, "5.08 mm, 25.4 times what the readings around it say: millimetres taken for inches?"],
    [0.008, "0.01 mm, 1/25.4 of what the readings around it say: inches taken for millimetres?"],
  ])("of %f mm among 0.2 mm stops the verdict", (value, words) => {
    expect(among(value)).toEqual([
      {
        check: "slip",
        severity: "stop",
        message: `Reading 6 at 50 mm is ${words} Look at the sheet, or take it again.`,
        readings: [5],
      },
    ]);
  });

  it("is one that comes to agree with the others once it is put right, as 99 of 100 ordinary readings would", () => {
    for (const [factor, side] of [
      [10, 1],
      [10, -1],
      [25.4, 1],
      [0.1, -1],
    ] as const) {
      expect(among(factor * (0.2 + 0.99 * side * reference.slipPutRight))).toHaveLength(1);
      expect(among(factor * (0.2 + 1.01 * side * reference.slipPutRight))).toHaveLength(0);
    }
  });

  it("is not one that its repeats explain as it is", () => {
    expect(among(0.004, 0.02)).toEqual([]);
  });

  it.each([2, 3, 4])("is the only one of %i repeats that is named", (count) => {
    const repeats = Array.from({ length: count }, (_, i) => [50, i === 1 ? 2.1 : 0.2] as const);
    const around = [0, 100].flatMap((place) => [[place, 0.21] as const, [place, 0.2] as const]);
    expect(found(slip, [...around, ...repeats]).map(({ readings }) => readings)).toEqual([[5]]);
  });

  it("is the smaller of two where the stations around bear the larger out", () => {
    const around = [0, 100].flatMap((place) => [[place, 0.21] as const, [place, 0.2] as const]);
    const readings = [...around, [50, 0.2] as const, [50, 0.02] as const];
    expect(found(slip, readings).map((finding) => finding.readings)).toEqual([[5]]);
  });

  it.each([
    ["in between", [2, 2, 2, 0.2, 0.2], [0.2, 0.2, 2, 2, 2]],
    ["at the end", [2, 2, 2, 2, 0.2, 0.2], []],
    ["at the beginning", [], [0.2, 0.2, 2, 2, 2, 2]],
    ["beside one other", [0.2], []],
  ])("is the one of two that the two stations on either side speak against, %s", (_, before, after) => {
    const stations = [
      ...before.map((value) => [value, value]),
      [0.2, 2],
      ...after.map((value) => [value, value]),
    ];
    const readings = stations.flatMap((values, i) => values.map((value) => [20 * i, value] as const));
    expect(found(slip, readings).map((finding) => finding.readings)).toEqual([[2 * before.length + 1]]);
  });

  it("is either of two where there is no other station", () => {
    const readings = [
      [0, 0.2],
      [0, 2],
    ] as const;
    expect(found(slip, readings).map((finding) => finding.readings)).toEqual([[0, 1]]);
  });

  it("is found between its neighbours where it has no repeats", () => {
    const findings = found(slip, [
      [0, 0.2],
      [50, 0.2],
      [100, 2],
      [150, 0.2],
      [200, 0.2],
    ]);
    expect(findings.map(({ readings }) => readings)).toEqual([[2]]);
  });

  it("is not looked for where nothing is expected, or lost motion below nothing", () => {
    expect(found(slip, [[0, 0.2]])).toEqual([]);
    expect(among(-2)).toEqual([]);
    expect(among(2, 0)).toEqual([]);
  });

  it("is told once for several", () => {
    const readings = CLEAN.readings.map((reading, i) =>
      i % 5 === 0 ? { position: 25 * i, backlash: 2 } : reading,
    );
    const [finding, ...others] = slip(surveyed({ ...CLEAN, readings }));
    expect(others).toEqual([]);
    expect(finding.readings.length).toBeGreaterThan(1);
    expect(finding.message).toContain("differ from those around them");
  });

  it("is none in a clean survey", () => {
    expect(slip(surveyed(CLEAN))).toEqual([]);
  });
});
