import type { AssessedSurvey } from "../assess.ts";
import { REQUIRED_CHANCE } from "../decide/chooseVerdict.ts";
import { estimateOf } from "../statistics/estimate.ts";
import type { Acceptance, Withheld } from "./comparison.ts";

/**
 * Conformance with the limit over the working range, after ISO 14253-1. The rule of that standard assumes a symmetric
 * uncertainty; a peak between stations reaches upward only, so the draws must support the claim as well. Nothing is
 * claimed if a check stops the verdict. Nothing is proven if stations are too few or too far apart, or a spring may hide
 * the wear.
 *
 * @param greatest draws of the greatest lost motion over the working range in millimetres, indicator error included
 */
export function acceptanceOf(
  { assessment, coverage }: AssessedSurvey,
  greatest: readonly number[],
): Acceptance {
  const { settings, conformance, checks } = assessment;
  const chance = greatest.filter((each) => each <= settings.limit).length / greatest.length;
  const claim =
    conformance === "proven" && chance >= REQUIRED_CHANCE
      ? "proven"
      : conformance === "disproven" && chance <= 1 - REQUIRED_CHANCE
        ? "disproven"
        : "not proven";
  const isAgainst: Record<Withheld, boolean> = {
    checks: claim !== "not proven" && checks.some(({ severity }) => severity === "stop"),
    coverage: claim === "proven" && (!coverage.enoughStations || coverage.gaps.length > 0),
    "spring-loaded": claim === "proven" && settings.springHides,
  };
  const reasons: readonly Withheld[] = ["checks", "coverage", "spring-loaded"];
  const withheld = reasons.find((reason) => isAgainst[reason]) ?? null;
  return {
    conformance: withheld === null ? claim : "not proven",
    withheld,
    limit: settings.limit,
    greatest: estimateOf(greatest),
    chance,
  };
}
