import { slipIn } from "../slips.ts";
import { type Check, expectedOf, nameOf, placesOf } from "./check.ts";

/** Standard deviations within which two readings may differ without a slip. */
const FAR = 5;

/** A reading that is ten or 25.4 times too large or too small: a slipped point, or a value in another unit. */
export const slip: Check = ({ corrected, stations, repeatability, lengths }) => {
  const allowed = FAR * repeatability + 2 * corrected.resolution.step;
  const slipped = corrected.readings.flatMap((reading) => {
    const expected = expectedOf(reading, stations);
    if (expected === undefined || expected <= 0 || Math.abs(reading.value - expected) <= allowed) return [];
    const found = slipIn(reading.value, expected);
    return found === undefined ? [] : [{ reading, ...found }];
  });
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
