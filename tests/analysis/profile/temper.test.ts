import { describe, expect, it } from "vitest";
import { CHARACTERS, dimensionsOf, EVEN_CHANCE, wornBy } from "../../../src/analysis/profile/characters.ts";
import type { Wear } from "../../../src/analysis/profile/patch.ts";
import { along, byCharacter, EVEN, resample, temper, wearOf } from "../../../src/analysis/profile/temper.ts";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { repeating } from "../examples.ts";
import { momentsIn } from "./quadrature.ts";

const TWO_BUMPS = CHARACTERS.findIndex(({ name }) => name === "two bumps");
/** A score is known to a constant only, so that it may be of any size. */
const BEST = 800;
const IMPOSSIBLE = BEST - 1000;

/**
 * A normal score of how deep the second of two bumps is, about the middle of 0.25 to 1. Any other shape is impossible,
 * and an even profile falls short of the best by a stated amount.
 */
function aboutTheMiddle(deviation: number, even = IMPOSSIBLE - BEST) {
  return (wear: Wear | undefined): number => {
    if (wear === undefined) return BEST + even;
    const { first, second, share = 1 } = wear;
    const areBumps = second !== undefined && first.from === first.to;
    return areBumps ? BEST - 0.5 * ((share - 0.625) / deviation) ** 2 : IMPOSSIBLE;
  };
}

const shares = (particles: ReturnType<typeof temper>) =>
  particles.flatMap((particle) => wearOf(particle)?.share ?? []);

describe("tempering", () => {
  const SIZE = 2000;

  it.each([0.1, 0.02])("gives the second bump's depth its posterior, of deviation %f", (deviation) => {
    const particles = temper(SIZE, aboutTheMiddle(deviation), seededRandom(21));
    expect(particles).toHaveLength(SIZE);
    expect(particles.every(({ character }) => character === TWO_BUMPS)).toBe(true);
    const { mean, deviation: found } = momentsIn(shares(particles));
    expect(Math.abs(mean - 0.625)).toBeLessThan(0.15 * deviation);
    expect(found / deviation).toBeGreaterThan(0.9);
    expect(found / deviation).toBeLessThan(1.1);
  });

  it("leaves what the score does not tell of as evenly spread as before", () => {
    const particles = temper(SIZE, aboutTheMiddle(0.02), seededRandom(22));
    for (const at of [0, 2, 4, 7]) {
      const { mean, deviation } = momentsIn(particles.map(({ u }) => u[at]));
      expect(Math.abs(mean - 0.5)).toBeLessThan(0.04);
      expect(Math.abs(deviation - Math.sqrt(1 / 12))).toBeLessThan(0.02);
    }
    expect(particles.every(({ u }) => u.every((value) => value >= 0 && value < 1))).toBe(true);
  });

  it.each([
    [0.1, -1],
    [0.02, -2],
  ])("shares out characters by prior times evidence: deviation %f, even %f", (deviation, even) => {
    const particles = temper(SIZE, aboutTheMiddle(deviation, even), seededRandom(23));
    // The depth is even over 0.75, so the evidence is that of a normal density: σ √(2π) / 0.75.
    const bumps = (CHARACTERS[TWO_BUMPS].weight * deviation * Math.sqrt(2 * Math.PI)) / 0.75;
    const rest = EVEN_CHANCE * Math.exp(even);
    const share = particles.filter(({ character }) => character === EVEN).length / SIZE;
    expect(Math.abs(share - rest / (rest + bumps))).toBeLessThan(0.05);
  });

  it("shares out characters by their prior alone where all scores are alike", () => {
    const particles = temper(SIZE, () => -3, seededRandom(24));
    const kin = byCharacter(particles);
    [...CHARACTERS.map(({ weight }) => weight), EVEN_CHANCE].forEach((chance, i) => {
      const standardError = Math.sqrt((chance * (1 - chance)) / SIZE);
      expect(Math.abs(kin[i].length / SIZE - chance)).toBeLessThan(4 * standardError);
    });
  });

  it("keeps each particle's score with it", () => {
    const score = aboutTheMiddle(0.1, -1);
    for (const particle of temper(300, score, seededRandom(25)))
      expect(particle.log).toBe(score(wearOf(particle)));
  });

  it("moves particles apart: most are unlike any other", () => {
    const particles = temper(500, aboutTheMiddle(0.02), seededRandom(26));
    expect(new Set(shares(particles)).size).toBeGreaterThan(400);
  });

  it("gives the same to the same seed, and another to another", () => {
    const run = (seed: number) => temper(100, aboutTheMiddle(0.1, -1), seededRandom(seed));
    expect(run(27)).toEqual(run(27));
    expect(run(27)).not.toEqual(run(28));
  });
});

describe("the wear of a particle", () => {
  it("is that of its character and numbers, and none for an even profile", () => {
    CHARACTERS.forEach((character, i) => {
      const u = new Float64Array(dimensionsOf(character)).fill(0.3);
      expect(wearOf({ character: i, u })).toEqual(wornBy(character, u));
    });
    expect(EVEN).toBe(CHARACTERS.length);
    expect(wearOf({ character: EVEN, u: new Float64Array(0) })).toBeUndefined();
  });
});

