import type { Assessment } from "../analysis/assessment.ts";
import { fromMillimetres, roundTo, type Units } from "../inspection/units.ts";
import type { DecimalMark } from "../intake/numberText.ts";
import { numberWritten } from "../intake/numberWritten.ts";
import { csvText } from "../intake/writeCsv.ts";

/** A micrometre, or a tenth of a thousandth of an inch: finer than any profile is known. */
const DECIMALS: Readonly<Record<Units, number>> = { mm: 3, in: 4 };

/**
 * The profile of an assessment as CSV: for every position the lost motion, as median and 95 % interval. Its headings
 * are none of a log, so that it is never taken for readings.
 */
export function profileCsv({ profile }: Assessment, units: Units, mark: DecimalMark): string {
  const cell = (millimetres: number): string =>
    numberWritten(roundTo(fromMillimetres(millimetres, units), DECIMALS[units]), mark);
  return csvText(
    [
      [`position (${units})`, `profile (${units})`, `from, 95 % (${units})`, `to, 95 % (${units})`],
      ...profile.map(({ position, backlash, low, high }) => [position, backlash, low, high].map(cell)),
    ],
    mark,
  );
}
