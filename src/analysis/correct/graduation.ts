/** Differences below this, in millimetres, are the traces of averages, not graduations. */
const LEAST_STEP = 1e-4;
/** Readings are counted in so many parts of their unit, so that binary fractions leave no traces that would grow. */
const PARTS = 1e9;

/**
 * The graduation that readings were rounded to, found from the readings themselves: the greatest step of which every
 * reading is a whole multiple. It is never more than the smallest step between different readings, and it does not
 * mistake two readings that happen to be ten graduations apart for the graduation.
 *
 * @param values readings in one unit, from the instrument's zero
 * @returns the step in the same unit, or undefined where the readings do not differ, and so show none
 */
export function graduationOf(values: readonly number[]): number | undefined {
  const sizes = new Set(values.map((value) => Math.round(Math.abs(value) * PARTS)));
  if (sizes.size < 2) return undefined;
  const step = [...sizes].reduce(greatestCommonStep);
  return Math.max(step / PARTS, LEAST_STEP);
}

/** Euclid's algorithm, with remainders that are nearly nothing, or nearly the whole step, taken for nothing. */
function greatestCommonStep(a: number, b: number): number {
  let greater = Math.max(a, b);
  let less = Math.min(a, b);
  while (less >= (LEAST_STEP * PARTS) / 2) {
    const rest = Math.abs(greater - less * Math.round(greater / less));
    greater = less;
    less = rest;
  }
  return greater;
}
