import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keyMove, positionRange, snapped } from "../../../src/app/results/sliderRange.ts";

const travel = positionRange(0, 300);

describe("a slider of positions", () => {
  it.each([
    ["ArrowRight", 101],
    ["ArrowUp", 101],
    ["ArrowLeft", 99],
    ["ArrowDown", 99],
    ["PageUp", 120],
    ["PageDown", 80],
    ["Home", 0],
    ["End", 300],
    ["a", null],
  ] as const)("%s moves it from 100 mm of 300 mm to %s", (key, to) => {
    expect(keyMove(key, 100, travel)).toBe(to);
  });

  it("stops at its ends, round or not", () => {
    const odd = positionRange(12.34, 300.7);
    expect(keyMove("ArrowLeft", 12.34, odd)).toBe(12.34);
    expect(keyMove("ArrowRight", 300.5, odd)).toBe(300.7);
    expect(keyMove("ArrowRight", 12.34, odd)).toBe(13);
  });

  it("never leaves its range", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        (from, span, wanted) => {
          const any = positionRange(from, from + span);
          const at = snapped(any, wanted);
          expect(at).toBeGreaterThanOrEqual(any.from);
          expect(at).toBeLessThanOrEqual(any.to);
        },
      ),
    );
  });

  it("goes in round steps of the reader's unit", () => {
    expect(positionRange(0, 11.8).step).toBeCloseTo(0.05, 9);
    expect(snapped(positionRange(0, 11.8), 3.333)).toBe(3.35);
  });
});
