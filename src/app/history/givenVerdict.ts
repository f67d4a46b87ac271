import type { Assessment } from "../../analysis/assessment.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import type { GivenVerdict } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { summaryOf, verdictTitle } from "../../report/summary.ts";
import { isReady } from "../results/headline.ts";

/** Digits after the point that a chance is kept with. */
const DIGITS = 3;

/**
 * The verdict that is shown, as it is noted; null as long as there are too few stations for one.
 *
 * @param given when, ISO 8601
 */
export function givenVerdict(assessment: Assessment, units: Units, given: string): GivenVerdict | null {
  if (!isReady(assessment)) return null;
  const { survey, verdict, chances, resolution } = assessment;
  const isStep = verdict !== "measure-more" && verdict !== "no-verdict";
  return {
    survey,
    given,
    version: PROGRAM_VERSION,
    verdict,
    title: verdictTitle(assessment),
    chance: isStep && chances !== null ? Number(chances[verdict].toFixed(DIGITS)) : null,
    summary: summaryOf(assessment, lengthsIn(units, resolution)),
  };
}
