import type { BeforeAndAfter } from "../../analysis/beforeAndAfter.ts";
import type { Inspection } from "../../inspection/schema.ts";

/** What is told of two surveys of a slide. */
export interface Compared extends BeforeAndAfter {
  readonly inspection: Inspection;
  /** What was taken for granted, in sentences. */
  readonly assumed: readonly string[];
}

/**
 * Two surveys with what was taken for granted for either of them.
 *
 * @param assumed what was taken from elsewhere than the inspection
 */
export function comparedOf(
  inspection: Inspection,
  { comparison, history }: BeforeAndAfter,
  assumed: readonly string[] = [],
): Compared {
  const { from, to } = comparison;
  const all = new Set([...assumed, ...from.assessment.assumed, ...to.assessment.assumed]);
  return { inspection, comparison, history, assumed: [...all] };
}
