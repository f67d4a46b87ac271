import type { Finding } from "../assessment.ts";
import { SAME_PLACE } from "../samePlace.ts";
import { type Check, placesOf } from "./check.ts";

/** Beyond this share of the readings, it is the travel that is wrong. */
const TOO_MANY = 0.25;

/** Readings at positions that the slide is said not to reach; many, or any over the limit, stop the verdict. */
export const outsideTravel: Check = ({ corrected, settings, lengths }): readonly Finding[] => {
  const { from, to } = settings.travel;
  const { readings } = corrected;
  const outside = readings.filter(
    ({ position }) => position < from - SAME_PLACE || position > to + SAME_PLACE,
  );
  if (outside.length === 0) return [];
  const matters =
    outside.length > TOO_MANY * readings.length || outside.some(({ value }) => value > settings.limit);
  return [
    {
      check: "outside the travel",
      severity: matters ? "stop" : "warning",
      message: `${outside.length === 1 ? "A reading lies" : `${outside.length} readings lie`} outside the travel from ${lengths.position(from)} to ${lengths.position(to)} (${placesOf(outside, lengths)}). Correct the position, or the travel.`,
      readings: outside.flatMap((reading) => reading.from),
    },
  ];
};
