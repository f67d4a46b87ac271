import type { ProfileData } from "./draws.ts";

/**
 * What is known of the readings' scatter before they are looked at: repeatability is a share of the graduation, or
 * of the play of hands and stand where the graduation is finer than that.
 */
const SHARE_OF_GRADUATION = 0.33;
const LEAST_GRADUATION = 0.008;
const LOG_DEVIATION = 0.5;
const SIGMAS = 9;
const REACH = 2.4;

/**
 * What a station adds that repeats there do not show, such as a wobble of the screw once per turn, in millimetres,
 * with its prior chance.
 */
const STATION_EFFECTS = [
  { tau: 0, chance: 0.88 },
  { tau: 0.003, chance: 0.07 },
  { tau: 0.009, chance: 0.05 },
];

/** Repeatability and station effect, to be weighed against others, with the logarithm of the prior probability. */
export interface Scatter {
  readonly sigma: number;
  readonly tau: number;
  readonly logPrior: number;
}

/** The grid of scatter: neighbours in repeatability are one apart, neighbours in station effect `SIGMAS` apart. */
export function scatterGrid({ resolution }: Pick<ProfileData, "resolution">): readonly Scatter[] {
  const usual = SHARE_OF_GRADUATION * Math.max(resolution, LEAST_GRADUATION);
  const offsets = Array.from({ length: SIGMAS }, (_, i) => REACH * ((2 * i) / (SIGMAS - 1) - 1));
  const weights = offsets.map((offset) => -0.5 * offset ** 2);
  const total = Math.log(weights.reduce((sum, weight) => sum + Math.exp(weight), 0));
  return STATION_EFFECTS.flatMap(({ tau, chance }) =>
    offsets.map((offset, i) => ({
      sigma: usual * Math.exp(LOG_DEVIATION * offset),
      tau,
      logPrior: Math.log(chance) + weights[i] - total,
    })),
  );
}

/** Steps to a neighbouring scatter: in repeatability either way, or in station effect either way. */
export const SCATTER_STEPS = [1, -1, SIGMAS, -SIGMAS];
