import type { Corrected, LostMotion } from "../correct/corrections.ts";
import type { PosteriorSample } from "../decide/samplePosterior.ts";
import type { Settings } from "../decide/settings.ts";
import { type RepeatScreening, screenRepeats } from "./repeatOutliers.ts";
import { screenSingleReadings } from "./singleReadingOutliers.ts";

/** The outliers of a survey, and what its other readings show. */
export interface OutlierScreening extends RepeatScreening {
  /** Readings of stations read once, to take again if they decide the verdict. */
  readonly toConfirm: readonly LostMotion[];
}

/**
 * Compares every reading with its repeats or, if its station was read once, with the other stations.
 *
 * @param sample the posterior sampled from some of the readings
 */
export function findOutliers(
  { stations, profile }: Pick<PosteriorSample, "stations" | "profile">,
  corrected: Corrected,
  settings: Pick<Settings, "travel">,
  sample: (readings: readonly LostMotion[]) => Pick<PosteriorSample, "profile">,
): OutlierScreening {
  const repeats = screenRepeats(stations, corrected);
  const profileOf = (readings: readonly LostMotion[]) => sample(readings).profile;
  const single = screenSingleReadings(profile, repeats.clean, corrected, settings, profileOf);
  const outliers = [...repeats.outliers, ...single.outliers];
  const isOutlier = new Set(outliers.map(({ reading }) => reading));
  return {
    outliers,
    scatter: repeats.scatter,
    clean: repeats.clean.filter(({ readings }) => !readings.some((reading) => isOutlier.has(reading))),
    toConfirm: single.toConfirm,
  };
}
