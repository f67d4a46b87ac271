import type { Lengths } from "../../inspection/lengths.ts";
import type { Finding } from "../assessment.ts";
import { roundingVariance, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import type { Station } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type Check, placesOf, type Surveyed } from "./check.ts";
import { lowStations } from "./lowStations.ts";
import { wobbleOf } from "./wobble.ts";

/**
 * Readings that no wear of a screw explains: the numbers mean nothing then. A stiff nut is stopped by the least worn
 * thread it engages, so a low place is at least as wide as the nut, and no station lies below two others that are
 * nearer to each other than that; but for a wobble once per turn, which is told by itself. Elsewhere it is the
 * profile, however it is drawn, that does not reach a station: a normal difference, either way, at the rate that
 * `isTooRare` states for as many looks as there are stations.
 */
export const misfit: Check = (surveyed) => {
  const { settings, lengths } = surveyed;
  const low = wobbleOf(surveyed) === undefined ? lowStations(surveyed) : [];
  const narrow = low.filter(({ span }) => span <= settings.engagedLength).map(({ station }) => station);
  const off = offTheProfile(surveyed).filter((station) => !narrow.includes(station));
  return [
    finding(
      narrow,
      (places) =>
        `No nut as long as this one meets so little lost motion at ${places}, with more of it on both sides`,
      lengths,
    ),
    finding(
      off,
      (places) => `No wear of a screw that this program can draw passes through the readings at ${places}`,
      lengths,
    ),
  ].flat();
};

function finding(
  stations: readonly Station[],
  why: (places: string) => string,
  lengths: Lengths,
): readonly Finding[] {
  if (stations.length === 0) return [];
  const readings = stations.flatMap((station) => station.readings);
  return [
    {
      check: "readings fit no worn screw",
      severity: "stop",
      message: `${why(placesOf(readings, lengths))}. Read ${stations.length === 1 ? "this station" : "these stations"} again, and look at the sheet for figures that were swapped.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
}

/**
 * A mean may lie off the profile by scatter, by the rounding that repeats share, and by what stations add. Nothing is
 * told of a profile that was drawn through mistakes.
 */
function offTheProfile(surveyed: Surveyed): readonly Station[] {
  const { corrected, stations, clean, outliers, scatter, fitted, stationEffect } = surveyed;
  if (outliers.length > 0) return [];
  const shared = roundingVariance(corrected) + stationEffect.chance * stationEffect.deviation ** 2;
  return clean.filter(({ position, mean, readings }) => {
    const at = stations.findIndex((station) => Math.abs(station.position - position) <= SAME_PLACE);
    const chance = 2 * tailProbability(Math.abs(mean - fitted[at]), scatter, 1 / readings.length, shared);
    return isSignificant(chance, clean.length);
  });
}
