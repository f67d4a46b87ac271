import { extent } from "simple-statistics";
import { LEAST_STATIONS } from "../../inspection/leastStations.ts";
import type { Check } from "./check.ts";

/**
 * All readings on one graduation or on two neighbouring ones: the indicator is too coarse to show differences. Fewer
 * readings than a verdict needs stations may be alike with any indicator.
 */
export const fewGraduations: Check = ({ corrected, lengths }) => {
  const { readings, resolution } = corrected;
  if (readings.length < LEAST_STATIONS) return [];
  const [least, greatest] = extent(readings.map(({ value }) => Math.round(value / resolution.step)));
  if (greatest - least > 1) return [];
  return [
    {
      check: "one or two graduations",
      severity: "note",
      message: `All readings lie on ${least === greatest ? "one graduation" : "two graduations"} of ${lengths.lostMotion(resolution.step)}. An indicator with finer graduations would show whether lost motion is the same everywhere.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
};
