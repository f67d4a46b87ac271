import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point } from "../../src/picture/linesAbove.ts";
import { type Box, placeLabels } from "../../src/picture/placeLabels.ts";

const BOUNDS: Box = { x: 0, y: 0, width: 200, height: 100 };
const size = { width: 40, height: 10 };
const at = (x: number, y: number, reluctance = 0) => ({ x, y, reluctance });

describe("placeLabels", () => {
  it("takes the place it is least reluctant to take", () => {
    const [box] = placeLabels([{ ...size, candidates: [at(10, 10, 5), at(60, 60)] }], [], BOUNDS);
    expect(box).toEqual({ ...size, x: 60, y: 60 });
  });

  it("moves off an obstacle", () => {
    const request = { ...size, candidates: [at(10, 10), at(100, 50, 1)] };
    const [box] = placeLabels([request], [{ x: 20, y: 12, width: 5, height: 5 }], BOUNDS);
    expect(box).toMatchObject({ x: 100, y: 50 });
  });

  it("leaves out a label that has no room inside the bounds", () => {
    expect(placeLabels([{ ...size, candidates: [at(170, 10), at(10, 95)] }], [], BOUNDS)).toEqual([null]);
  });

  it("never lets two labels overlap or leave the bounds", () => {
    const candidate = fc.record({
      x: fc.integer({ min: -50, max: 250 }),
      y: fc.integer({ min: -50, max: 150 }),
      reluctance: fc.nat(100),
    });
    const request = fc.record({
      width: fc.integer({ min: 5, max: 80 }),
      height: fc.integer({ min: 5, max: 20 }),
      candidates: fc.array(candidate, { maxLength: 12 }),
    });
    fc.assert(
      fc.property(fc.array(request, { maxLength: 8 }), (requests) => {
        const boxes = placeLabels(requests, [], BOUNDS).flatMap((box) => box ?? []);
        boxes.forEach((box, index) => {
          expect(box.x >= 0 && box.x + box.width <= BOUNDS.width).toBe(true);
          expect(box.y >= 0 && box.y + box.height <= BOUNDS.height).toBe(true);
          for (const other of boxes.slice(index + 1)) expect(disjoint(box, other)).toBe(true);
        });
      }),
    );
  });

  it("covers as little of the obstacles as any of its places would", () => {
    const whole = fc.record({ x: fc.integer({ min: -20, max: 220 }), y: fc.integer({ min: 0, max: 100 }) });
    const box = fc
      .tuple(whole, fc.integer({ min: 1, max: 150 }), fc.integer({ min: 1, max: 30 }))
      .map(([corner, width, height]) => ({ ...corner, width, height }));
    const place = fc.record({ x: fc.nat(160), y: fc.nat(90), reluctance: fc.nat(100) });
    fc.assert(
      fc.property(
        fc.array(box, { maxLength: 20 }),
        fc.array(place, { minLength: 1 }),
        (obstacles, candidates) => {
          const [taken] = placeLabels([{ ...size, candidates }], obstacles, BOUNDS);
          const costs = candidates.map((each) => each.reluctance + covered(each, obstacles));
          const cost = candidates.map((each, index) => (isAt(each, taken) ? costs[index] : undefined));
          expect(Math.min(...cost.flatMap((each) => each ?? []))).toBeCloseTo(Math.min(...costs), 6);
        },
      ),
    );
  });
});

const isAt = (place: Point, box: Box | null | undefined) => place.x === box?.x && place.y === box.y;

/** Area, counted pixel by pixel, of the obstacles under a label at a place and 3 pixels round it. */
function covered(place: Point, obstacles: readonly Box[]): number {
  let pixels = 0;
  for (const { x, y, width, height } of obstacles)
    for (let across = x; across < x + width; across++)
      for (let down = y; down < y + height; down++)
        if (
          across >= place.x - 3 &&
          across < place.x + size.width + 3 &&
          down >= place.y - 3 &&
          down < place.y + size.height + 3
        )
          pixels += 1;
  return pixels;
}

function disjoint(one: Box, other: Box): boolean {
  return (
    one.x + one.width <= other.x ||
    other.x + other.width <= one.x ||
    one.y + one.height <= other.y ||
    other.y + other.height <= one.y
  );
}
