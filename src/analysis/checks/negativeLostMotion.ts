import type { LostMotion } from "../correct/corrections.ts";
import { tailProbability } from "../correct/repeatability.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type Check, nameOf, placesOf, type Surveyed } from "./check.ts";

/** Readings further below nothing than normal scatter about it brings any of so many, at the rate of `isTooRare`. */
export function isNegative({ corrected, scatter }: Surveyed): readonly LostMotion[] {
  const { readings } = corrected;
  return readings.filter(
    ({ value }) => value < 0 && isSignificant(tailProbability(-value, scatter), readings.length),
  );
}

/** Lost motion below nothing by more than noise: two readings were swapped, an approach was too short, or the sign is. */
export const negativeLostMotion: Check = (surveyed) => {
  const { corrected, lengths } = surveyed;
  const below = isNegative(surveyed);
  if (below.length === 0) return [];
  // What most readings have is the sign that their reader gave them.
  const reversed = below.length > corrected.readings.length / 2;
  const [first] = below;
  const which =
    below.length === 1
      ? `${nameOf(first, lengths)} comes out as ${lengths.lostMotion(first.value)}, below nothing`
      : `${below.length} readings come out below nothing (${placesOf(below, lengths)})`;
  return [
    {
      check: "negative lost motion",
      severity: reversed ? "stop" : "warning",
      message: reversed
        ? `${which}: the signs look reversed. Enter lost motion without its sign.`
        : `${which}: advancing and retracting were swapped, or an approach was shorter than the lost motion. Take ${below.length === 1 ? "it" : "them"} again.`,
      readings: below.flatMap((reading) => reading.from),
    },
  ];
};
