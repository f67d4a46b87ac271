/** Differences below this, in millimetres, are the traces of binary fractions and of averages, not graduations. */
const LEAST_STEP = 1e-4;

/**
 * The graduation that readings were rounded to, found from the readings themselves: the greatest step of which every
 * reading is a whole multiple. It is never more than the smallest step between different readings, and it does not
 * mistake two readings that happen to be ten graduations apart for the graduation.
 *
 * @param values readings in one unit, from the instrument's zero
 * @returns the step in the same unit, or undefined where every reading is zero or there is none
 */
export function graduationOf(values: readonly number[]): number | undefined {
  let step = 0;
  for (const value of values) step = greatestCommonStep(step, Math.abs(value));
  return step === 0 ? undefined : Math.max(step, LEAST_STEP);
}

/** Euclid's algorithm, with remainders that are nearly nothing, or nearly the whole step, taken for nothing. */
function greatestCommonStep(a: number, b: number): number {
  let greater = Math.max(a, b);
  let less = Math.min(a, b);
  while (less >= LEAST_STEP / 2) {
    const rest = Math.abs(greater - less * Math.round(greater / less));
    greater = less;
    less = rest;
  }
  return greater;
}
