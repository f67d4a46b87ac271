import { mean, sumNthPowerDeviations } from "simple-statistics";
import {
  pooledSquares,
  repeatabilityPosterior,
  roundingVariance,
  tailProbability,
} from "../correct/repeatability.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import { type Check, leastLostMotion } from "./check.ts";

/**
 * End float that was not measured, or that exceeds the lost motion it is part of by more than scatter and rounding of
 * both explain (one-sided normal difference at the station with the least lost motion; one look per station).
 */
export const endFloat: Check = ({ survey, clean, corrected, lengths }) => {
  const measured = survey.endFloat;
  if (measured === undefined || measured.length === 0) {
    return [
      {
        check: "end float not measured",
        severity: "note",
        message:
          "End float was not measured, so the nut and the thrust bearing cannot be told apart. Put the indicator on the end of the screw and drive the slide a little each way.",
        readings: [],
      },
    ];
  }
  const least = leastLostMotion(clean);
  if (least === undefined) return [];
  const value = mean([...measured]);
  const { squares, freedom } = pooledSquares(clean);
  const scatter = repeatabilityPosterior(
    {
      squares: squares + sumNthPowerDeviations([...measured], 2),
      freedom: freedom + measured.length - 1,
    },
    corrected,
  );
  const times = 1 / measured.length + 1 / least.readings.length;
  const shared = roundingVariance(corrected) + roundingVariance({ ...corrected, roundings: 1 });
  if (!isSignificant(tailProbability(value - least.mean, scatter, times, shared), clean.length)) return [];
  return [
    {
      check: "end float larger than lost motion",
      severity: "stop",
      message: `End float of ${lengths.lostMotion(value)} is more than the whole lost motion of ${lengths.lostMotion(least.mean)} at ${lengths.position(least.position)}, of which it is a part. Measure the end float again, and that station.`,
      readings: least.readings.flatMap((reading) => reading.from),
    },
  ];
};
