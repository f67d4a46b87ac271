import { type Check, nameOf } from "./check.ts";

/** Lost motion below nothing by more than noise: the two readings were swapped, or an approach was too short. */
export const negativeLostMotion: Check = ({ corrected, repeatability, lengths }) =>
  corrected.readings
    .filter((reading) => reading.value < -3 * repeatability - corrected.resolution.step / 2)
    .map((reading) => ({
      check: "negative lost motion",
      severity: "warning" as const,
      message: `${nameOf(reading, lengths)} comes out as ${lengths.lostMotion(reading.value)}, below nothing: advancing and retracting were swapped, or an approach was shorter than the lost motion. Take it again.`,
      readings: reading.from,
    }));
