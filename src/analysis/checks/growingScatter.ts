import { type PooledSquares, roundingVariance } from "../correct/repeatability.ts";
import { driftRegression, together } from "../statistics/driftRegression.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { fDistributionTail } from "../statistics/fDistribution.ts";
import type { Check } from "./check.ts";

/**
 * Repeats that agree at one end of the travel and scatter at the other: a loose gib. The scatter of the third of the
 * stations at either end is compared with that at the other by Fisher's exact test of two variances, those between
 * left out (Goldfeld and Quandt, J. Amer. Statist. Assoc. 60, 1965). A drift, which parts repeats far from each other
 * in time, is taken out first, and neither end is thought to scatter less than rounding alone brings. The rate of false
 * alarms is that of `isTooRare`, for one look at either end.
 */
export const growingScatter: Check = ({ corrected, clean, lengths }) => {
  const repeated = clean.filter(({ readings }) => readings.length > 1);
  const third = Math.ceil(repeated.length / 3);
  if (repeated.length < 2) return [];
  const { left } = driftRegression(corrected.readings, repeated);
  const [first, last] = [together(left.slice(0, third)), together(left.slice(-third))];
  const rounding = roundingVariance(corrected);
  const grows = [chanceOfMore(last, first, rounding), chanceOfMore(first, last, rounding)].findIndex(
    (chance) => isSignificant(chance, 2),
  );
  if (grows < 0) return [];
  const end = repeated[grows === 0 ? repeated.length - 1 : 0].position;
  return [
    {
      check: "scatter grows along the travel",
      severity: "warning",
      message: `Repeats agree less the nearer they are to ${lengths.position(end)}: a gib that is loose there, or worn ways. Set the gib and read again.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};

/** Chance that scatter at one end comes out so much more than at the other, where it is the same at both. */
function chanceOfMore(more: PooledSquares, less: PooledSquares, rounding: number): number {
  const quiet = Math.max(less.squares / less.freedom, rounding);
  return fDistributionTail(more.squares / more.freedom / quiet, more.freedom, less.freedom);
}
