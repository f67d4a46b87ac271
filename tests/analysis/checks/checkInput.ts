import type { Check, CheckInput } from "../../../src/analysis/checks/check.ts";
import { correct, type LostMotion } from "../../../src/analysis/correct/corrections.ts";
import type { RepeatabilityPosterior } from "../../../src/analysis/correct/repeatability.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { coverageOf } from "../../../src/analysis/decide/coverage.ts";
import { findOutliers } from "../../../src/analysis/outliers/findOutliers.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { straightLines } from "../../bench/straightLines.ts";
import { pushPull, SETTINGS } from "../examples.ts";

/** Thirteen stations over 300 mm, read forth and back; the values differ by a graduation or two. */
export const CLEAN_PLACES = Array.from({ length: 13 }, (_, i) => 25 * i);
const values = CLEAN_PLACES.map((position, i): readonly [number, number] => [position, 0.2 + 0.01 * (i % 3)]);
export const CLEAN = pushPull([...values, ...values.toReversed()], { endFloat: [0.02, 0.02] });

/** Scatter that is known to be this, rounding included. */
export const scattering = (deviation: number): RepeatabilityPosterior => ({
  deviations: [deviation],
  weights: [1],
});

/** What the checks see of a survey of the usual slide, through whose stations the profile is a line from mean to mean. */
export function surveyed(survey: Survey, part: Partial<CheckInput> = {}): CheckInput {
  const settings = part.settings ?? SETTINGS;
  const corrected = correct(survey, settings.lead);
  const stations = stationsOf(corrected.readings);
  const judged = (readings: readonly LostMotion[]) => ({
    profile: straightLines({
      ...settings,
      stations: stationsOf(readings),
      resolution: corrected.resolution.step,
      roundings: corrected.roundings,
    }),
  });
  const { profile } = judged(corrected.readings);
  return {
    ...findOutliers({ stations, profile }, corrected, settings, judged),
    survey,
    corrected,
    stations,
    settings,
    coverage: coverageOf(stations, settings),
    fitted: stations.map((station) => station.mean),
    stationEffect: { chance: 0, deviation: 0 },
    lengths: lengthsIn("mm", corrected.resolution.step),
    ...part,
  };
}

/** What a check finds in push–pull readings given as position and lost motion. */
export function found(
  check: Check,
  readings: readonly (readonly [position: number, backlash: number])[],
  part: Partial<CheckInput> = {},
) {
  return check(surveyed(pushPull(readings), part));
}
