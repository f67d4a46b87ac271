import { median } from "simple-statistics";
import type { LostMotion } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import type { RepeatOutlier } from "../outliers/repeatOutliers.ts";
import { type Slip, slipIn } from "../outliers/slips.ts";
import { type Check, nameOf, placesOf, type Surveyed } from "./check.ts";

/** A slip put right is an ordinary reading: in so many of them, scatter alone makes it look like none. */
const MISSED = 0.01;

type Slipped = RepeatOutlier & Slip;

/**
 * Readings that do not agree with the others, and would if they were ten or 25.4 times as large or as small: a
 * slipped point, or a value in another unit. Only outliers are asked, so it speaks no oftener in clean surveys than there
 * are outliers (`isTooRare`); the normal scatter of an ordinary reading makes it miss one slip in a hundred.
 */
export function slipsOf({ outliers, clean }: Surveyed): readonly Slipped[] {
  return outliers.flatMap((outlier) => {
    const { reading, rival, agreement } = outlier;
    if (rival !== undefined && !isFarther(reading, rival, clean)) return [];
    const found = slipIn(reading.value, agreement, MISSED);
    return found === undefined ? [] : [{ ...outlier, ...found }];
  });
}

/** Of two readings, the one whose ratio to the stations on either side is farther from one may have slipped. */
function isFarther(reading: LostMotion, rival: LostMotion, clean: readonly Station[]): boolean {
  const before = clean.filter(({ position }) => position < reading.position).slice(-2);
  const after = clean.filter(({ position }) => position > reading.position).slice(0, 2);
  const near = [...before, ...after].map(({ mean }) => mean);
  if (near.length === 0) return true;
  const usual = median(near);
  const ratio = ({ value }: LostMotion): number => Math.abs(Math.log(Math.max(value, 0) / usual));
  return ratio(reading) >= ratio(rival);
}

export const slip: Check = (surveyed) => {
  const { lengths } = surveyed;
  const slipped = slipsOf(surveyed);
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
