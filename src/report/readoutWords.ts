import type { Assessment } from "../analysis/assessment.ts";
import type { LostMotion } from "../analysis/correct/corrections.ts";
import { SAME_PLACE } from "../analysis/correct/samePlace.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { placeAt } from "../picture/screw/nutPlace.ts";
import { allOf, estimateWords } from "./words.ts";

/**
 * What a profile shows at a place, in sentences: lost motion with its interval, what adjusting would leave, what was
 * read there, and the wear of the screw there.
 *
 * @param position of the slide, in millimetres
 */
export function readoutWords(assessment: Assessment, position: number, lengths: Lengths): readonly string[] {
  const { stations, struck, wornZones, settings } = assessment;
  const place = placeAt(assessment, position, lengths);
  const isHere = (at: { readonly position: number }): boolean =>
    Math.abs(at.position - position) <= SAME_PLACE;
  const readings = stations.filter(isHere).flatMap((station) => station.readings);
  const struckHere = struck.filter(isHere);
  const worn = wornZones.find(({ from, to }) => position >= from && position <= to);
  const repair = settings.adjustable ? "adjusting" : "new nuts";
  return [
    `Lost motion ${estimateWords(place.lostMotion, lengths)}.`,
    ...(lengths.figure(place.left) === lengths.figure(place.lostMotion.value)
      ? []
      : [`About ${lengths.lostMotion(place.left)} left after ${repair}.`]),
    ...(readings.length === 0 ? [] : [`Read here: ${figures(readings, lengths)}.`]),
    ...(struckHere.length === 0 ? [] : [`Struck: ${figures(struckHere, lengths)}.`]),
    ...(worn === undefined ? [] : [`Screw worn by at least ${lengths.lostMotion(worn.atLeast)} here.`]),
  ];
}

/** `0.27 and 0.28 mm`, in the order in which they were read. */
export function figures(readings: readonly LostMotion[], lengths: Lengths): string {
  return `${allOf(readings.map(({ value }) => lengths.figure(value)))} ${lengths.units}`;
}
