/** False-positive rate of each statistical check, per survey; divided among all its looks (Bonferroni). */
export const FALSE_POSITIVE_RATE = 0.002;

/**
 * Whether a chance is too small to have come about in one of so many looks.
 *
 * @param chance chance of the finding if nothing is wrong
 * @param looks number of places at which the check looks
 */
export function isSignificant(chance: number, looks = 1): boolean {
  return chance * looks <= FALSE_POSITIVE_RATE;
}
