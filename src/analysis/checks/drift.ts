import type { Finding } from "../assessment.ts";
import { repeatabilityPosterior, tailProbability } from "../correct/repeatability.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { combined, driftRegression } from "../statistics/driftRegression.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check, CheckInput } from "./check.ts";

/** Readings that drift with the order they were taken in, and a first station that was not read again at the end. */
export const drift: Check = (input) => [...driftFinding(input), ...firstStationFinding(input)];

/**
 * Drift: a slope of repeats against their order, by least squares, that amounts to more than one graduation and is
 * significant against normal scatter (two-sided; rate as in `isSignificant`).
 */
function driftFinding({ corrected, clean, lengths }: CheckInput): readonly Finding[] {
  const { slope, spread, residuals } = driftRegression(corrected.readings, clean);
  const total = slope * (corrected.readings.length - 1);
  if (Math.abs(total) <= corrected.resolution.step) return [];
  // Least squares: a slope's standard error is the scatter divided by the root of the orders' sum of squares.
  const { squares, freedom } = combined(residuals);
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

function firstStationFinding({ corrected: { readings } }: CheckInput): readonly Finding[] {
  const first = readings[0];
  // Readings are in the order of the first reading of a pair; the second of a positioning pair comes a whole run later.
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
