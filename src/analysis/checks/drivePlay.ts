import { roundingVariance, tailProbability } from "../correct/repeatability.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type Check, leastLostMotion } from "./check.ts";

/**
 * Drive play that these readings do not carry, or that exceeds the lost motion it is part of by more than scatter and
 * rounding explain (one-sided normal difference at the station with the least lost motion; one look per station).
 */
export const drivePlay: Check = ({ survey, corrected, clean, scatter, lengths }) => {
  const stated = survey.drivePlay ?? 0;
  if (stated === 0) return [];
  if (!corrected.asPairs) {
    return [
      {
        check: "drive play not in these readings",
        severity: "note",
        message: `Drive play of ${lengths.lostMotion(stated)} is not part of push–pull readings and was left out of account.`,
        readings: [],
      },
    ];
  }
  const least = leastLostMotion(clean);
  if (least === undefined) return [];
  const times = 1 / least.readings.length;
  const chance = tailProbability(stated - least.mean, scatter, times, roundingVariance(corrected));
  if (!isSignificant(chance, clean.length)) return [];
  return [
    {
      check: "drive play larger than lost motion",
      severity: "stop",
      message: `Drive play of ${lengths.lostMotion(stated)} is more than the whole lost motion of ${lengths.lostMotion(least.mean)} at ${lengths.position(least.position)}, of which it is a part. Measure both again.`,
      readings: least.readings.flatMap((reading) => reading.from),
    },
  ];
};
