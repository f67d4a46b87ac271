import { median } from "simple-statistics";
import type { LostMotion } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import type { RepeatOutlier } from "../outliers/repeatOutliers.ts";
import { type Slip, slipIn } from "../outliers/slips.ts";
import { type Check, type CheckInput, nameOf, placesOf } from "./check.ts";

/** How often scatter makes a corrected slip look unlike an ordinary reading. */
const MISS_RATE = 0.01;

type Slipped = RepeatOutlier & Slip;

/**
 * Outliers that would agree with the other readings if they were ten or 25.4 times as large or as small: a slipped
 * decimal point, or a value in another unit. One slip in a hundred is missed because of scatter.
 */
export function slipsOf({ outliers, clean }: CheckInput): readonly Slipped[] {
  return outliers.flatMap((outlier) => {
    const { reading, rival, agreement } = outlier;
    if (rival !== undefined && !isLessPlausible(reading, rival, clean)) return [];
    const found = slipIn(reading.value, agreement, MISS_RATE);
    return found === undefined ? [] : [{ ...outlier, ...found }];
  });
}

/** Whether the reading's ratio to the stations on either side is farther from one than its rival's. */
function isLessPlausible(reading: LostMotion, rival: LostMotion, clean: readonly Station[]): boolean {
  const before = clean.filter(({ position }) => position < reading.position).slice(-2);
  const after = clean.filter(({ position }) => position > reading.position).slice(0, 2);
  const near = [...before, ...after].map(({ mean }) => mean);
  if (near.length === 0) return true;
  const usual = median(near);
  const ratio = ({ value }: LostMotion): number => Math.abs(Math.log(Math.max(value, 0) / usual));
  return ratio(reading) >= ratio(rival);
}

/** A slipped decimal point, or a value in another unit. */
export const slip: Check = (input) => {
  const { lengths } = input;
  const slipped = slipsOf(input);
  const [first] = slipped;
  if (first === undefined) return [];
  const message =
    slipped.length === 1
      ? `${nameOf(first.reading, lengths)} is ${lengths.lostMotion(first.reading.value)}, ${first.words} what the readings around it say: ${first.cause}? Look at the sheet, or take it again.`
      : `${slipped.length} readings (${placesOf(
          slipped.map(({ reading }) => reading),
          lengths,
        )}) differ from those around them as by ${first.cause}. Look at the sheet, or take them again.`;
  return [
    { check: "slip", severity: "stop", message, readings: slipped.flatMap(({ reading }) => reading.from) },
  ];
};
