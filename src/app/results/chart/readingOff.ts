import type { Interval } from "../../../analysis/decide/settings.ts";
import { roundTo } from "../../../inspection/units.ts";
import { heightAt } from "../../../picture/heightAt.ts";
import type { Point, ProfilePicture } from "../../../picture/profilePicture.ts";
import { keyMove, positionRange } from "../sliderRange.ts";

/** A place along the travel where the profile can be read off. */
export interface Stop {
  readonly x: number;
  readonly isStation?: boolean;
}

/** The positions of all readings, struck ones too, in order and in the reader's unit. */
export function stationsOf({ readings, struck }: ProfilePicture): readonly number[] {
  return [...new Set([...readings, ...struck].map(({ x }) => x))].sort((a, b) => a - b);
}

/** The stops on the profile: the ends of the x axis, the stations, and round positions in between. */
export function stopsAlong(picture: ProfilePicture): (Point & Stop)[] {
  const { from, to } = picture.xAxis;
  const { step } = positionRange(from, to);
  const first = Math.ceil(from / step);
  const round = Array.from({ length: Math.floor(to / step) - first + 1 }, (_, i) => (first + i) * step);
  const stations = new Set(stationsOf(picture));
  const all = new Set([from, ...round.map((x) => roundTo(x, 6)), ...stations, to]);
  return [...all]
    .filter((x) => x >= from && x <= to)
    .sort((a, b) => a - b)
    .map((x) => ({ x, y: heightAt(picture.median.points, x), isStation: stations.has(x) }));
}

/**
 * The index of the nearest stop, -1 if there is none.
 *
 * @param reach a station this near goes before other stops; in the unit of x
 */
export function nearestStop(stops: readonly Stop[], x: number, reach = 0): number {
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  stops.forEach((stop, index) => {
    const distance = Math.abs(stop.x - x);
    const rank = stop.isStation === true && distance <= reach ? distance - reach : distance;
    if (rank >= least) return;
    nearest = index;
    least = rank;
  });
  return nearest;
}

/**
 * Where a key moves the place that is read off: arrows a little along what is shown, Page Up and Page Down from station
 * to station, Home and End to the ends of the travel; null for any other key.
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
  const { step } = positionRange(shown.from, shown.to);
  return keyMove(key, at, { ...whole, step });
}