describe("resampling", () => {
  const items = ["a", "b", "c", "d"];

  it("gives each item its share of the places, to the nearest whole", () => {
    // Weights of 1, 2, 0 and 1 of 4: marks at a half, one and a half, two and a half, three and a half.
    expect(resample(items, [1, 2, 0, 1], 4, () => 0.5)).toEqual(["a", "b", "b", "d"]);
    expect(resample(items, [1, 2, 0, 1], 8, () => 0.5)).toEqual(["a", "a", "b", "b", "b", "b", "d", "d"]);
  });

  it("shifts all marks by one random number", () => {
    // Marks at 0.9 / 2 and 1.9 / 2 of 4.
    expect(resample(items, [1, 1, 1, 1], 2, () => 0.9)).toEqual(["b", "d"]);
    expect(resample(items, [1, 1, 1, 1], 2, () => 0.1)).toEqual(["a", "c"]);
  });

  it("keeps proportions to within one place, whatever the weights add up to", () => {
    const random = seededRandom(31);
    const weights = Array.from({ length: 40 }, () => random() ** 4);
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const indices = weights.map((_, i) => i);
    for (const size of [10, 100, 1000]) {
      const chosen = resample(indices, weights, size, random);
      expect(chosen).toHaveLength(size);
      weights.forEach((weight, i) => {
        const count = chosen.filter((index) => index === i).length;
        expect(Math.abs(count - (size * weight) / total)).toBeLessThan(1);
      });
    }
  });

  it("ends with the last item where rounding lets the marks run past it", () => {
    expect(resample(["a", "b"], [1, 1], 2, () => 1.5)).toEqual(["b", "b"]);
  });
});

describe("kin", () => {
  it("are the particles of one character, in their order", () => {
    const particle = (character: number, name: string) => ({ character, name });
    const kin = byCharacter([particle(1, "a"), particle(EVEN, "b"), particle(1, "c"), particle(0, "d")]);
    expect(kin).toHaveLength(EVEN + 1);
    expect(kin.map((each) => each.map(({ name }) => name).join(""))).toEqual([
      "d",
      "ac",
      ...Array(EVEN - 2).fill(""),
      "b",
    ]);
  });
});

describe("a step along the difference of two others", () => {
  const u = Float64Array.of(0.5, 0.5);
  const a = Float64Array.of(0.6, 0.3);
  const b = Float64Array.of(0.5, 0.4);
  /** The step, with the random numbers that it asks for: which kind of step first, then a blur for each number. */
  const step = (
    from: Float64Array,
    others: number,
    random: () => number,
    normal = () => 0,
    [first, second] = [a, b],
  ) => {
    const into = new Float64Array(from.length);
    const size = along(from, first, second, others, into, random, normal);
    return { size, into };
  };

  it("is now and then the whole difference, with a blur of up to thirty-five ten-thousandths", () => {
    const { size, into } = step(u, 0, repeating(0.0999, 1, 0.25));
    expect(size).toBe(1);
    expect(into[0]).toBeCloseTo(0.6035, 12);
    expect(into[1]).toBeCloseTo(0.39825, 12);
  });

  it("is else a share of it that suits the number of dimensions, theirs and the others", () => {
    // ter Braak's 2.38 / √(2 d), times a lognormal number of which this is the one for a normal of 1: e^0.2.
    const { size, into } = step(u, 2, repeating(0.1, 0.5, 0.5), () => 1);
    const expected = (2.38 / Math.sqrt(8)) * Math.exp(0.2);
    expect(size).toBeCloseTo(expected, 12);
    expect(into[0]).toBeCloseTo(0.5 + expected * 0.1, 12);
    expect(into[1]).toBeCloseTo(0.5 - expected * 0.1, 12);
    const alone = step(u, 0, repeating(0.1, 0.5, 0.5), () => 1);
    expect(alone.size).toBeCloseTo((2.38 / 2) * Math.exp(0.2), 12);
  });

  it("leads nowhere outside the cube, on either side", () => {
    const unblurred = () => repeating(0, 0.5, 0.5);
    const up = (from: number) => step(Float64Array.of(from, 0.5), 0, unblurred()).size;
    expect(up(0.95)).toBeUndefined();
    expect(up(0.89)).toBe(1);
    const down = (from: number) => step(Float64Array.of(from, 0.5), 0, unblurred(), () => 0, [b, a]).size;
    expect(down(0.05)).toBeUndefined();
    expect(down(0.11)).toBe(1);
    // 0 belongs to the cube, and 1 does not.
    const still = (at: number) => step(Float64Array.of(at), 0, unblurred(), () => 0, [b, b]).size;
    expect(still(0)).toBe(1);
    expect(still(1)).toBeUndefined();
  });

  it("leaves the numbers it starts from as they are", () => {
    step(u, 0, repeating(0, 1, 1));
    expect([...u]).toEqual([0.5, 0.5]);
  });
});
