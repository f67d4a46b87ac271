import { normals, type Random } from "../../../../src/analysis/statistics/random.ts";
import type { Flank } from "../../leastEngaged.ts";
import { between, logBetween } from "../../wear.ts";
import { type Kind, scaledTo } from "../kind.ts";

const WAVES = 200;

/**
 * A stationary Gaussian process with unit variance and covariance exp(−d² / 2l²), as a sum of waves of random length
 * and phase (Rahimi and Recht 2007).
 *
 * @param length l, mm
 */
export function gaussianProcess(random: Random, length: number): Flank {
  const normal = normals(random);
  const waves = Array.from({ length: WAVES }, () => ({
    frequency: normal() / length,
    phase: between(random, 0, 2 * Math.PI),
  }));
  const scale = Math.sqrt(2 / WAVES);
  return (place) =>
    waves.reduce((sum, { frequency, phase }) => sum + scale * Math.cos(frequency * place + phase), 0);
}

/** Smooth wear with no cause that is told: the logarithm of each flank's wear is a Gaussian process. */
export const smoothRandom: Kind = {
  name: "smooth random",
  wear: (random, screw) => {
    const length = logBetween(random, 0.06, 0.6) * screw.travel;
    const roughness = between(random, 0.3, 1.5);
    const shared = gaussianProcess(random, length);
    const alike = random();
    const flank = (): Flank => {
      const own = gaussianProcess(random, length);
      const curve = (place: number) =>
        Math.exp(roughness * (Math.sqrt(alike) * shared(place) + Math.sqrt(1 - alike) * own(place)));
      return scaledTo(logBetween(random, 0.01, 0.3), curve, screw);
    };
    return [flank(), flank()];
  },
};
