import type { LimitReached, RunningIn } from "./runningIn.ts";
import type { TrendDraw } from "./trend.ts";

/** A trend is extrapolated to this multiple of the time observed, and no further. */
export const HORIZON = 6;
const BISECTIONS = 40;

/**
 * When lost motion reaches the limit, draw by draw, in trend time: 1 if it has by the last survey, Infinity if it does
 * not within the horizon.
 *
 * @param uneven greatest lost motion minus the trend's uniform part, draw by draw, in millimetres
 * @param limit in millimetres
 */
export function reachingTimes(
  draws: readonly TrendDraw[],
  uneven: readonly number[],
  limit: number,
): readonly number[] {
  return draws.map(({ at }, i) => {
    const isOver = (time: number): boolean => at(time) + uneven[i] > limit;
    if (isOver(1)) return 1;
    if (!isOver(HORIZON)) return Number.POSITIVE_INFINITY;
    let [within, beyond] = [1, HORIZON];
    for (let step = 0; step < BISECTIONS; step++) {
      const middle = (within + beyond) / 2;
      if (isOver(middle)) beyond = middle;
      else within = middle;
    }
    return beyond;
  });
}

/** Interval and chances of those times; `timeOf` turns trend time into days or hours. */
export function limitReachedOf(
  reaching: readonly number[],
  timeOf: (trendTime: number) => number,
): LimitReached {
  const sorted = reaching.toSorted((a, b) => a - b);
  const quantile = (share: number): number | null => {
    const time = sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    return Number.isFinite(time) ? timeOf(time) : null;
  };
  const share = (isMet: (time: number) => boolean): number => reaching.filter(isMet).length / reaching.length;
  return {
    value: quantile(0.5),
    low: quantile(0.025),
    high: quantile(0.975),
    chanceAlready: share((time) => time <= 1),
    chanceByHorizon: share(Number.isFinite),
    horizon: timeOf(HORIZON),
  };
}

/** The next survey is due when the limit has been reached with this chance. */
const CHANCE = 0.05;
/** At the latest after as long again as the trend was observed. */
const LATEST = 2;

/**
 * When to survey again: now if the limit may have been reached by the last survey; when the chance of that reaches 5 %;
 * else after as long again as the trend was observed.
 */
export function nextSurveyTime(
  reaching: readonly number[],
  timeOf: (trendTime: number) => number,
): RunningIn["lookAgain"] {
  const sorted = reaching.toSorted((a, b) => a - b);
  const time = sorted[Math.floor(CHANCE * sorted.length)];
  if (time <= 1) return { at: timeOf(1), why: "now" };
  return time <= LATEST ? { at: timeOf(time), why: "limit" } : { at: timeOf(LATEST), why: "watched" };
}
