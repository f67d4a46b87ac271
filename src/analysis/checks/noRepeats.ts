import type { Check } from "./check.ts";

/** No station read twice: the repeatability must be guessed. */
export const noRepeats: Check = ({ corrected, stations }) => {
  if (stations.some((station) => station.readings.length > 1)) return [];
  return [
    {
      check: "no repeats",
      severity: "warning",
      message:
        "No station was read twice, so how well readings repeat is guessed from the indicator. Read every station, or at least three, again on the way back.",
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};
