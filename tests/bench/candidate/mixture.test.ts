import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "../../analysis/profile/data.ts";
import { drawParticles, weighShapes } from "./mixture.ts";
import { EVEN, type Posterior, posteriorOf } from "./posterior.ts";
import { EVEN_CHANCE, WEAR_SHAPES } from "./wearShapes.ts";

const DATA = sweeps([0, 75, 150, 225, 300].map((position) => [position, 0.2, 0.2] as const));

/** A posterior whose readings say the same of every wear, and less of an even profile by a stated amount. */
function told(even: number, seed = 5): Posterior {
  const posterior = posteriorOf(DATA, seededRandom(seed));
  return { ...posterior, evidence: { ...posterior.evidence, ofShape: () => -3, ofEven: () => -3 + even } };
}

describe("wear shapes that explain the readings alike", () => {
  it.each([0, -2])(
    "are weighed by their prior alone, and against an even profile by its evidence: %f",
    (even) => {
      const { weighed, convergence } = weighShapes(told(even), 500);
      expect(convergence).toBeCloseTo(0, 9);
      for (const { shape, log } of weighed) {
        const prior = shape === EVEN ? EVEN_CHANCE : WEAR_SHAPES[shape].weight;
        expect(log).toBeCloseTo(Math.log(prior) - 3 + (shape === EVEN ? even : 0), 9);
      }
      expect(weighed.map(({ shape }) => shape).sort((a, b) => a - b)).toEqual([
        ...WEAR_SHAPES.map((_, shape) => shape),
        EVEN,
      ]);
    },
  );

  it("are drawn as often", () => {
    const posterior = told(0);
    const particles = drawParticles(weighShapes(posterior, 500).weighed, 4000, posterior);
    [...WEAR_SHAPES.map(({ weight }) => weight), EVEN_CHANCE].forEach((chance, shape) => {
      const share = particles.filter((particle) => particle.shape === shape).length / 4000;
      expect(Math.abs(share - chance)).toBeLessThan(4 * Math.sqrt((chance * (1 - chance)) / 4000));
    });
  });
});

describe("wear shapes that the readings tell apart", () => {
  const truth = (position: number) => 0.1 + 0.2 * Math.exp(-0.5 * ((position - 150) / 40) ** 2);
  const data = sweeps(
    Array.from({ length: 21 }, (_, i) => {
      const value = Math.round(truth(15 * i) * 200) / 200;
      return [15 * i, value, value] as const;
    }),
    { resolution: 0.005 },
  );

  it("are drawn by the one that explains them, and the same for the same seed", () => {
    const run = () => {
      const posterior = posteriorOf(data, seededRandom(8));
      return drawParticles(weighShapes(posterior, 500).weighed, 500, posterior);
    };
    const particles = run();
    const ofTaper = particles.filter(({ shape }) => WEAR_SHAPES[shape]?.name === "taper");
    const ofBump = particles.filter(({ shape }) => WEAR_SHAPES[shape]?.name.includes("bump"));
    expect(ofTaper).toEqual([]);
    expect(particles.filter(({ shape }) => shape === EVEN)).toEqual([]);
    expect(ofBump.length).toBeGreaterThan(250);
    expect(run()).toEqual(particles);
  });
});
