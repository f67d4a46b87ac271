import { describe, expect, it } from "vitest";
import {
  bell,
  exponential,
  leastEngaged,
  type Patch,
  peaked,
  peaksOf,
  shareLeft,
  shouldered,
  straight,
  type Wear,
} from "../../../src/analysis/profile/patch.ts";
import { type Random, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { evenlySpaced } from "../examples.ts";

const FALLS = { exponential, peaked, bell, shouldered, straight };

describe("how wear falls off", () => {
  // By what each is called: 2 to the power of minus distance, distance^1.5, distance², distance³; and a straight line.
  it.each([
    ["exponential", 0.25, 2 ** -0.5],
    ["peaked", 2 ** -(2 ** 1.5), 2 ** -(0.5 ** 1.5)],
    ["bell", 2 ** -4, 2 ** -0.25],
    ["shouldered", 2 ** -8, 2 ** -0.125],
    ["straight", 0, 0.75],
  ] as const)("%s: all at 0, a half at 1, its own share at 2 and at a half", (name, atTwo, atHalf) => {
    const fall = FALLS[name];
    expect(shareLeft(fall, 0)).toBe(1);
    expect(shareLeft(fall, 1)).toBeCloseTo(0.5, 12);
    expect(shareLeft(fall, 2)).toBeCloseTo(atTwo, 12);
    expect(shareLeft(fall, 0.5)).toBeCloseTo(atHalf, 12);
  });

  it.each(Object.entries(FALLS))("%s: never rises, never jumps, and ends at nothing", (_, fall) => {
    const values = evenlySpaced(0, 40, 8001).map((distance) => shareLeft(fall, distance));
    const drops = values.slice(1).map((value, i) => values[i] - value);
    expect(Math.min(...drops)).toBeGreaterThanOrEqual(0);
    // Steps of 0.005: no fall is steeper than 1 to 1 anywhere.
    expect(Math.max(...drops)).toBeLessThan(0.006);
    // It ends where less than a ten-millionth would be left, or comes straight down to nothing.
    expect(values.at(-1)).toBe(0);
  });

  it.each([
    ["exponential", (d: number) => 2 ** -d],
    ["peaked", (d: number) => 2 ** -(d ** 1.5)],
    ["bell", (d: number) => 2 ** -(d ** 2)],
    ["shouldered", (d: number) => 2 ** -(d ** 3)],
    ["straight", (d: number) => Math.max(0, 1 - d / 2)],
  ] as const)("%s: is its formula to two parts in a hundred thousand at any distance", (name, formula) => {
    for (const distance of evenlySpaced(0, 30, 3011)) {
      expect(Math.abs(shareLeft(FALLS[name], distance) - formula(distance))).toBeLessThan(2e-5);
    }
  });

  it("a straight fall has reached nothing at twice the distance, and stays there", () => {
    expect(shareLeft(straight, 1.999)).toBeGreaterThan(0);
    expect(shareLeft(straight, 3)).toBe(0);
  });
});

/** Wear of one patch at a place, written out anew. */
function wearOf(patch: Patch, at: number): number {
  if (at < patch.from) return shareLeft(patch.rise, (patch.from - at) / patch.before);
  if (at > patch.to) return shareLeft(patch.fall, (at - patch.to) / patch.after);
  return 1;
}

function deepest({ first, second, share = 1 }: Wear, at: number): number {
  return second === undefined ? wearOf(first, at) : Math.max(wearOf(first, at), share * wearOf(second, at));
}

const STEPS = 800;

/** The least over the engaged length on a fine grid that holds both its ends. */
function leastByForce(wear: Wear, at: number, halfNut: number): number {
  const reach = halfNut * wear.engaged;
  const places = evenlySpaced(at - reach, at + reach, STEPS + 1);
  return Math.min(...places.map((place) => deepest(wear, place)));
}

function found(wear: Wear, places: readonly number[], halfNut: number): readonly number[] {
  const into = new Float64Array(places.length);
  leastEngaged(wear, Float64Array.from(places), halfNut, into);
  return [...into];
}

function randomPatch(random: Random): Patch {
  const falls = Object.values(FALLS);
  const fall = () => falls[Math.floor(random() * falls.length)];
  const from = -0.2 + 1.3 * random();
  return {
    from,
    to: from + (random() < 0.5 ? 0 : 0.3 * random()),
    before: 0.03 + 0.4 * random() ** 2,
    after: 0.03 + 0.4 * random() ** 2,
    rise: fall(),
    fall: fall(),
  };
}

const BUMP: Patch = { from: 0.4, to: 0.5, before: 0.1, after: 0.2, rise: straight, fall: bell };

describe("the wear that a nut meets", () => {
  it("is the patch itself for a nut of no length: level, and a half at the stated distances", () => {
    const places = [0.2, 0.3, 0.4, 0.45, 0.5, 0.7, 0.9];
    const values = found({ first: BUMP, engaged: 1 }, places, 0);
    [0, 0.5, 1, 1, 1, 0.5, 1 / 16].forEach((expected, i) => {
      expect(values[i]).toBeCloseTo(expected, 12);
    });
  });

  it("is that at the worse end of the nut", () => {
    // From 0.3 to 0.5: half at its left end; from 0.5 to 0.7: half at its right end; wholly on the level stretch.
    const [left, right] = found({ first: BUMP, engaged: 1 }, [0.4, 0.6], 0.1);
    expect(left).toBeCloseTo(0.5, 12);
    expect(right).toBeCloseTo(0.5, 12);
    expect(found({ first: BUMP, engaged: 1 }, [0.45], 0.05)[0]).toBeCloseTo(1, 12);
  });

  it("reaches as far as the share of the nut that is engaged", () => {
    const [value] = found({ first: BUMP, engaged: 0.25 }, [0.4], 0.2);
    // A twentieth beyond the level stretch, where the straight fall has lost a quarter.
    expect(value).toBeCloseTo(0.75, 12);
  });

  it("of one patch is the least by brute force over the engaged length", () => {
    const random = seededRandom(3);
    for (let i = 0; i < 150; i++) {
      const wear = { first: randomPatch(random), engaged: random() < 0.7 ? 1 : random() };
      const halfNut = 0.2 * random();
      const places = [random(), random()];
      found(wear, places, halfNut).forEach((value, k) => {
        expect(value).toBeCloseTo(leastByForce(wear, places[k], halfNut), 9);
      });
    }
  });

  it("of two patches is the least by brute force over the engaged length", () => {
    const random = seededRandom(4);
    for (let i = 0; i < 200; i++) {
      const wear: Wear = {
        first: randomPatch(random),
        second: randomPatch(random),
        share: random() < 0.2 ? undefined : random(),
        engaged: random() < 0.7 ? 1 : random(),
      };
      const halfNut = 0.2 * random();
      const places = [random(), random()];
      found(wear, places, halfNut).forEach((value, k) => {
        // The valley is found to a fraction of its width, and the grid may miss it by half a step.
        expect(Math.abs(value - leastByForce(wear, places[k], halfNut))).toBeLessThan(0.003);
      });
    }
  });

  it("of two patches is the deeper one at each place for a nut of no length", () => {
    const second: Patch = { from: 0.9, to: 0.9, before: 0.1, after: 0.1, rise: bell, fall: bell };
    const wear = { first: BUMP, second, share: 0.6, engaged: 1 };
    const values = found(wear, [0.45, 0.9, 0.8, 0.7], 0);
    [1, 0.6, 0.5 ** (2.25 / 1), 0.5].forEach((expected, i) => {
      // At 0.8 the first has fallen by 1.5 times its half distance: 2^−2.25; the second's half is 0.3.
      const byHand = i === 2 ? Math.max(expected, 0.3) : expected;
      expect(values[i]).toBeCloseTo(byHand, 12);
    });
  });

  it("of two patches is no more than the valley between them where the nut spans it, in either order", () => {
    const left: Patch = { from: 0.3, to: 0.3, before: 0.1, after: 0.1, rise: straight, fall: straight };
    const right: Patch = { ...left, from: 0.6, to: 0.6 };
    // The falling lines meet at 0.45, where a quarter is left.
    for (const [first, second] of [
      [left, right],
      [right, left],
    ]) {
      const [across, beside] = found({ first, second, engaged: 1 }, [0.45, 0.35], 0.05);
      expect(across).toBeCloseTo(0.25, 3);
      expect(beside).toBeCloseTo(0.5, 12);
    }
  });

  it("takes a second patch without a share for as deep as the first", () => {
    const second: Patch = { ...BUMP, from: 0.9, to: 0.9 };
    expect(found({ first: BUMP, second, engaged: 1 }, [0.9], 0)[0]).toBe(1);
  });
});

describe("where lost motion may be greatest", () => {
  it("is the middle of a patch that is alike on both sides, whatever the nut", () => {
    const first: Patch = { from: 0.4, to: 0.4, before: 0.1, after: 0.1, rise: bell, fall: bell };
    for (const halfNut of [0.001, 0.05, 0.3]) {
      expect(peaksOf({ first, engaged: 1 }, halfNut)).toHaveLength(1);
      expect(peaksOf({ first, engaged: 1 }, halfNut)[0]).toBeCloseTo(0.4, 5);
    }
  });

  it("is where both ends of the nut meet the same wear: nearer the side that falls off slowly", () => {
    const first: Patch = { from: 0.4, to: 0.4, before: 0.1, after: 0.3, rise: straight, fall: straight };
    // Both ends meet the same where the nut, 0.2 long, stands a quarter before 0.4 and three quarters after.
    expect(peaksOf({ first, engaged: 1 }, 0.1)[0]).toBeCloseTo(0.45, 5);
    expect(peaksOf({ first, engaged: 0.5 }, 0.1)[0]).toBeCloseTo(0.425, 5);
  });

  it("of one patch is no worse than any place by brute force", () => {
    const random = seededRandom(5);
    for (let i = 0; i < 100; i++) {
      const wear = { first: randomPatch(random), engaged: random() < 0.7 ? 1 : random() };
      const halfNut = 0.01 + 0.2 * random();
      const [peak] = peaksOf(wear, halfNut);
      const all = found(wear, evenlySpaced(-1, 2, 3001), halfNut);
      expect(found(wear, [peak], halfNut)[0]).toBeGreaterThan(Math.max(...all) - 1e-5);
    }
  });

  it("of two patches is at the one or the other, where they lie apart", () => {
    const first: Patch = { from: 0.2, to: 0.2, before: 0.05, after: 0.02, rise: bell, fall: straight };
    const second: Patch = { from: 0.8, to: 0.8, before: 0.03, after: 0.06, rise: peaked, fall: bell };
    for (const share of [0.5, 1, 2]) {
      const wear = { first, second, share, engaged: 1 };
      const peaks = peaksOf(wear, 0.04);
      expect(peaks).toHaveLength(2);
      const all = found(wear, evenlySpaced(0, 1, 10_001), 0.04);
      expect(Math.max(...found(wear, peaks, 0.04))).toBeGreaterThan(Math.max(...all) - 1e-5);
    }
  });
});
