/**
 * What is known of checks on readings: each check that weighs readings against their scatter speaks in so many of the
 * surveys in which nothing is wrong. The rate is shared out among all the places at which a check looks (Bonferroni).
 */
export const FALSE_POSITIVE_RATE = 0.002;

/** Whether a chance is too small for one of so many looks to have brought it about. */
export function isSignificant(chance: number, looks = 1): boolean {
  return chance * looks <= FALSE_POSITIVE_RATE;
}
