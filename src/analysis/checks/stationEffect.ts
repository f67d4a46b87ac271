import { scatterGrid } from "../profile/noise.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check } from "./check.ts";
import { lowStations } from "./lowStations.ts";
import { misfit } from "./misfit.ts";
import { wobbleOf } from "./wobble.ts";

/**
 * Stations that differ by more than their repeats and the wear of a screw explain, where that is neither a wobble once
 * per turn nor a station that no wear explains. Evidence that makes something so many times as likely as it was
 * thought beforehand (`isTooRare`) misleads at most once in as many surveys (Royall, Statistical Evidence, 1997,
 * section 1.4: the universal bound). High stations alone may be worn places that the profile does not reach, so one
 * must also lie below those beside it.
 */
export const stationEffect: Check = (surveyed) => {
  const { corrected, stationEffect, lengths } = surveyed;
  const { chance, deviation } = stationEffect;
  const before = chanceBefore(corrected.resolution.step);
  const odds = (share: number): number => share / (1 - share);
  if (!isSignificant(odds(before) / odds(chance)) || lowStations(surveyed).length === 0) return [];
  if (wobbleOf(surveyed) !== undefined || misfit(surveyed).length > 0) return [];
  return [
    {
      check: "stations differ by more than repeats do",
      severity: "warning",
      message: `Neighbouring stations differ by more than repeats there do, by about ${lengths.lostMotion(2 * deviation)}: a slide that yaws, a thread that was never even, or a station that was misread. Read neighbouring stations again, and places between them.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};

/** The chance, before any reading is looked at, that stations add something of their own. */
function chanceBefore(resolution: number): number {
  return scatterGrid({ resolution })
    .filter(({ tau }) => tau > 0)
    .reduce((sum, { logPrior }) => sum + Math.exp(logPrior), 0);
}
