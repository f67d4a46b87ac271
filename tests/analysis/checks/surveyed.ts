import type { Check, Surveyed } from "../../../src/analysis/checks/check.ts";
import { correct } from "../../../src/analysis/corrected.ts";
import { coverageOf } from "../../../src/analysis/coverage.ts";
import { stationsOf } from "../../../src/analysis/stations.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import type { Survey } from "../../../src/inspection/schema.ts";
import { pushPull, SETTINGS } from "../examples.ts";

/** Thirteen stations over 300 mm, read forth and back; the values differ by a graduation or two. */
export const CLEAN_PLACES = Array.from({ length: 13 }, (_, i) => 25 * i);
const values = CLEAN_PLACES.map((position, i): readonly [number, number] => [position, 0.2 + 0.01 * (i % 3)]);
export const CLEAN = pushPull([...values, ...values.toReversed()], { endFloat: [0.02, 0.02] });

/** What the checks see of a survey of the usual slide, by readings that repeat within 0.004 mm. */
export function surveyed(survey: Survey, part: Partial<Surveyed> = {}): Surveyed {
  const settings = part.settings ?? SETTINGS;
  const corrected = correct(survey, settings.lead);
  const stations = stationsOf(corrected.readings);
  return {
    survey,
    corrected,
    stations,
    settings,
    coverage: coverageOf(stations, settings),
    repeatability: 0.004,
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
  part: Partial<Surveyed> = {},
) {
  return check(surveyed(pushPull(readings), part));
}
