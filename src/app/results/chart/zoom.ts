import type { Interval } from "../../../analysis/decide/settings.ts";
import { exactAxis } from "../../../picture/axis.ts";
import type { ProfilePicture } from "../../../picture/profilePicture.ts";

/** The least that is shown, as a share of the whole. */
const LEAST_SHARE = 1 / 50;
const TICKS = 10;

/**
 * What is shown after zooming in by a factor while the position `about` stays where it is on the screen; null if that is
 * the whole.
 */
export function zoomed(shown: Interval, whole: Interval, factor: number, about: number): Interval | null {
  const span = Math.max(lengthOf(shown) / factor, lengthOf(whole) * LEAST_SHARE);
  if (span >= lengthOf(whole)) return null;
  const share = (about - shown.from) / lengthOf(shown);
  return within(about - share * span, span, whole);
}

/** The part between two positions: in order, within the whole, and not too short to be shown; null if it is the whole. */
export function between(one: number, other: number, whole: Interval): Interval | null {
  const span = Math.max(Math.abs(one - other), lengthOf(whole) * LEAST_SHARE);
  if (span >= lengthOf(whole)) return null;
  return within((one + other - span) / 2, span, whole);
}

/** What is shown, moved along by a share of itself. */
export function moved(shown: Interval, whole: Interval, share: number): Interval {
  return within(shown.from + share * lengthOf(shown), lengthOf(shown), whole);
}

/** What is shown, moved just far enough to include a position. */
export function showing(shown: Interval, whole: Interval, at: number): Interval {
  if (at < shown.from) return within(at, lengthOf(shown), whole);
  return at > shown.to ? within(at - lengthOf(shown), lengthOf(shown), whole) : shown;
}

/** The picture of a part of the travel: its axis and the marks on it. Lines go on beyond, to be clipped. */
export function partOf(picture: ProfilePicture, { from, to }: Interval): ProfilePicture {
  const { xAxis, spots, readings, struck, wornZones } = picture;
  if (from === xAxis.from && to === xAxis.to) return picture;
  const isShown = ({ x }: { readonly x: number }): boolean => x >= from && x <= to;
  return {
    ...picture,
    xAxis: exactAxis(xAxis.label, from, to, TICKS),
    spots: spots.filter(isShown),
    readings: readings.filter(isShown),
    struck: struck.filter(isShown),
    wornZones: wornZones
      .filter((zone) => zone.from < to && zone.to > from)
      .map((zone) => ({ ...zone, from: Math.max(zone.from, from), to: Math.min(zone.to, to) })),
  };
}

function within(from: number, span: number, whole: Interval): Interval {
  const start = Math.min(Math.max(from, whole.from), whole.to - span);
  return { from: start, to: start + span };
}

function lengthOf({ from, to }: Interval): number {
  return to - from;
}
