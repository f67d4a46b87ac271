import type { Lengths } from "../../inspection/lengths.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Finding } from "../assessment.ts";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import type { RepeatabilityPosterior } from "../correct/repeatability.ts";
import type { Station } from "../correct/stations.ts";
import type { Coverage } from "../decide/coverage.ts";
import type { Settings } from "../decide/settings.ts";
import type { RepeatOutlier } from "../outliers/repeatOutliers.ts";

/** What a check may look at; lengths in millimetres. */
export interface Surveyed {
  readonly survey: Survey;
  readonly corrected: Corrected;
  readonly stations: readonly Station[];
  readonly settings: Settings;
  readonly coverage: Coverage;
  /** How single readings scatter, by their repeats. */
  readonly scatter: RepeatabilityPosterior;
  /** Readings that do not agree with the others. */
  readonly outliers: readonly RepeatOutlier[];
  /** The stations without them. */
  readonly clean: readonly Station[];
  /** The median profile at each station. */
  readonly fitted: readonly number[];
  /** What stations add that repeats there do not show: the chance that there is such a thing, and its size. */
  readonly stationEffect: { readonly chance: number; readonly deviation: number };
  readonly lengths: Lengths;
}

/** A check names the readings it is about, says why, and what to do. It finds nothing, or one thing or more. */
export type Check = (surveyed: Surveyed) => readonly Finding[];

/** `Reading 7 at 120 mm`: readings are counted from 1 for the reader, as the file and the page show them. */
export function nameOf(reading: LostMotion, lengths: Lengths): string {
  return `Reading ${reading.from[0] + 1} at ${lengths.position(reading.position)}`;
}

/** The places of some readings, the first few by name. */
export function placesOf(readings: readonly LostMotion[], lengths: Lengths): string {
  const places = [...new Set(readings.map((reading) => lengths.position(reading.position)))];
  return `${places.slice(0, 4).join(", ")}${places.length > 4 ? " …" : ""}`;
}

/** The station with the least lost motion; those below nothing, which are told of by themselves, are passed over. */
export function leastLostMotion(stations: readonly Station[]): Station | undefined {
  const [least] = stations.filter(({ mean }) => mean >= 0).sort((a, b) => a.mean - b.mean);
  return least;
}
