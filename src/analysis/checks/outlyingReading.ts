import { type Check, expectedOf, nameOf } from "./check.ts";

/** Standard deviations beyond which one reading among fifty would stray once in more than ten thousand surveys. */
const FAR = 5;

/** A reading that does not agree with the other repeats at its station. */
export const outlyingReading: Check = ({ corrected, stations, repeatability, lengths }) =>
  stations
    .filter((station) => station.readings.length > 1)
    .flatMap((station) => station.readings)
    .flatMap((reading) => {
      const expected = expectedOf(reading, stations);
      const allowed = FAR * repeatability * Math.SQRT2 + corrected.resolution.step;
      if (expected === undefined || Math.abs(reading.value - expected) <= allowed) return [];
      return [
        {
          check: "outlying reading",
          severity: "warning" as const,
          message: `${nameOf(reading, lengths)} is ${lengths.lostMotion(reading.value)} where its repeats say ${lengths.lostMotion(expected)}. Take it again; strike it, with the reason, if it was a mistake.`,
          readings: reading.from,
        },
      ];
    });
