import { type Check, expectedOf, nameOf, placesOf } from "./check.ts";

const SLIPS = [
  { factor: 10, words: "ten times", cause: "a slipped decimal point" },
  { factor: 0.1, words: "a tenth of", cause: "a slipped decimal point" },
  { factor: 25.4, words: "25.4 times", cause: "millimetres taken for inches" },
  { factor: 1 / 25.4, words: "1/25.4 of", cause: "inches taken for millimetres" },
];
/** How near the ratio must come to the factor. */
const NEAR = 0.15;
const FAR = 5;

/** A reading that is ten or 25.4 times too large or too small: a slipped point, or a value in another unit. */
export const slip: Check = ({ corrected, stations, repeatability, lengths }) => {
  const allowed = FAR * repeatability + 2 * corrected.resolution.step;
  const slipped = corrected.readings.flatMap((reading) => {
    const expected = expectedOf(reading, stations);
    if (expected === undefined || expected <= 0 || Math.abs(reading.value - expected) <= allowed) return [];
    const found = SLIPS.find(({ factor }) => Math.abs(Math.log(reading.value / expected / factor)) < NEAR);
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
