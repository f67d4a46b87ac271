import type { LostMotion } from "../correct/corrections.ts";
import { tailProbability } from "../correct/repeatability.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type Check, type CheckInput, nameOf, placesOf } from "./check.ts";

/** Readings that are negative by more than scatter explains (one look per reading). */
export function negativeReadings({ corrected, scatter }: CheckInput): readonly LostMotion[] {
  const { readings } = corrected;
  return readings.filter(
    ({ value }) => value < 0 && isSignificant(tailProbability(-value, scatter), readings.length),
  );
}

/** Negative lost motion: two readings were swapped, an approach was too short, or the sign is wrong. */
export const negativeLostMotion: Check = (input) => {
  const { corrected, lengths } = input;
  const negative = negativeReadings(input);
  if (negative.length === 0) return [];
  // If most readings are negative, the person entered them with the other sign.
  const reversed = negative.length > corrected.readings.length / 2;
  const [first] = negative;
  const which =
    negative.length === 1
      ? `${nameOf(first, lengths)} comes out as ${lengths.lostMotion(first.value)}, which is negative`
      : `${negative.length} readings come out negative (${placesOf(negative, lengths)})`;
  return [
    {
      check: "negative lost motion",
      severity: reversed ? "stop" : "warning",
      message: reversed
        ? `${which}: the signs look reversed. Enter lost motion without its sign.`
        : `${which}: advancing and retracting were swapped, or an approach was shorter than the lost motion. Take ${negative.length === 1 ? "it" : "them"} again.`,
      readings: negative.flatMap((reading) => reading.from),
    },
  ];
};
