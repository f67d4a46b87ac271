import type { Finding } from "../assessment.ts";
import { groupByPosition } from "../correct/samePlace.ts";
import type { RepeatOutlier } from "../outliers/repeatOutliers.ts";
import { type Check, type CheckInput, nameOf } from "./check.ts";
import { negativeReadings } from "./negativeLostMotion.ts";
import { slipsOf } from "./slip.ts";

/**
 * A reading that disagrees with its repeats or, if its station was read once, with the profile through the other
 * stations, unless it may be a narrow worn place. Of two repeats that disagree, both are named. Readings that another
 * check reports are left out. `outliers/` defines what an outlier is.
 */
export const outlyingReading: Check = (input) => {
  const explained = new Set([
    ...slipsOf(input).flatMap(({ reading, rival }) => [reading, rival]),
    ...negativeReadings(input),
  ]);
  const unexplained = input.outliers.filter(
    ({ reading, rival, mayBeWear }) =>
      !mayBeWear && !explained.has(reading) && !(rival !== undefined && explained.has(rival)),
  );
  return groupByPosition(unexplained, ({ reading }) => reading.position).map((outliers) =>
    finding(outliers, input),
  );
};

function finding(outliers: readonly RepeatOutlier[], { stations, lengths }: CheckInput): Finding {
  const [{ reading, expected }] = outliers;
  const values = outliers.map((outlier) => lengths.lostMotion(outlier.reading.value)).join(" and ");
  const isReadOnce = stations.some(({ readings }) => readings.length === 1 && readings[0] === reading);
  const message =
    outliers.length === 1
      ? `${nameOf(reading, lengths)} is ${values} where ${isReadOnce ? "the other stations" : "its repeats"} say ${lengths.lostMotion(expected)}.`
      : `Readings ${outliers.map((outlier) => outlier.reading.from[0] + 1).join(" and ")} at ${lengths.position(reading.position)} do not agree: ${values}.`;
  return {
    check: "outlying reading",
    severity: "warning",
    message: `${message} Read this station again; strike, with the reason, what was a mistake.`,
    readings: outliers.flatMap((outlier) => outlier.reading.from),
  };
}
