import type { AssessedSurvey } from "../assess.ts";
import { SURE_ENOUGH } from "../decide/chooseVerdict.ts";
import { estimateOf } from "../statistics/estimate.ts";
import type { Acceptance, Withheld } from "./comparison.ts";

/**
 * Whether lost motion over the working range keeps the limit, in the words of ISO 14253-1. Besides the rule of that
 * standard, which takes the uncertainty to be the same on either side, the draws must bear the claim out: a peak
 * between stations reaches upward only. Nothing is claimed against a check that stops the verdict, and nothing is
 * proven where stations are too few or far between, or a spring hides the wear.
 *
 * @param greatest draws of the greatest lost motion over the working range, the indicator's error included
 */
export function acceptanceOf(
  { assessment, coverage }: AssessedSurvey,
  greatest: readonly number[],
): Acceptance {
  const { settings, conformance, checks } = assessment;
  const chance = greatest.filter((each) => each <= settings.limit).length / greatest.length;
  const claim =
    conformance === "proven" && chance >= SURE_ENOUGH
      ? "proven"
      : conformance === "disproven" && chance <= 1 - SURE_ENOUGH
        ? "disproven"
        : "not proven";
  const against: Record<Withheld, boolean> = {
    checks: claim !== "not proven" && checks.some(({ severity }) => severity === "stop"),
    coverage: claim === "proven" && (!coverage.enoughStations || coverage.gaps.length > 0),
    "spring-loaded": claim === "proven" && settings.springHides,
  };
  const reasons: readonly Withheld[] = ["checks", "coverage", "spring-loaded"];
  const withheld = reasons.find((reason) => against[reason]) ?? null;
  return {
    conformance: withheld === null ? claim : "not proven",
    withheld,
    limit: settings.limit,
    greatest: estimateOf(greatest),
    chance,
  };
}
