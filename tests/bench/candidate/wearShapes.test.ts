import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { evenlySpaced } from "../../analysis/examples.ts";
import { leastEngaged, peaksOf, type Wear } from "./patch.ts";
import { dimensionsOf, EVEN_CHANCE, WEAR_SHAPES, wornBy } from "./wearShapes.ts";

const NAMES = WEAR_SHAPES.map(({ name }) => name);

function named(name: string) {
  const wearShape = WEAR_SHAPES.find((each) => each.name === name);
  if (wearShape === undefined) throw new Error(`There is no wear shape "${name}".`);
  return wearShape;
}

/** A shape by its numbers, the last of them being the nut's stiffness. */
function shape(name: string, ...u: readonly number[]): Wear {
  return wornBy(named(name), Float64Array.from(u));
}

/** Wear at places, as met by a nut of no length unless told otherwise. */
function wearAt(wear: Wear, places: readonly number[], halfNut = 0): readonly number[] {
  const into = new Float64Array(places.length);
  leastEngaged(wear, Float64Array.from(places), halfNut, into);
  return [...into];
}

function expectWear(wear: Wear, expected: readonly (readonly [place: number, wear: number])[]): void {
  const values = wearAt(
    wear,
    expected.map(([place]) => place),
  );
  expected.forEach(([place, value], i) => {
    expect(values[i], `at ${place}`).toBeCloseTo(value, 9);
  });
}

/** A number halfway in the logarithm. */
const geometric = (low: number, high: number): number => Math.sqrt(low * high);

/** Numbers by which one of a list is chosen: the middles of equal parts of 0 to 1. */
const choice = (index: number, of: number): number => (index + 0.5) / of;

const PLACES = evenlySpaced(0, 1, 21);

describe("the wear shapes", () => {
  it("and an even profile share all of the prior chance", () => {
    const chances = WEAR_SHAPES.map(({ weight }) => weight);
    expect(chances.reduce((sum, chance) => sum + chance, EVEN_CHANCE)).toBeCloseTo(1, 12);
    expect(Math.min(...chances)).toBeGreaterThan(0);
    expect(EVEN_CHANCE).toBeGreaterThan(0.2);
    expect(EVEN_CHANCE).toBeLessThan(0.5);
  });

  it("have names of their own", () => {
    expect(new Set(NAMES).size).toBe(NAMES.length);
  });

  it.each(NAMES)("make wear between nothing and all of every number in the cube: %s", (name) => {
    const wearShape = named(name);
    const size = dimensionsOf(wearShape);
    const random = seededRandom(8);
    const almostOne = 1 - 2 ** -32;
    const cube = [
      ...[0, 0.5, almostOne].map((value) => new Float64Array(size).fill(value)),
      ...Array.from({ length: 400 }, () => Float64Array.from({ length: size }, random)),
      ...Array.from({ length: 400 }, () =>
        Float64Array.from({ length: size }, () => (random() < 0.5 ? 0 : almostOne)),
      ),
    ];
    for (const u of cube) {
      const wear = wornBy(wearShape, u);
      const values = [
        ...wearAt(wear, PLACES),
        ...wearAt(wear, PLACES, 0.1),
        ...wearAt(wear, peaksOf(wear, 0.1), 0.1),
      ];
      const most = wear.first.summed ? wear.first.heights.reduce((sum, height) => sum + height, 0) : 1;
      expect(values.every((value) => value >= 0 && value <= most + 1e-12)).toBe(true);
      expect(wear.engaged).toBeGreaterThan(0);
      expect(wear.engaged).toBeLessThanOrEqual(1);
      for (const { from, to } of wear.first.patches) expect(from).toBeLessThanOrEqual(to + 1e-12);
    }
  });

  it.each(NAMES)("take one number more than their own, the nut's stiffness: %s", (name) => {
    const wearShape = named(name);
    expect(dimensionsOf(wearShape)).toBe(wearShape.dimensions + 1);
    const engaged = (stiffness: number) => {
      const u = new Float64Array(dimensionsOf(wearShape)).fill(0.5);
      u[wearShape.dimensions] = stiffness;
      return wornBy(wearShape, u).engaged;
    };
    // Stiff in nine of ten cases; else engaged by any share of its length.
    expect(engaged(0)).toBe(1);
    expect(engaged(0.8999)).toBe(1);
    expect(engaged(0.92)).toBeCloseTo(0.8, 12);
    expect(engaged(0.99)).toBeCloseTo(0.1, 12);
  });
});

