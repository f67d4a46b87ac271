import type { BeforeAndAfter } from "../../analysis/beforeAndAfter.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { Part } from "../blocks.ts";

/** Two surveys of a slide, compared. */
export interface Compared extends BeforeAndAfter {
  readonly inspection: Inspection;
  /** The defaults and overrides used where the inspection states nothing, in sentences. */
  readonly assumed: readonly string[];
  /** To the coarser of the two graduations. */
  readonly lengths: Lengths;
}

/** Makes a part of the comparison, or null where there is nothing to report. */
export type ComparisonPart = (compared: Compared) => Part | null;

/**
 * Two surveys with what was assumed for either of them.
 *
 * @param assumed what was taken from elsewhere than the inspection
 */
export function comparedOf(
  inspection: Inspection,
  { comparison, history }: BeforeAndAfter,
  assumed: readonly string[] = [],
): Compared {
  const { from, to, resolution } = comparison;
  const all = new Set([...assumed, ...from.assessment.assumed, ...to.assessment.assumed]);
  const lengths = lengthsIn(inspection.slide.units, resolution);
  return { inspection, comparison, history, assumed: [...all], lengths };
}
