import { describe, expect, it } from "vitest";
import { groupByPosition } from "../../../src/analysis/correct/samePlace.ts";

const grouped = (...positions: readonly number[]) => groupByPosition(positions, (position) => position);

describe("what lies at one place", () => {
  it("is what lies within a micrometre of the first there, in order of position", () => {
    expect(grouped(50, 0, 25, 0.0009, 50, 25.0011)).toEqual([[0, 0.0009], [25], [25.0011], [50, 50]]);
    // Each within a micrometre of the one before it, but not of the first.
    expect(grouped(0, 0.0008, 0.0016, 0.0024)).toEqual([
      [0, 0.0008],
      [0.0016, 0.0024],
    ]);
  });

  it("keeps the order of what is given at one place, and leaves what is given as it was", () => {
    const items = [
      { at: 10, name: "first" },
      { at: 0, name: "second" },
      { at: 10, name: "third" },
    ];
    const groups = groupByPosition(items, ({ at }) => at);
    expect(groups.map((group) => group.map(({ name }) => name))).toEqual([["second"], ["first", "third"]]);
    expect(items.map(({ name }) => name)).toEqual(["first", "second", "third"]);
  });

  it("is nothing of nothing", () => {
    expect(grouped()).toEqual([]);
  });
});