describe("a bump", () => {
  it("is deepest at its centre, and a half at half its width to either side", () => {
    const half = geometric(0.08, 0.7) / 2;
    // Peaked, bell, bell, shouldered: at twice the distance 2 to the power of −2^1.5, −4, −4 and −8.
    [2 ** 1.5, 4, 4, 8].forEach((power, i) => {
      expectWear(shape("bump", 0.5, 0.5, choice(i, 4), 0), [
        [0.5, 1],
        [0.5 - half, 0.5],
        [0.5 + half, 0.5],
        [0.5 - 2 * half, 2 ** -power],
        [0.5 + 2 * half, 2 ** -power],
      ]);
    });
  });

  it("lies anywhere along the travel and a twentieth beyond, from 0.08 to 0.7 of it wide", () => {
    expectWear(shape("bump", 0, 0, 0.5, 0), [
      [-0.05, 1],
      [-0.01, 0.5],
    ]);
    expectWear(shape("bump", 1, 1, 0.5, 0), [
      [1.05, 1],
      [0.7, 0.5],
    ]);
  });
});

describe("a plateau", () => {
  it("is level between its edges, and a half at its ends", () => {
    const half = geometric(0.08, 0.8) / 2;
    const edge = geometric(0.004, 0.08);
    // Bell, shouldered, straight: at twice the edge beyond the level stretch.
    [2 ** -4, 2 ** -8, 0].forEach((atTwo, i) => {
      expectWear(shape("plateau", 0.5, 0.5, 0.5, 0.5, choice(i, 3), 0), [
        [0.5, 1],
        [0.5 - half + edge, 1],
        [0.5 + half - edge, 1],
        [0.5 - half, 0.5],
        [0.5 + half, 0.5],
        [0.5 - half - edge, atTwo],
        [0.5 + half + edge, atTwo],
      ]);
    });
  });

  it("has two edges of their own, and lies anywhere along the travel", () => {
    const wear = shape("plateau", 0.25, 0.5, 0, 1, choice(2, 3), 0);
    const half = geometric(0.08, 0.8) / 2;
    expectWear(wear, [
      [0.25 - half + 0.002, 0.75],
      [0.25 + half - 0.04, 0.75],
    ]);
  });

  it("has edges no longer than half of it", () => {
    // A length of 0.08 with edges of 0.08: both cut to 0.04, so that they meet in the middle.
    expectWear(shape("plateau", 0.5, 0, 1, 1, choice(2, 3), 0), [
      [0.5, 1],
      [0.48, 0.75],
      [0.52, 0.75],
    ]);
  });
});

describe("a worn end", () => {
  it("is worn from beyond the end of the travel to where a half is left", () => {
    const edge = geometric(0.01, 0.25);
    [2 ** -4, 2 ** -8, 0].forEach((atTwo, i) => {
      expectWear(shape("worn end", 0.5, 0.5, choice(i, 3), 0, 0), [
        [-1, 1],
        [0, 1],
        [0.35 - edge, 1],
        [0.35, 0.5],
        [0.35 + edge, atTwo],
      ]);
    });
  });

  it("reaches from a twentieth to 0.65 of the travel", () => {
    expectWear(shape("worn end", 0, 0.5, 0.5, 0, 0), [[0.05, 0.5]]);
    expectWear(shape("worn end", 1, 0.5, 0.5, 0, 0), [[0.65, 0.5]]);
  });
});

describe("a taper", () => {
  it("is a straight line from nothing at one place to all at another, and level beyond", () => {
    // From (−0.15 + 0.3) / 2 to (0.7 + 1.15) / 2.
    expectWear(shape("taper", 0.5, 0.5, 0, 0), [
      [0, 0],
      [0.075, 0],
      [0.5, 0.5],
      [0.7125, 0.75],
      [0.925, 1],
      [2, 1],
    ]);
    expectWear(shape("taper", 0, 0, 0, 0), [
      [-0.15, 0],
      [0.275, 0.5],
      [0.7, 1],
    ]);
    expectWear(shape("taper", 1, 1, 0, 0), [[0.725, 0.5]]);
  });
});

