import type { LimitReached } from "./runningIn.ts";
import type { TrendDraw } from "./trend.ts";

/** A trend is carried on for so many times as long as it was watched; further it tells nothing. */
export const HORIZON = 6;
const BISECTIONS = 40;

/**
 * When lost motion reaches the limit, draw by draw, in times of the trend: 1 where it has done so by the last survey,
 * Infinity where it does not within the horizon.
 *
 * @param above what lost motion at its greatest is above the trend, draw by draw
 */
export function reachingTimes(
  draws: readonly TrendDraw[],
  above: readonly number[],
  limit: number,
): readonly number[] {
  return draws.map(({ at }, i) => {
    const over = (time: number): boolean => at(time) + above[i] > limit;
    if (over(1)) return 1;
    if (!over(HORIZON)) return Number.POSITIVE_INFINITY;
    let [within, beyond] = [1, HORIZON];
    for (let step = 0; step < BISECTIONS; step++) {
      const middle = (within + beyond) / 2;
      if (over(middle)) beyond = middle;
      else within = middle;
    }
    return beyond;
  });
}

/** The interval and the chances of those times. */
export function limitReachedOf(
  reaching: readonly number[],
  timeOf: (trendTime: number) => number,
): LimitReached {
  const sorted = reaching.toSorted((a, b) => a - b);
  const quantile = (share: number): number | null => {
    const time = sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    return Number.isFinite(time) ? timeOf(time) : null;
  };
  const share = (held: (time: number) => boolean): number => reaching.filter(held).length / reaching.length;
  return {
    value: quantile(0.5),
    low: quantile(0.025),
    high: quantile(0.975),
    chanceAlready: share((time) => time <= 1),
    chanceByHorizon: share(Number.isFinite),
    horizon: timeOf(HORIZON),
  };
}
