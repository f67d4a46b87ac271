import { isTooRare } from "../falseAlarms.ts";
import { SAME_PLACE } from "../samePlace.ts";
import { chanceOf, roundingVariance } from "../scatter.ts";
import { type Check, placesOf } from "./check.ts";

/**
 * Readings that no wear of a screw explains, however it is drawn through them: the numbers mean nothing then. A
 * station's mean may lie off the profile by scatter, by the rounding that its repeats share, and by what stations add.
 */
export const misfit: Check = ({ corrected, stations, sound, scatter, fitted, stationEffect, lengths }) => {
  const shared = roundingVariance(corrected) + stationEffect.chance * stationEffect.deviation ** 2;
  const far = sound.filter(({ position, mean, readings }) => {
    const at = stations.findIndex((station) => Math.abs(station.position - position) <= SAME_PLACE);
    const chance = 2 * chanceOf(Math.abs(mean - fitted[at]), scatter, 1 / readings.length, shared);
    return isTooRare(chance, sound.length);
  });
  if (far.length === 0) return [];
  const readings = far.flatMap((station) => station.readings);
  return [
    {
      check: "readings fit no worn screw",
      severity: "stop",
      message: `No wear of a screw passes through the readings at ${placesOf(readings, lengths)}. Read ${far.length === 1 ? "this station" : "these stations"} again, and look at the sheet for figures that were swapped.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
};
