import type { Finding } from "../assessment.ts";
import { groupedByPlace } from "../samePlace.ts";
import type { Stray } from "../strays.ts";
import { type Check, nameOf, type Surveyed } from "./check.ts";
import { belowNothing } from "./negativeLostMotion.ts";
import { slipsOf } from "./slip.ts";

/**
 * A reading that does not agree with the others: with its repeats or, where its station was read once, with the
 * profile through the other stations, unless it may be a narrow worn place. Of two repeats, neither can be told from
 * the other. What other checks say of a reading is not said again. What is a stray, and at what rate of false alarms,
 * is told in `strays.ts` and `loneReadings.ts`.
 */
export const outlyingReading: Check = (surveyed) => {
  const explained = new Set([
    ...slipsOf(surveyed).flatMap(({ reading, rival }) => [reading, rival]),
    ...belowNothing(surveyed),
  ]);
  const left = surveyed.strays.filter(
    ({ reading, rival, mayBeWear }) =>
      !mayBeWear && !explained.has(reading) && !(rival !== undefined && explained.has(rival)),
  );
  return groupedByPlace(left, ({ reading }) => reading.position).map((strays) => finding(strays, surveyed));
};

function finding(strays: readonly Stray[], { stations, lengths }: Surveyed): Finding {
  const [{ reading, expected }] = strays;
  const figures = strays.map((stray) => lengths.lostMotion(stray.reading.value)).join(" and ");
  const isAlone = stations.some(({ readings }) => readings.length === 1 && readings[0] === reading);
  const message =
    strays.length === 1
      ? `${nameOf(reading, lengths)} is ${figures} where ${isAlone ? "the other stations" : "its repeats"} say ${lengths.lostMotion(expected)}.`
      : `Readings ${strays.map((stray) => stray.reading.from[0] + 1).join(" and ")} at ${lengths.position(reading.position)} do not agree: ${figures}.`;
  return {
    check: "outlying reading",
    severity: "warning",
    message: `${message} Read this station again; strike, with the reason, what was a mistake.`,
    readings: strays.flatMap((stray) => stray.reading.from),
  };
}
