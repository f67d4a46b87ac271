import type { Interval } from "../../../analysis/decide/settings.ts";
import { exactAxis } from "../../../picture/axis.ts";
import type { ProfilePicture } from "../../../picture/profilePicture.ts";

const TICKS = 10;

/** The picture of a part of the travel: with an axis and marks of its own; lines go on beyond, to be cut off. */
export function shownPart(picture: ProfilePicture, { from, to }: Interval): ProfilePicture {
  const { xAxis, spots, readings, struck, wornZones } = picture;
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
