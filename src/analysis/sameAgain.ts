import { mean } from "simple-statistics";
import type { Corrected } from "./corrected.ts";
import { erfc } from "./profile/evidence.ts";
import { roundingVariance, type Squares, scatterFrom } from "./scatter.ts";

/** Places between two graduations at which a true value may lie, one as likely as another. */
const PHASES = Array.from({ length: 16 }, (_, i) => (i + 0.5) / 16 - 0.5);
/** From so many graduations of scatter on, where a value lies between two of them no longer matters. */
const COARSE = 1.5;

/**
 * Chance that readings taken a second time all fall on the graduations that they fell on the first time. Readings at
 * one place share where the true value lies between two graduations, so that one of them alike makes the next more
 * likely to be.
 *
 * @param counts how many readings were taken a second time, place by place
 * @param shown what other readings show of the scatter
 */
export function chanceOfSame(counts: readonly number[], shown: Squares, corrected: Corrected): number {
  const { roundings, resolution } = corrected;
  const { deviations, weights } = scatterFrom(shown, corrected);
  const rounding = roundingVariance(corrected);
  return deviations.reduce((sum, deviation, i) => {
    // Of a pair, each reading has half the variance, and both must come out the same.
    const scatter = Math.sqrt((deviation ** 2 - rounding) / roundings) / resolution.step;
    const alike = PHASES.map((phase) => sameGraduation(phase, scatter));
    const all = counts.map((count) => mean(alike.map((chance) => chance ** count)) ** roundings);
    return sum + weights[i] * all.reduce((product, chance) => product * chance, 1);
  }, 0);
}

/** Chance that two readings fall on one graduation, by where the true value lies and by scatter, in graduations. */
function sameGraduation(phase: number, scatter: number): number {
  if (scatter > COARSE) return 1 / (2 * Math.sqrt(Math.PI) * scatter);
  const reach = Math.ceil(5 * scatter) + 1;
  const above = (edge: number): number => 0.5 * erfc((edge - phase) / (scatter * Math.SQRT2));
  let same = 0;
  for (let mark = -reach; mark <= reach; mark++) same += (above(mark - 0.5) - above(mark + 0.5)) ** 2;
  return same;
}
