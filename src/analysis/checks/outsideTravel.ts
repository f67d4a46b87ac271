import type { Finding } from "../assessment.ts";
import { SAME_PLACE } from "../samePlace.ts";
import type { Check } from "./check.ts";

/** Readings at positions that the slide is said not to reach. */
export const outsideTravel: Check = ({ corrected, settings, lengths }): readonly Finding[] => {
  const { from, to } = settings.travel;
  const outside = corrected.readings.filter(
    ({ position }) => position < from - SAME_PLACE || position > to + SAME_PLACE,
  );
  if (outside.length === 0) return [];
  const places = [...new Set(outside.map((reading) => lengths.position(reading.position)))];
  return [
    {
      check: "outside the travel",
      severity: "warning",
      message: `${outside.length === 1 ? "A reading lies" : `${outside.length} readings lie`} outside the travel from ${lengths.position(from)} to ${lengths.position(to)} (${places.slice(0, 4).join(", ")}${places.length > 4 ? " …" : ""}). Correct the position, or the travel.`,
      readings: outside.flatMap((reading) => reading.from),
    },
  ];
};
