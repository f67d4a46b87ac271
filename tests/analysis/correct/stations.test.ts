import { describe, expect, it } from "vitest";
import type { LostMotion } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";

const lostMotions = (...given: readonly (readonly [position: number, value: number])[]): LostMotion[] =>
  given.map(([position, value], index) => ({ position, value, from: [index] }));

describe("stations", () => {
  it("are places in order, those within a micrometre of each other being one", () => {
    const stations = stationsOf(lostMotions([10, 0.2], [0, 0.1], [10.0009, 0.22], [10.0021, 0.5]));
    expect(stations.map(({ readings }) => readings.flatMap(({ from }) => from))).toEqual([[1], [0, 2], [3]]);
    expect(stations[1].mean).toBeCloseTo(0.21, 12);
    expect(stations[1].position).toBeCloseTo(10.00045, 12);
  });

  it("are one where they are just a micrometre apart", () => {
    expect(stationsOf(lostMotions([0, 0.1], [0.001, 0.1]))).toHaveLength(1);
    expect(stationsOf(lostMotions([0, 0.1], [0.00101, 0.1]))).toHaveLength(2);
  });

  it("measure the micrometre from the first of their positions, so that a chain of them is not one", () => {
    const stations = stationsOf(lostMotions([0, 0.1], [0.0008, 0.1], [0.0016, 0.1]));
    expect(stations.map(({ readings }) => readings.length)).toEqual([2, 1]);
  });

  it("carry the sum of squares of their readings about the mean", () => {
    const [{ mean, squares }] = stationsOf(lostMotions([10, 0.1], [10, 0.2], [10, 0.6]));
    expect(mean).toBeCloseTo(0.3, 12);
    expect(squares).toBeCloseTo(0.04 + 0.01 + 0.09, 12);
  });

  it("are none where there are no readings", () => {
    expect(stationsOf([])).toEqual([]);
  });

  it("leave the readings in their order", () => {
    const readings = lostMotions([10, 0.1], [0, 0.1]);
    stationsOf(readings);
    expect(readings.map(({ position }) => position)).toEqual([10, 0]);
  });
});
