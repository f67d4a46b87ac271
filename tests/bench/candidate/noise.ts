import type { ProfileData } from "./draws.ts";
import { REPEATABILITY, STATION_EFFECTS } from "./priors.ts";

/** Repeatability and station effect, to be weighed against others, with the logarithm of the prior probability. */
export interface Scatter {
  readonly sigma: number;
  readonly tau: number;
  readonly logPrior: number;
}

/** Steps of the grid in repeatability, and how many deviations of its logarithm it reaches to either side. */
export const SIGMAS = 9;
const REACH = 2.4;

/** The grid of scatter: neighbours in repeatability are one apart, neighbours in station effect `SIGMAS` apart. */
export function scatterGrid({ resolution }: Pick<ProfileData, "resolution">): readonly Scatter[] {
  const { shareOfGraduation, leastGraduation, logDeviation } = REPEATABILITY;
  const usual = shareOfGraduation * Math.max(resolution, leastGraduation);
  const offsets = Array.from({ length: SIGMAS }, (_, i) => REACH * ((2 * i) / (SIGMAS - 1) - 1));
  const weights = offsets.map((offset) => -0.5 * offset ** 2);
  const total = Math.log(weights.reduce((sum, weight) => sum + Math.exp(weight), 0));
  return STATION_EFFECTS.flatMap(({ tau, chance }) =>
    offsets.map((offset, i) => ({
      sigma: usual * Math.exp(logDeviation * offset),
      tau,
      logPrior: Math.log(chance) + weights[i] - total,
    })),
  );
}
