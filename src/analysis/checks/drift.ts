import type { Finding } from "../assessment.ts";
import { repeatabilityPosterior, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { driftRegression, together } from "../statistics/driftRegression.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check, Surveyed } from "./check.ts";

/** Readings that wander with the order they were taken in, and whether the first station was read again at the end. */
export const drift: Check = (surveyed) => [...wandering(surveyed), ...notReadAgain(surveyed)];

/**
 * A slope in repeats against their order, by least squares, that a graduation could show and that is too far from
 * nothing for normal scatter about it, either way, but in the share of clean surveys that `isTooRare` states.
 */
function wandering({ corrected, clean, lengths }: Surveyed): readonly Finding[] {
  const { slope, spread, left } = driftRegression(corrected.readings, clean);
  const total = slope * (corrected.readings.length - 1);
  if (Math.abs(total) <= corrected.resolution.step) return [];
  // A slope's standard error is the scatter over the root of the orders' sum of squares (least squares).
  const { squares, freedom } = together(left);
  const scatter = repeatabilityPosterior({ squares, freedom: freedom - 1 }, corrected);
  if (!isSignificant(2 * tailProbability(Math.abs(slope) * Math.sqrt(spread), scatter))) return [];
  return [
    {
      check: "drift",
      severity: "warning",
      message: `Readings of the same stations ${slope > 0 ? "rise" : "fall"} by ${lengths.lostMotion(Math.abs(total))} from the first reading to the last: the indicator's stand creeps, or a dial slips. Tighten both and read again.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
}

function notReadAgain({ corrected: { readings } }: Surveyed): readonly Finding[] {
  const first = readings[0];
  // The two readings of a positioning pair lie a whole run apart; readings are in order of the first of them.
  const last = [...readings].sort((a, b) => Math.max(...a.from) - Math.max(...b.from)).at(-1);
  if (first === undefined || last === undefined) return [];
  if (Math.abs(first.position - last.position) <= SAME_PLACE) return [];
  return [
    {
      check: "first station not read again",
      severity: "note",
      message:
        "The first station was not read again at the end, which would show an indicator that had crept.",
      readings: first.from,
    },
  ];
}
