import type { Finding } from "../assessment.ts";
import { groupedByPlace } from "../correct/samePlace.ts";
import type { RepeatOutlier } from "../outliers/repeatOutliers.ts";
import { type Check, nameOf, type Surveyed } from "./check.ts";
import { isNegative } from "./negativeLostMotion.ts";
import { slipsOf } from "./slip.ts";

/**
 * A reading that does not agree with the others: with its repeats or, where its station was read once, with the
 * profile through the other stations, unless it may be a narrow worn place. Of two repeats, neither can be told from
 * the other. What other checks say of a reading is not said again. What is an outlier, and at what rate of false alarms,
 * is told in `outliers.ts` and `loneReadings.ts`.
 */
export const outlyingReading: Check = (surveyed) => {
  const explained = new Set([
    ...slipsOf(surveyed).flatMap(({ reading, rival }) => [reading, rival]),
    ...isNegative(surveyed),
  ]);
  const left = surveyed.outliers.filter(
    ({ reading, rival, mayBeWear }) =>
      !mayBeWear && !explained.has(reading) && !(rival !== undefined && explained.has(rival)),
  );
  return groupedByPlace(left, ({ reading }) => reading.position).map((outliers) =>
    finding(outliers, surveyed),
  );
};

function finding(outliers: readonly RepeatOutlier[], { stations, lengths }: Surveyed): Finding {
  const [{ reading, expected }] = outliers;
  const figures = outliers.map((outlier) => lengths.lostMotion(outlier.reading.value)).join(" and ");
  const isAlone = stations.some(({ readings }) => readings.length === 1 && readings[0] === reading);
  const message =
    outliers.length === 1
      ? `${nameOf(reading, lengths)} is ${figures} where ${isAlone ? "the other stations" : "its repeats"} say ${lengths.lostMotion(expected)}.`
      : `Readings ${outliers.map((outlier) => outlier.reading.from[0] + 1).join(" and ")} at ${lengths.position(reading.position)} do not agree: ${figures}.`;
  return {
    check: "outlying reading",
    severity: "warning",
    message: `${message} Read this station again; strike, with the reason, what was a mistake.`,
    readings: outliers.flatMap((outlier) => outlier.reading.from),
  };
}
