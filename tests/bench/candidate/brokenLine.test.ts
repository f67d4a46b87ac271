import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { evenlySpaced } from "../../analysis/examples.ts";
import { brokenLine, leastOfLine, peaksOfLine } from "./brokenLine.ts";

const found = (line: ReturnType<typeof brokenLine>, places: readonly number[], reach: number) => {
  const into = new Float64Array(places.length);
  leastOfLine(line, Float64Array.from(places), reach, into);
  return [...into];
};

describe("a broken line", () => {
  it("runs from 0 to 1 through its knots in order, and is level beyond them", () => {
    const line = brokenLine([
      [0.8, 0.6],
      [0.2, 0.2],
      [0.5, 0.4],
    ]);
    expect(line.places).toEqual([0.2, 0.5, 0.8]);
    [0, 0, 0.25, 0.5, 1, 1].forEach((height, i) => {
      expect(found(line, [[0.1, 0.2, 0.35, 0.5, 0.8, 1][i]], 0)[0]).toBeCloseTo(height, 12);
    });
  });

  it("is 0 everywhere where all its knots are alike", () => {
    const line = brokenLine([
      [0, 0.3],
      [1, 0.3],
    ]);
    expect(found(line, [0, 0.5, 1], 0.1)).toEqual([0, 0, 0]);
  });

  it("meets the nut with the least by brute force over its length", () => {
    const random = seededRandom(3);
    for (let i = 0; i < 100; i++) {
      const line = brokenLine(Array.from({ length: 5 }, () => [random(), random()] as const));
      const reach = 0.15 * random();
      const place = random();
      const stretch = evenlySpaced(place - reach, place + reach, 2001);
      // A knot may lie half a step off the grid, where the line is no steeper than 1 over its shortest piece.
      const force = Math.min(...found(line, stretch, 0));
      expect(found(line, [place], reach)[0]).toBeLessThanOrEqual(force + 1e-12);
      expect(force - found(line, [place], reach)[0]).toBeLessThan(0.05);
    }
  });

  it("has its peaks where no place is higher", () => {
    const line = brokenLine([
      [0, 0.1],
      [0.3, 1],
      [0.5, 0],
      [0.8, 0.7],
      [1, 0],
    ]);
    const peaks = peaksOfLine(line, 0.04);
    expect(peaks).toHaveLength(2);
    const all = found(line, evenlySpaced(0, 1, 10_001), 0.04);
    expect(Math.max(...found(line, peaks, 0.04))).toBeGreaterThan(Math.max(...all) - 1e-4);
  });
});
