import { type Check, leastLostMotion } from "./check.ts";

/** Drive play that comes out larger than the lost motion it is part of, or that these readings do not carry. */
export const drivePlay: Check = ({ survey, corrected, stations, repeatability, lengths }) => {
  const stated = survey.drivePlay ?? 0;
  if (stated === 0) return [];
  if (!corrected.asPairs) {
    return [
      {
        check: "drive play not in these readings",
        severity: "note",
        message: `Drive play of ${lengths.lostMotion(stated)} is not part of push–pull readings and was left out of account.`,
        readings: [],
      },
    ];
  }
  const least = leastLostMotion(stations);
  if (least === undefined) return [];
  if (stated - least.mean <= 3 * repeatability + corrected.resolution.step) return [];
  return [
    {
      check: "drive play larger than lost motion",
      severity: "stop",
      message: `Drive play of ${lengths.lostMotion(stated)} is more than the whole lost motion of ${lengths.lostMotion(least.mean)} at ${lengths.position(least.position)}, of which it is a part. Measure both again.`,
      readings: least.readings.flatMap((reading) => reading.from),
    },
  ];
};
