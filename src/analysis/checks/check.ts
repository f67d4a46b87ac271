import type { Lengths } from "../../inspection/lengths.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Finding } from "../assessment.ts";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import type { RepeatabilityPosterior } from "../correct/repeatability.ts";
import type { Station } from "../correct/stations.ts";
import type { Coverage } from "../decide/coverage.ts";
import type { StationFit } from "../decide/samplePosterior.ts";
import type { Settings } from "../decide/settings.ts";
import type { RepeatOutlier } from "../outliers/repeatOutliers.ts";

/** What a check may use; lengths in millimetres. */
export interface CheckInput extends StationFit {
  readonly survey: Survey;
  readonly corrected: Corrected;
  readonly stations: readonly Station[];
  readonly settings: Settings;
  readonly coverage: Coverage;
  /** Scatter of single readings, from their repeats. */
  readonly scatter: RepeatabilityPosterior;
  /** Readings that disagree with the others. */
  readonly outliers: readonly RepeatOutlier[];
  /** The stations without outliers. */
  readonly clean: readonly Station[];
  readonly lengths: Lengths;
}

/** A check returns findings, each with the readings concerned, the reason and what to do; none if all is well. */
export type Check = (input: CheckInput) => readonly Finding[];

/** `Reading 7 at 120 mm`: counted from 1, as on the page. */
export function nameOf(reading: LostMotion, lengths: Lengths): string {
  return `Reading ${reading.from[0] + 1} at ${lengths.position(reading.position)}`;
}

/** The positions of readings, at most four of them: `0 mm, 25 mm`. */
export function placesOf(readings: readonly LostMotion[], lengths: Lengths): string {
  const places = [...new Set(readings.map((reading) => lengths.position(reading.position)))];
  return `${places.slice(0, 4).join(", ")}${places.length > 4 ? " …" : ""}`;
}

/** The station with the least lost motion, negative ones left out: a check of their own reports them. */
export function leastLostMotion(stations: readonly Station[]): Station | undefined {
  const [least] = stations.filter(({ mean }) => mean >= 0).sort((a, b) => a.mean - b.mean);
  return least;
}
