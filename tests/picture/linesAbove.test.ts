import { describe, expect, it } from "vitest";
import { linesAbove } from "../../src/picture/linesAbove.ts";

describe("linesAbove", () => {
  it("cuts a line at the level, where it crosses", () => {
    const line = [
      { x: 0, y: 0 },
      { x: 10, y: 4 },
      { x: 20, y: 0 },
    ];
    expect(linesAbove(line, 1)).toEqual([
      [
        { x: 2.5, y: 1 },
        { x: 10, y: 4 },
        { x: 17.5, y: 1 },
      ],
    ]);
  });

  it("keeps parts apart and leaves open what begins or ends above the level", () => {
    const heights = [3, 1, 1, 3];
    const line = heights.map((y, x) => ({ x, y }));
    expect(linesAbove(line, 2).map((part) => part.map(({ x }) => x))).toEqual([
      [0, 0.5],
      [2.5, 3],
    ]);
  });

  it("finds nothing above a level that is only touched", () => {
    const line = [1, 2, 1].map((y, x) => ({ x, y }));
    expect(linesAbove(line, 2)).toEqual([]);
  });
});
