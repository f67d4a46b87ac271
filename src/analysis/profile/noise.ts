import type { ProfileData } from "./draws.ts";

/**
 * What is known of the readings' scatter before they are looked at: repeatability is a share of the graduation, or
 * of the play of hands and stand where the graduation is finer than that.
 */
const SHARE_OF_GRADUATION = 0.33;
const LEAST_GRADUATION = 0.008;
const LOG_DEVIATION = 0.5;
const GRID = 11;
const GRID_REACH = 2.5;

/** Repeatabilities to be weighed against each other, with the logarithm of each one's prior probability. */
export interface Scatter {
  readonly sigma: number;
  readonly logPrior: number;
}

export function scatterGrid({ resolution }: ProfileData): readonly Scatter[] {
  const usual = SHARE_OF_GRADUATION * Math.max(resolution, LEAST_GRADUATION);
  const offsets = Array.from({ length: GRID }, (_, i) => GRID_REACH * ((2 * i) / (GRID - 1) - 1));
  const weights = offsets.map((offset) => -0.5 * offset ** 2);
  const total = Math.log(weights.reduce((sum, weight) => sum + Math.exp(weight), 0));
  return offsets.map((offset, i) => ({
    sigma: usual * Math.exp(LOG_DEVIATION * offset),
    logPrior: weights[i] - total,
  }));
}
