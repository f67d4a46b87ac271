import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { keyedTo, placedOn, wayBetween } from "../../../../src/app/results/screw/nutPosition.ts";

const way = wayBetween(0, 300);

describe("moving the nut by keys", () => {
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
  ] as const)("%s takes it from 100 mm of 300 mm to %s", (key, to) => {
    expect(keyedTo(key, 100, way)).toBe(to);
  });

  it("stops at the ends, wherever they are", () => {
    const odd = wayBetween(12.34, 300.7);
    expect(keyedTo("ArrowLeft", 12.34, odd)).toBe(12.34);
    expect(keyedTo("ArrowRight", 300.5, odd)).toBe(300.7);
    expect(keyedTo("ArrowRight", 12.34, odd)).toBe(13);
  });

  it("never leaves the way", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 5000, noNaN: true }),
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        (from, span, wished) => {
          const any = wayBetween(from, from + span);
          const at = placedOn(any, wished);
          expect(at).toBeGreaterThanOrEqual(any.from);
          expect(at).toBeLessThanOrEqual(any.to);
        },
      ),
    );
  });

  it("goes in round steps of the reader's unit", () => {
    expect(wayBetween(0, 11.8).step).toBeCloseTo(0.05, 9);
    expect(placedOn(wayBetween(0, 11.8), 3.333)).toBe(3.35);
  });
});
