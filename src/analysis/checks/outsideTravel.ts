import type { Finding } from "../assessment.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { type Check, placesOf } from "./check.ts";

/**
 * Readings at positions that the slide is said not to reach; it is so or it is not, no chance enters. Where all are, the
 * travel is wrong, and there is no verdict; where some are, and the others lead to another verdict, the survey's
 * assessment makes a stop of it.
 */
export const outsideTravel: Check = ({ corrected, settings, lengths }): readonly Finding[] => {
  const { from, to } = settings.travel;
  const { readings } = corrected;
  const outside = readings.filter(
    ({ position }) => position < from - SAME_PLACE || position > to + SAME_PLACE,
  );
  if (outside.length === 0) return [];
  return [
    {
      check: "outside the travel",
      severity: outside.length === readings.length ? "stop" : "warning",
      message: `${outside.length === 1 ? "A reading lies" : `${outside.length} readings lie`} outside the travel from ${lengths.position(from)} to ${lengths.position(to)} (${placesOf(outside, lengths)}). Correct the position, or the travel.`,
      readings: outside.flatMap((reading) => reading.from),
    },
  ];
};
