import { mean } from "simple-statistics";
import { type Check, leastLostMotion } from "./check.ts";

/** End float that was not measured, or that comes out larger than the lost motion it is part of. */
export const endFloat: Check = ({ survey, stations, corrected, repeatability, lengths }) => {
  const measured = survey.endFloat;
  if (measured === undefined || measured.length === 0) {
    return [
      {
        check: "end float not measured",
        severity: "note",
        message:
          "End float was not measured, so the nut and the thrust bearing cannot be told apart. Put the indicator on the end of the screw and drive the slide a little each way.",
        readings: [],
      },
    ];
  }
  const least = leastLostMotion(stations);
  if (least === undefined) return [];
  const value = mean([...measured]);
  if (value - least.mean <= 3 * repeatability + corrected.resolution.step) return [];
  return [
    {
      check: "end float larger than lost motion",
      severity: "stop",
      message: `End float of ${lengths.lostMotion(value)} is more than the whole lost motion of ${lengths.lostMotion(least.mean)} at ${lengths.position(least.position)}, of which it is a part. Measure the end float again, and that station.`,
      readings: least.readings.flatMap((reading) => reading.from),
    },
  ];
};
