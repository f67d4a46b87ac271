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
import { limitAttainable, type Margins } from "./decision.ts";
import type { Settings } from "./settings.ts";

/** A class is recommended at this chance or more. */
export const SURE_ENOUGH = 0.95;

export interface VerdictChoice {
  readonly verdict: Verdict;
  readonly reasons: readonly Reason[];
  readonly chances: Chances | null;
  readonly likeliest: Action | null;
}

/** From chances to a verdict, or to the reasons why there is none yet. */
export function chooseVerdict(
  { chances, endFloat }: { readonly chances: Chances; readonly endFloat: Pick<EndFloat, "measured"> },
  settings: Settings,
  coverage: Coverage,
  findings: readonly Finding[],
  canBeSettled: boolean,
): VerdictChoice {
  const forbidden = reasonsAgainstAny(settings);
  if (forbidden.length > 0)
    return { verdict: "no-verdict", reasons: forbidden, chances: null, likeliest: null };
  const likeliest = ACTIONS.reduce((best, action) => (chances[action] > chances[best] ? action : best));
  const reasons: Reason[] = [];
  if (!coverage.enoughStations || coverage.gaps.length > 0) reasons.push("coverage");
  const needsEnds = likeliest === "adjust-nut" || likeliest === "replace-nuts";
  if (needsEnds && coverage.unreadEnds.length > 0) reasons.push("unread-end");
  if (findings.some((finding) => finding.severity === "stop")) reasons.push("checks");
  if (likeliest === "correct-end-float" && !endFloat.measured) reasons.push("end-float-unmeasured");
  if (chances[likeliest] < SURE_ENOUGH) reasons.push(canBeSettled ? "chances" : "at-the-limit");
  return { verdict: reasons.length === 0 ? likeliest : "measure-more", reasons, chances, likeliest };
}

function reasonsAgainstAny(settings: Settings): readonly Reason[] {
  const reasons: Reason[] = [];
  if (settings.holdsLoad) reasons.push("holds-load");
  if (settings.springHides) reasons.push("spring-loaded");
  if (!limitAttainable(settings)) reasons.push("limit-not-attainable");
  return reasons;
}

/** The question whose answer is least certain: its margin, draw by draw. */
export function decidingMargin(margins: readonly Margins[], settings: Settings): Float64Array {
  const questions: (keyof Margins)[] = settings.adjustable
    ? ["asFound", "withEndFloat", "withTakeUp", "takeUpLeft", "wear"]
    : ["asFound", "withEndFloat", "withTakeUp"];
  const doubt = (question: keyof Margins): number => {
    const met = margins.filter((each) => each[question] >= 0).length / margins.length;
    return Math.min(met, 1 - met);
  };
  const chief = questions.reduce((best, question) => (doubt(question) > doubt(best) ? question : best));
  return Float64Array.from(margins, (each) => each[chief]);
}

/** A further survey's worth of care leaves at least this uncertainty of the margin, in millimetres. */
export function canBeSettled(margin: Float64Array, repeatability: number, rounding: number): boolean {
  const floor = Math.hypot(rounding, repeatability / Math.sqrt(10));
  return Math.abs(median(Array.from(margin))) > 1.65 * floor;
}
