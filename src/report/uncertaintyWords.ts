import type { Assessment } from "../analysis/assessment.ts";
import { lengthsIn } from "../inspection/lengths.ts";
import type { Units } from "../inspection/units.ts";

/** The budget of uncertainty at the loosest spot in words. */
export interface UncertaintyWords {
  /** Each source with its standard uncertainty. */
  readonly lines: readonly (readonly [string, string])[];
  /** The expanded uncertainty, U = 2 u. */
  readonly expanded: string;
}

/** The parts of an uncertainty are smaller than the readings' resolution, in millimetres. */
const FINE = 0.001;

export function uncertaintyWords({ uncertainty }: Assessment, units: Units): UncertaintyWords {
  const { lostMotion } = lengthsIn(units, FINE);
  return {
    lines: uncertainty.lines.map(({ source, standard, stated }) => [
      source,
      stated ? lostMotion(standard) : "not stated",
    ]),
    expanded: lostMotion(uncertainty.expanded),
  };
}
