import { type PooledSquares, roundingVariance } from "../correct/repeatability.ts";
import { combined, driftRegression } from "../statistics/driftRegression.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { fDistributionTail } from "../statistics/fDistribution.ts";
import type { Check } from "./check.ts";

/**
 * Repeats that agree at one end of the travel and scatter at the other: a loose gib. The test of Goldfeld and Quandt (J.
 * Amer. Statist. Assoc. 60, 1965) compares the variances of the first and the last third of the stations by Fisher's F.
 * A drift, which separates repeats taken far apart in time, is removed first. The variance of rounding is a lower bound
 * for either end. One look at either end.
 */
export const growingScatter: Check = ({ corrected, clean, lengths }) => {
  const repeated = clean.filter(({ readings }) => readings.length > 1);
  const third = Math.ceil(repeated.length / 3);
  if (repeated.length < 2) return [];
  const { residuals } = driftRegression(corrected.readings, repeated);
  const [first, last] = [combined(residuals.slice(0, third)), combined(residuals.slice(-third))];
  const rounding = roundingVariance(corrected);
  const growing = [chanceOfRatio(last, first, rounding), chanceOfRatio(first, last, rounding)].findIndex(
    (chance) => isSignificant(chance, 2),
  );
  if (growing < 0) return [];
  const end = repeated[growing === 0 ? repeated.length - 1 : 0].position;
  return [
    {
      check: "scatter grows along the travel",
      severity: "warning",
      message: `Repeats agree less the nearer they are to ${lengths.position(end)}: a gib that is loose there, or worn ways. Set the gib and read again.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};

/** Chance of so great a ratio of two variances if scatter is the same at both ends. */
function chanceOfRatio(greater: PooledSquares, less: PooledSquares, rounding: number): number {
  const lesser = Math.max(less.squares / less.freedom, rounding);
  return fDistributionTail(greater.squares / greater.freedom / lesser, greater.freedom, less.freedom);
}
