import type { Interval } from "../../../analysis/decide/settings.ts";
import { keyedTo, placedOn, wayBetween } from "../screw/nutPosition.ts";

/** A pointer so near a station, in pixels, reads the station off. */
const NEAR = 8;

/**
 * Where a key brings the place that is read off: arrows a little along what is shown, Page Up and Page Down from station
 * to station, Home and End to the ends of the travel; null for a key that does not.
 *
 * @param stations in order of position, in the reader's unit
 */
export function readTo(
  key: string,
  at: number,
  shown: Interval,
  whole: Interval,
  stations: readonly number[],
): number | null {
  if (key === "PageUp") return stations.find((station) => station > at) ?? at;
  if (key === "PageDown") return stations.findLast((station) => station < at) ?? at;
  const { step } = wayBetween(shown.from, shown.to);
  return keyedTo(key, at, { ...whole, step });
}

/** What a pointer reads off: the station that it is close to, else a round place where it is. */
export function readAt(
  position: number,
  shown: Interval,
  stations: readonly number[],
  pixelsApart: (one: number, other: number) => number,
): number {
  const near = stations.filter((station) => pixelsApart(station, position) <= NEAR);
  const [nearest] = near.sort((a, b) => Math.abs(a - position) - Math.abs(b - position));
  return nearest ?? placedOn({ ...shown, step: wayBetween(shown.from, shown.to).step }, position);
}
