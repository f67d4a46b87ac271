import { describe, expect, it } from "vitest";
import { drift } from "../../../src/analysis/checks/drift.ts";
import type { PositioningReading } from "../../../src/inspection/schema.ts";
import reference from "../../reference/scatter.json";
import { surveyOf } from "../examples.ts";
import { CLEAN, CLEAN_PLACES, found, surveyed } from "./checkInput.ts";

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

  it("is not what scatter explains, in one of five hundred clean surveys", () => {
    const creeping = (creep: number) =>
      found(
        drift,
        [0, 50, 100, 100, 50, 0].map((position, order) => [position, 0.2 + creep * order] as const),
      );
    expect(creeping(0.99 * reference.driftOfThree)).toEqual([]);
    expect(creeping(1.01 * reference.driftOfThree)).toHaveLength(1);
  });

  it("is not told of readings that no other at their stations can be compared with", () => {
    const steps = [0, 50, 100, 150, 200, 0].map((position, i) => [position, 0.2 + 0.04 * (i % 5)] as const);
    expect(found(drift, steps)).toEqual([]);
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

  it("is read again where a run of positions comes back to it, and not where the way back was read onward", () => {
    const at = (target: number, direction: PositioningReading["direction"]) => ({
      target,
      direction,
      reading: target + (direction === "advancing" ? 0.2 : 0),
      run: 1,
    });
    const notes = (...readings: readonly PositioningReading[]) =>
      drift(surveyed(surveyOf({ method: "positioning", readings }))).map(({ readings }) => readings);
    const out = [at(0, "advancing"), at(50, "advancing"), at(100, "advancing")];
    expect(notes(...out, at(100, "retracting"), at(50, "retracting"), at(0, "retracting"))).toEqual([]);
    expect(notes(...out, at(0, "retracting"), at(50, "retracting"), at(100, "retracting"))).toEqual([[0, 3]]);
  });

  it("is not asked for where there are no readings", () => {
    const seen = surveyed(CLEAN);
    const none = { ...seen, corrected: { ...seen.corrected, readings: [] }, clean: [] };
    expect(drift(none)).toEqual([]);
  });

  it("is not asked for again where it is the only reading", () => {
    expect(found(drift, [[0, 0.2]])).toEqual([]);
  });

  it("is told in full, whether stations were read forth and forth again or twice in place", () => {
    const creeping = (places: readonly number[]) =>
      found(
        drift,
        places.map((position, order) => [position, 0.2 + 0.002 * order] as const),
      ).find(({ check }) => check === "drift");
    // 26 readings, 0.002 mm each: 0.05 mm from the first to the last.
    expect(creeping([...CLEAN_PLACES, ...CLEAN_PLACES])?.message).toContain("rise by 0.05 mm");
    // Each pair lies only 0.02 mm apart, but all thirteen do: 25 times 0.02 mm.
    const inPlace = CLEAN_PLACES.flatMap((place) => [place, place]);
    const finding = found(
      drift,
      inPlace.map((position, order) => [position, 0.2 + 0.02 * order] as const),
    ).find(({ check }) => check === "drift");
    expect(finding?.message).toContain("rise by 0.50 mm");
  });
});
