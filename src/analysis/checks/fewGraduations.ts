import { LEAST_STATIONS } from "../../inspection/leastStations.ts";
import type { Check } from "./check.ts";

/**
 * All readings on one graduation, or on two that are neighbours: the indicator is too coarse to show how they differ.
 * Fewer readings than a verdict takes stations may be alike with any indicator. It is so or it is not: no
 * chance enters.
 */
export const fewGraduations: Check = ({ corrected, lengths }) => {
  const { readings, resolution } = corrected;
  const marks = readings.map((reading) => Math.round(reading.value / resolution.step));
  const range =
    marks.reduce((most, mark) => Math.max(most, mark), Number.NEGATIVE_INFINITY) -
    marks.reduce((least, mark) => Math.min(least, mark), Number.POSITIVE_INFINITY);
  if (readings.length < LEAST_STATIONS || range > 1) return [];
  return [
    {
      check: "one or two graduations",
      severity: "note",
      message: `All readings lie on ${range === 0 ? "one graduation" : "two graduations"} of ${lengths.lostMotion(resolution.step)}. An indicator with finer graduations would show whether lost motion is the same everywhere.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
};
