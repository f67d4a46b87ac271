import { scatterGrid } from "../profile/noise.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check } from "./check.ts";
import { lowStations } from "./lowStations.ts";
import { misfit } from "./misfit.ts";
import { wobbleHeight } from "./wobble.ts";

/**
 * Stations that differ by more than repeats and wear explain, if there is neither a wobble nor a misfit. Evidence that
 * raises the odds k-fold misleads in at most one survey of k (Royall, Statistical Evidence, 1997, section 1.4: the
 * universal bound). High stations alone may be worn places that the profile does not reach, so one station must also lie
 * below its neighbours.
 */
export const stationEffect: Check = (input) => {
  const { corrected, stationEffect, lengths } = input;
  const { chance, deviation } = stationEffect;
  const before = priorChance(corrected.resolution.step);
  const odds = (share: number): number => share / (1 - share);
  if (!isSignificant(odds(before) / odds(chance)) || lowStations(input).length === 0) return [];
  if (wobbleHeight(input) !== undefined || misfit(input).length > 0) return [];
  return [
    {
      check: "stations differ by more than repeats do",
      severity: "warning",
      message: `Neighbouring stations differ by more than repeats there do, by about ${lengths.lostMotion(2 * deviation)}: a slide that yaws, a thread that was never even, or a station that was misread. Read neighbouring stations again, and places between them.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};

/** Prior chance of a station effect. */
function priorChance(resolution: number): number {
  return scatterGrid({ resolution })
    .filter(({ tau }) => tau > 0)
    .reduce((sum, { logPrior }) => sum + Math.exp(logPrior), 0);
}
