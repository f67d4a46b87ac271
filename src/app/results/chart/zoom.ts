import type { Interval } from "../../../analysis/decide/settings.ts";

/** The least that is shown, as a share of the whole. */
const LEAST_SHARE = 1 / 50;

/**
 * What is shown of the whole once it is drawn so many times as large as before, what is at a place staying where it is;
 * null where that is the whole.
 */
export function zoomed(shown: Interval, whole: Interval, factor: number, about: number): Interval | null {
  const span = Math.max(lengthOf(shown) / factor, lengthOf(whole) * LEAST_SHARE);
  if (span >= lengthOf(whole)) return null;
  const share = (about - shown.from) / lengthOf(shown);
  return within(about - share * span, span, whole);
}

/** The stretch from one place to another as it can be shown: in order, within the whole, and no shorter than can be. */
export function between(one: number, other: number, whole: Interval): Interval | null {
  const span = Math.max(Math.abs(one - other), lengthOf(whole) * LEAST_SHARE);
  if (span >= lengthOf(whole)) return null;
  return within((one + other - span) / 2, span, whole);
}

/** What is shown, moved along by a share of itself. */
export function moved(shown: Interval, whole: Interval, share: number): Interval {
  return within(shown.from + share * lengthOf(shown), lengthOf(shown), whole);
}

/** What is shown, moved no farther than it takes for a place to be seen. */
export function showing(shown: Interval, whole: Interval, at: number): Interval {
  if (at < shown.from) return within(at, lengthOf(shown), whole);
  return at > shown.to ? within(at - lengthOf(shown), lengthOf(shown), whole) : shown;
}

function within(from: number, span: number, whole: Interval): Interval {
  const start = Math.min(Math.max(from, whole.from), whole.to - span);
  return { from: start, to: start + span };
}

function lengthOf({ from, to }: Interval): number {
  return to - from;
}
