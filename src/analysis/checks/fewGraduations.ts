import type { Check } from "./check.ts";

/** All readings on one or two graduations: the indicator is too coarse to show how they differ. */
export const fewGraduations: Check = ({ corrected, lengths }) => {
  const { readings, resolution } = corrected;
  const marks = new Set(readings.map((reading) => Math.round(reading.value / resolution.step)));
  if (readings.length < 4 || marks.size > 2) return [];
  return [
    {
      check: "one or two graduations",
      severity: "note",
      message: `All readings lie on ${marks.size === 1 ? "one graduation" : "two graduations"} of ${lengths.lostMotion(resolution.step)}. An indicator with finer graduations would show whether lost motion is the same everywhere.`,
      readings: readings.flatMap((reading) => reading.from),
    },
  ];
};
