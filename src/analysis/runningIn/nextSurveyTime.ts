import type { RunningIn } from "./runningIn.ts";

/** It is time to look again once the limit may have been reached with this chance. */
const CHANCE = 0.05;
/** However far off the limit is: after as long again as the trend was watched. */
const LATEST = 2;

/**
 * When to survey again: at once where the limit may have been reached by the last survey; when the chance of that has
 * come to 5 %; or else after as long again as the trend was watched.
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
