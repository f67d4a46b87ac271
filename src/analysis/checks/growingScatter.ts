import { sampleCorrelation } from "simple-statistics";
import type { Check } from "./check.ts";

const FEWEST = 8;
/** Fisher's z beyond this: once in about a thousand surveys with even scatter. */
const CLEAR = 3.3;

/** Repeats that agree at one end of the travel and scatter at the other: a loose gib. */
export const growingScatter: Check = ({ corrected, stations, lengths }) => {
  const repeated = stations.filter((station) => station.readings.length > 1);
  if (repeated.length < FEWEST) return [];
  const ranges = repeated.map((station) => {
    const values = station.readings.map((reading) => reading.value);
    return Math.max(...values) - Math.min(...values);
  });
  if (Math.max(...ranges) - Math.min(...ranges) <= corrected.resolution.step) return [];
  const places = repeated.map((station) => station.position);
  const r = sampleCorrelation(places, ranges);
  if (Math.abs(Math.atanh(r)) * Math.sqrt(repeated.length - 3) < CLEAR) return [];
  const end = r > 0 ? places[places.length - 1] : places[0];
  return [
    {
      check: "scatter grows along the travel",
      severity: "warning",
      message: `Repeats agree less the nearer they are to ${lengths.position(end)}: a gib that is loose there, or worn ways. Set the gib and read again.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};
