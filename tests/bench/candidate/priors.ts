/**
 * Every prior of the model in one place, each with its unit and why (METHOD.md beside this file, section 3). Lengths
 * that scale with the slide are shares of its travel; all others are millimetres.
 */

/**
 * Repeatability σ, one standard deviation of a single reading without rounding: lognormal. Its middle is a share of
 * the graduation, since a coarser indicator is read on a coarser stand, but not below what hands and stand bring.
 */
export const REPEATABILITY = { shareOfGraduation: 0.4, leastGraduation: 0.01, logDeviation: 0.5 } as const;

/**
 * What a station adds that repeats there do not show, such as a wobble of the screw once per turn: none in most
 * surveys, else a few micrometres, mm.
 */
export const STATION_EFFECTS = [
  { tau: 0, chance: 0.88 },
  { tau: 0.003, chance: 0.07 },
  { tau: 0.009, chance: 0.05 },
] as const;

/**
 * Deepest wear that the nut meets above the level, mm: half-normals of these scales, all of the same weight. Together
 * they have the tail of a half-Cauchy: wear of a hundredth is as usual as wear of some tenths.
 */
export const DEPTH_SCALES: readonly number[] = [0.03, 0.1, 0.3];

/** A nut is as stiff as its whole length in this share of cases, and gives by an unknown amount in the others. */
export const STIFF_NUT = 0.9;

/**
 * What no wear shape says: a Matérn process of smoothness 3/2 on top of the shape. Amplitudes in mm, with none the
 * likeliest; lengths as multiples of the nut's engaged length, since the nut smooths all that is shorter.
 */
export const DISCREPANCY = {
  none: 0.5,
  amplitudes: [0.002, 0.006, 0.02],
  lengths: [0.6, 1.3, 3],
  coarsest: 0.003,
} as const;

/** Profiles that differ by less along the travel, in millimetres, are the same everywhere to any indicator. */
export const LEAST_UNEVEN = 0.001;

/**
 * End float, mm: a thrust bearing under preload has none at all, and any other may have as much as nobody has yet put
 * right, every amount up to the span as likely as another. Readings may show more than the span.
 */
export const END_FLOAT = { chanceOfNone: 0.15, span: 0.1 } as const;