describe("a steep side and a long tail", () => {
  it("rises within its steep side and falls off along its tail", () => {
    const steep = geometric(0.004, 0.05);
    const tail = geometric(0.04, 0.5);
    // Exponential, peaked, straight at twice the tail's half distance.
    [2 ** -2, 2 ** -(2 ** 1.5), 0].forEach((atTwo, i) => {
      expectWear(shape("steep side and long tail", 0.5, 0.5, 0.5, choice(i, 3), 0, 0), [
        [0.45, 1],
        [0.45 - steep, 0.5],
        [0.45 - 2 * steep, 2 ** -8],
        [0.45 + tail, 0.5],
        [0.45 + 2 * tail, atTwo],
      ]);
    });
  });

  it("lies from a twentieth before the travel to a twentieth before its end", () => {
    expectWear(shape("steep side and long tail", 0, 0.5, 0.5, 0.5, 0, 0), [[-0.05, 1]]);
    expectWear(shape("steep side and long tail", 1, 0.5, 0.5, 0.5, 0, 0), [[0.95, 1]]);
  });
});

describe("two bumps", () => {
  it("are two, of which the second is from a quarter to as deep", () => {
    // At 0.17 and 0.83, each 0.08 wide.
    const wear = (share: number) => shape("two bumps", 0.2, 0, 0.5, 0.8, 0, 0.5, share, 0);
    expectWear(wear(0), [
      [0.17, 1],
      [0.21, 0.5],
      [0.83, 0.25],
      [0.87, 0.125],
    ]);
    expectWear(wear(0.5), [[0.83, 0.625]]);
    expectWear(wear(1), [[0.83, 1]]);
  });
});

describe("free patches", () => {
  it("have a length and two sides of their own, each with any of the falls", () => {
    const length = geometric(0.002, 0.5);
    const edge = geometric(0.005, 0.7);
    const atTwo = [2 ** -2, 2 ** -(2 ** 1.5), 2 ** -4, 2 ** -8, 0];
    atTwo.forEach((rise, i) => {
      const fall = atTwo[(i + 2) % 5];
      expectWear(shape("free patch", 0.5, 0.5, 0.5, 0, choice(i, 5), choice((i + 2) % 5, 5), 0), [
        [0.5 - length, 1],
        [0.5 + length, 1],
        [0.5 - length - edge, 0.5],
        [0.5 - length - 2 * edge, rise],
        [0.5 + length + 0.005, 0.5],
        [0.5 + length + 0.01, fall],
      ]);
    });
    expectWear(shape("free patch", 0, 0.5, 0.5, 0.5, 0.5, 0.5, 0), [[-0.15, 1]]);
    expectWear(shape("free patch", 1, 0.5, 0.5, 1, 0.5, 0.5, 0), [
      [1.15, 1],
      [1.15 + length + 0.7, 0.5],
    ]);
  });

  it("are two, of which the second is from a tenth to as deep", () => {
    const wear = (share: number) =>
      shape("two free patches", 0.2, 0, 0, 0, 0.5, 0.5, 0.8, 0, 0, 0, 0.5, 0.5, share, 0);
    expectWear(wear(0.5), [
      [0.11, 1],
      [0.11 + 0.007, 0.5],
      [0.89, Math.sqrt(0.1)],
    ]);
    expectWear(wear(0), [[0.89, 0.1]]);
    expectWear(wear(1), [[0.89, 1]]);
  });
});

describe("a wear shape that may run either way", () => {
  it.each([
    ["worn end", 3],
    ["taper", 2],
    ["steep side and long tail", 4],
  ])("is its own mirror image from a half up: %s", (name, at) => {
    const wearShape = named(name);
    const random = seededRandom(9);
    const mirrored = PLACES.map((place) => 1 - place);
    for (let i = 0; i < 50; i++) {
      const u = Float64Array.from({ length: dimensionsOf(wearShape) }, random);
      u[at] = 0.4999;
      const forward = wearAt(wornBy(wearShape, u), PLACES, 0.03);
      u[at] = 0.5;
      const backward = wearAt(wornBy(wearShape, u), mirrored, 0.03);
      forward.forEach((value, k) => {
        expect(backward[k]).toBeCloseTo(value, 9);
      });
    }
  });
});
