import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { toMillimetres, type Units } from "../../inspection/units.ts";

/** What a thread is measured to: thousandths of a millimetre, ten-thousandths of an inch. */
const FINEST: Readonly<Record<Units, number>> = { mm: 0.001, in: 0.0001 };

/** Lengths as they are written on a drawing of a thread. */
export function threadLengths(units: Units): Lengths {
  return lengthsIn(units, toMillimetres(FINEST[units], units));
}
