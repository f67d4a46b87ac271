import { mean } from "simple-statistics";
import type { Corrected } from "../correct/corrections.ts";
import { type PooledSquares, repeatabilityPosterior, roundingVariance } from "../correct/repeatability.ts";
import { erfc } from "../profile/evidence.ts";

/** How far above a graduation a true value may lie, in graduations, each as likely as another and as so far below. */
const PHASES = Array.from({ length: 8 }, (_, i) => (i + 0.5) / 16);
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
export function chanceOfIdentical(
  counts: readonly number[],
  shown: PooledSquares,
  corrected: Corrected,
): number {
  const { roundings, resolution } = corrected;
  const { deviations, weights } = repeatabilityPosterior(shown, corrected);
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
  let aboveEdge = above(-reach - 0.5);
  for (let mark = -reach; mark <= reach; mark++) {
    const aboveNext = above(mark + 0.5);
    same += (aboveEdge - aboveNext) ** 2;
    aboveEdge = aboveNext;
  }
  return same;
}
