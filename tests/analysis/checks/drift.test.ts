import { describe, expect, it } from "vitest";
import { drift } from "../../../src/analysis/checks/drift.ts";
import { CLEAN, CLEAN_PLACES, found, surveyed } from "./surveyed.ts";

/** Thirteen stations read forth and back, with a creep for each reading and a scatter of the given size. */
function forthAndBack(creep: number, scatter = 0) {
  return [...CLEAN_PLACES, ...CLEAN_PLACES.toReversed()].map((position, i): [number, number] => [
    position,
    0.2 + creep * i + ((i * 7) % 3 === 0 ? 0.5 : -0.5) * scatter,
  ]);
}

describe("drift", () => {
  it("is warned of, upward, by how much from first to last", () => {
    expect(found(drift, forthAndBack(0.002))).toEqual([
      {
        check: "drift",
        severity: "warning",
        message:
          "Readings of the same stations rise by 0.05 mm from the first reading to the last: the indicator's stand creeps, or a dial slips. Tighten both and read again.",
        readings: Array.from({ length: 26 }, (_, i) => i),
      },
    ]);
  });

  it("is warned of, downward", () => {
    const [finding] = found(drift, forthAndBack(-0.0016));
    expect(finding.message).toContain("fall by 0.04 mm");
  });

  it("is not less than a graduation from first to last", () => {
    // 25 steps of creep: 0.00975 and 0.01025 mm against a graduation of 0.01 mm.
    expect(found(drift, forthAndBack(0.00039))).toEqual([]);
    expect(found(drift, forthAndBack(0.00041))).toHaveLength(1);
  });

  it("is not what scatter explains: 3.6 standard errors of the slope", () => {
    // Slope over standard error by least squares in numpy, with a freedom for each station's mean: 3.56 and 3.65.
    expect(found(drift, forthAndBack(0.0012, 0.02))).toEqual([]);
    expect(found(drift, forthAndBack(0.00123, 0.02))).toHaveLength(1);
  });

  it("is looked for in six repeated readings or more", () => {
    const steps = (...positions: readonly number[]) =>
      positions.map((position, i): [number, number] => [position, 0.2 + 0.02 * i]);
    expect(found(drift, steps(0, 50, 100, 100, 50, 0)).map(({ check }) => check)).toEqual(["drift"]);
    expect(found(drift, steps(0, 50, 0, 50, 0))).toEqual([]);
    // Of six readings, two stand alone.
    expect(found(drift, steps(0, 50, 100, 150, 50, 0))).toEqual([]);
  });

  it("is none in a clean survey", () => {
    expect(drift(surveyed(CLEAN))).toEqual([]);
  });
});

describe("the first station", () => {
  it("is noted where it was not read again at the end", () => {
    expect(
      found(drift, [
        [0, 0.2],
        [50, 0.2],
      ]),
    ).toEqual([
      {
        check: "first station not read again",
        severity: "note",
        message:
          "The first station was not read again at the end, which would show an indicator that had crept.",
        readings: [0],
      },
    ]);
  });

  it("is the first in the order of reading, not along the travel", () => {
    expect(
      found(drift, [
        [50, 0.2],
        [0, 0.2],
        [100, 0.2],
        [50, 0.2],
      ]),
    ).toEqual([]);
    expect(
      found(drift, [
        [50, 0.2],
        [100, 0.2],
        [0, 0.2],
      ]),
    ).toHaveLength(1);
  });

  it("is read again within a micrometre", () => {
    expect(
      found(drift, [
        [0, 0.2],
        [50, 0.2],
        [0.0009, 0.2],
      ]),
    ).toEqual([]);
    expect(
      found(drift, [
        [0, 0.2],
        [50, 0.2],
        [0.0011, 0.2],
      ]),
    ).toHaveLength(1);
  });

  it("is not asked for again where it is the only reading, or there is none", () => {
    expect(found(drift, [[0, 0.2]])).toEqual([]);
    expect(found(drift, [])).toEqual([]);
  });

  it("is told in full, whether stations were read forth and forth again or twice in place", () => {
    const creeping = (places: readonly number[]) =>
      found(
        drift,
        places.map((position, order) => [position, 0.2 + 0.002 * order] as const),
      ).find(({ check }) => check === "drift");
    // 26 readings, 0.002 mm each: 0.05 mm from the first to the last.
    expect(creeping([...CLEAN_PLACES, ...CLEAN_PLACES])?.message).toContain("rise by 0.05 mm");
    expect(creeping(CLEAN_PLACES.flatMap((place) => [place, place]))?.message).toContain("rise by 0.05 mm");
  });
});
