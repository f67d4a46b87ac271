import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundFlank, plateAngle, sineBarHeight } from "../../../src/thread/make/grinding.ts";

type Vector = readonly [number, number, number];

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const angleBetween = (a: Vector, b: Vector): number => {
  const cosine = Math.abs(dot(a, b)) / Math.sqrt(dot(a, a) * dot(b, b));
  return (Math.acos(Math.min(1, cosine)) * 180) / Math.PI;
};

/** A vector turned about an axis through the origin (Rodrigues). */
function turned(v: Vector, axis: Vector, degrees: number): Vector {
  const [c, s] = [Math.cos(radians(degrees)), Math.sin(radians(degrees))];
  const across = cross(axis, v);
  const along = dot(axis, v) * (1 - c);
  return [0, 1, 2].map(
    (i) => (v[i] ?? 0) * c + (across[i] ?? 0) * s + (axis[i] ?? 0) * along,
  ) as unknown as Vector;
}

/** Builds the blank as it is held and the upright plane that is ground, and measures the angles between them. */
function built(plate: number, pitched: number, rolled: number) {
  // The nose is at the end of x: nose up turns x towards z.
  const across: Vector = [0, -1, 0];
  const length = turned([1, 0, 0], across, pitched);
  const upright = turned(turned([0, 0, 1], across, pitched), length, rolled);
  const ground: Vector = [Math.sin(radians(plate)), Math.cos(radians(plate)), 0];
  const edge = cross(ground, upright);
  return {
    edge: angleBetween(edge, length),
    squareToEdge: angleBetween(cross(ground, edge), upright),
    side: angleBetween(cross(ground, length), upright),
  };
}

describe("grinding a flank", () => {
  const tilts = fc.record({
    halfAngle: fc.double({ min: 0, max: 30, noNaN: true }),
    pitched: fc.double({ min: -25, max: 25, noNaN: true }),
    rolled: fc.double({ min: -25, max: 25, noNaN: true }),
  });

  it("gives the angles that are measured on the ground plane, however the blank is held", () => {
    fc.assert(
      fc.property(tilts, ({ halfAngle, pitched, rolled }) => {
        const held = { pitched, rolled };
        const plate = plateAngle(halfAngle, held);
        const measured = built(plate, pitched, rolled);
        const told = groundFlank(plate, held);
        expect(measured.edge).toBeCloseTo(halfAngle, 5);
        expect(told.edge).toBeCloseTo(halfAngle, 9);
        expect(Math.abs(told.squareToEdge)).toBeCloseTo(measured.squareToEdge, 5);
        expect(Math.abs(told.side)).toBeCloseTo(measured.side, 5);
      }),
    );
  });

  it("agrees with the formulas for a blank that is only pitched or only rolled", () => {
    const tangent = (degrees: number): number => Math.tan(radians(degrees));
    const degreesOf = (slope: number): number => (Math.atan(slope) * 180) / Math.PI;
    for (const halfAngle of [14.5, 15, 27.5, 30])
      for (const t of [3, 10, 20]) {
        const pitched = { pitched: t, rolled: 0 };
        expect(plateAngle(halfAngle, pitched)).toBeCloseTo(
          degreesOf(tangent(halfAngle) / Math.cos(radians(t))),
          9,
        );
        expect(groundFlank(plateAngle(halfAngle, pitched), pitched).squareToEdge).toBeCloseTo(
          degreesOf(Math.sin(radians(halfAngle)) * tangent(t)),
          9,
        );
        expect(plateAngle(halfAngle, { pitched: 0, rolled: t })).toBeCloseTo(
          degreesOf(tangent(halfAngle) * Math.cos(radians(t))),
          9,
        );
      }
  });

  it("clears the side by as much as the blank is rolled, and the other way where that is negative", () => {
    for (const clearance of [7.9, -0.8]) {
      const held = { pitched: 0, rolled: clearance };
      expect(groundFlank(plateAngle(15, held), held).side).toBeCloseTo(clearance, 9);
    }
  });

  it("sets a sine bar of any length", () => {
    expect(sineBarHeight(100, 30)).toBeCloseTo(50, 9);
    expect(sineBarHeight(127, 14.5)).toBeCloseTo(31.7984, 3);
  });
});
