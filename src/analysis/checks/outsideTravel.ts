import type { Finding } from "../assessment.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { type Check, placesOf } from "./check.ts";

/**
 * Readings at positions outside the travel. If all are, the travel is wrong and there is no verdict. If some are, it is
 * a warning, which becomes a stop if they decide the verdict.
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
