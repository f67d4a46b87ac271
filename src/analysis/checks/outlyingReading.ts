import { type Check, expectedOf, nameOf } from "./check.ts";

/** Standard deviations beyond which one reading among fifty would stray once in more than ten thousand surveys. */
const FAR = 5;

/** A reading that does not agree with the other repeats at its station; of two, neither can be told from the other. */
export const outlyingReading: Check = ({ corrected, stations, repeatability, lengths }) => {
  const allowed = FAR * repeatability * Math.SQRT2 + corrected.resolution.step;
  return stations.flatMap((station) => {
    const far = station.readings.filter((reading) => {
      const expected = expectedOf(reading, stations);
      return (
        station.readings.length > 1 && expected !== undefined && Math.abs(reading.value - expected) > allowed
      );
    });
    if (far.length === 0) return [];
    const [first] = far;
    const figures = far.map((reading) => lengths.lostMotion(reading.value)).join(" and ");
    const message =
      far.length === 1
        ? `${nameOf(first, lengths)} is ${figures} where its repeats say ${lengths.lostMotion(expectedOf(first, stations) ?? 0)}.`
        : `Readings ${far.map(({ from }) => from[0] + 1).join(" and ")} at ${lengths.position(station.position)} do not agree: ${figures}.`;
    return [
      {
        check: "outlying reading",
        severity: "warning" as const,
        message: `${message} Read this station again; strike, with the reason, what was a mistake.`,
        readings: far.flatMap((reading) => reading.from),
      },
    ];
  });
};
