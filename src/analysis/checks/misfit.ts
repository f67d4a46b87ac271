import type { Lengths } from "../../inspection/lengths.ts";
import type { Finding } from "../assessment.ts";
import { roundingVariance, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import type { Station } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type Check, type CheckInput, placesOf } from "./check.ts";
import { lowStations } from "./lowStations.ts";
import { wobbleHeight } from "./wobble.ts";

/**
 * Readings that no wear of a screw explains. A stiff nut is stopped by the least worn thread it engages, so a low place
 * is at least as wide as the nut: no station lies below two others that are nearer to each other than that, except with
 * a wobble once per turn, which has a check of its own. Other stations must lie on the profile (two-sided normal
 * difference, one look per station).
 */
export const misfit: Check = (input) => {
  const { settings, lengths } = input;
  const low = wobbleHeight(input) === undefined ? lowStations(input) : [];
  const narrow = low.filter(({ span }) => span <= settings.engagedLength).map(({ station }) => station);
  const offProfile = stationsOffProfile(input).filter((station) => !narrow.includes(station));
  return [
    finding(
      narrow,
      (places) =>
        `No nut as long as this one meets so little lost motion at ${places}, with more of it on both sides`,
      lengths,
    ),
    finding(
      offProfile,
      (places) => `No wear of a screw that this program can draw passes through the readings at ${places}`,
      lengths,
    ),
  ].flat();
};

function finding(
  stations: readonly Station[],
  reason: (places: string) => string,
  lengths: Lengths,
): readonly Finding[] {
  if (stations.length === 0) return [];
  const readings = stations.flatMap((station) => station.readings);
  return [
    {
      check: "readings fit no worn screw",
      severity: "stop",
      message: `${reason(placesOf(readings, lengths))}. Read ${stations.length === 1 ? "this station" : "these stations"} again, and look at the sheet for figures that were swapped.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
}

/**
 * Stations whose mean lies farther from the profile than scatter, shared rounding and station effect explain. None if
 * there are outliers: the profile was fitted through them.
 */
function stationsOffProfile(input: CheckInput): readonly Station[] {
  const { corrected, stations, clean, outliers, scatter, fitted, stationEffect } = input;
  if (outliers.length > 0) return [];
  const shared = roundingVariance(corrected) + stationEffect.chance * stationEffect.deviation ** 2;
  return clean.filter(({ position, mean, readings }) => {
    const at = stations.findIndex((station) => Math.abs(station.position - position) <= SAME_PLACE);
    const chance = 2 * tailProbability(Math.abs(mean - fitted[at]), scatter, 1 / readings.length, shared);
    return isSignificant(chance, clean.length);
  });
}
