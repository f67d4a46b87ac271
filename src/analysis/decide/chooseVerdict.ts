import { median } from "simple-statistics";
import {
  ACTIONS,
  type Action,
  type Chances,
  type Finding,
  type Reason,
  type Verdict,
} from "../assessment.ts";
import type { EndFloat } from "../correct/endFloat.ts";
import type { Coverage } from "./coverage.ts";
import { isLimitAttainable, type Margins } from "./decision.ts";
import type { Settings } from "./settings.ts";

/** Least chance at which a class is recommended. */
export const REQUIRED_CHANCE = 0.95;

export interface VerdictChoice {
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  readonly chances: Chances | null;
  readonly likeliest: Action | null;
}

/**
 * Chooses the verdict from the chances, or gives the reasons why there is none yet.
 *
 * @param isSettleable whether further readings can be expected to settle the verdict
 */
export function chooseVerdict(
  { chances, endFloat }: { readonly chances: Chances; readonly endFloat: Pick<EndFloat, "measured"> },
  settings: Settings,
  coverage: Coverage,
  findings: readonly Finding[],
  isSettleable: boolean,
): VerdictChoice {
  const against = reasonsForNoVerdict(settings);
  if (against.length > 0) return { verdict: "no-verdict", reasons: against, chances: null, likeliest: null };
  const likeliest = ACTIONS.reduce((best, action) => (chances[action] > chances[best] ? action : best));
  const reasons: Reason[] = [];
  if (!coverage.enoughStations || coverage.gaps.length > 0) reasons.push("coverage");
  const needsEnds = likeliest === "adjust-nut" || likeliest === "replace-nuts";
  if (needsEnds && coverage.unreadEnds.length > 0) reasons.push("unread-end");
  if (findings.some((finding) => finding.severity === "stop")) reasons.push("checks");
  if (likeliest === "correct-end-float" && !endFloat.measured) reasons.push("end-float-unmeasured");
  if (chances[likeliest] < REQUIRED_CHANCE) reasons.push(isSettleable ? "chances" : "at-the-limit");
  return { verdict: reasons.length === 0 ? likeliest : "measure-more", reasons, chances, likeliest };
}

function reasonsForNoVerdict(settings: Settings): readonly Reason[] {
  const reasons: Reason[] = [];
  if (settings.holdsLoad) reasons.push("holds-load");
  if (settings.springHides) reasons.push("spring-loaded");
  if (!isLimitAttainable(settings)) reasons.push("limit-not-attainable");
  return reasons;
}

/** The margin, draw by draw, of the question whose answer is least certain. In millimetres. */
export function leastCertainMargin(margins: readonly Margins[], settings: Settings): Float64Array {
  const questions: (keyof Margins)[] = settings.adjustable
    ? ["asFound", "withEndFloat", "withTakeUp", "takeUpLeft", "wear"]
    : ["asFound", "withEndFloat", "withTakeUp"];
  const uncertainty = (question: keyof Margins): number => {
    const met = margins.filter((each) => each[question] >= 0).length / margins.length;
    return Math.min(met, 1 - met);
  };
  const leastCertain = questions.reduce((best, question) =>
    uncertainty(question) > uncertainty(best) ? question : best,
  );
  return Float64Array.from(margins, (each) => each[leastCertain]);
}

/**
 * Whether further readings can be expected to settle the verdict: the median margin exceeds the uncertainty that
 * rounding and the mean of ten more readings would leave (95 %, one-sided). Lengths in millimetres.
 */
export function canBeSettled(margin: Float64Array, repeatability: number, rounding: number): boolean {
  const floor = Math.hypot(rounding, repeatability / Math.sqrt(10));
  return Math.abs(median(Array.from(margin))) > 1.65 * floor;
}
