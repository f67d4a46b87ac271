import type { Action, Assessment, Reason } from "../analysis/assessment.ts";
import type { SmallestLimit } from "../analysis/decide/smallestLimits.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { fromMillimetres } from "../inspection/units.ts";
import { excessPlay } from "./outsidePlay.ts";
import { allOf } from "./words.ts";

/** While one of these holds a verdict back, chances only show what the readings point to. */
const HOLDING_BACK: readonly Reason[] = ["coverage", "unread-end", "checks"];

/** A limit that is kept, rounded up, so that the limit as written is kept, too. */
export function keptLimit(millimetres: number, lengths: Lengths): string {
  const decimals = lengths.figure(0).split(".")[1]?.length ?? 0;
  const steps = Math.ceil(fromMillimetres(millimetres, lengths.units) * 10 ** decimals - 1e-6);
  return `${(steps / 10 ** decimals).toFixed(decimals)} ${lengths.units}`;
}

/** The limits whose written figure differs from that of the step before, which is less work. */
export function toldApart(limits: readonly SmallestLimit[], lengths: Lengths): readonly SmallestLimit[] {
  const shown = limits.map(({ sure }) => keptLimit(sure, lengths));
  return limits.filter((_, i) => shown[i] !== shown[i - 1]);
}

/** Which limits each step would keep, as a sentence. */
export function smallestLimitWords(
  limits: readonly SmallestLimit[],
  assessment: Assessment,
  lengths: Lengths,
): string {
  const parts = limits.map(({ action, sure }, i) => {
    const orMore = i === 0 ? "or more " : "";
    return `${keptLimit(sure, lengths)} ${orMore}${withStep(action, assessment)}`;
  });
  const caution = assessment.reasons.some((reason) => HOLDING_BACK.includes(reason))
    ? " That is what the readings point to; more is needed before it is a verdict."
    : "";
  return `These limits would very likely be kept: ${allOf(parts)}.${caution}`;
}

function withStep(action: Action, assessment: Assessment): string {
  switch (action) {
    case "leave-alone":
      return "with the slide left alone";
    case "correct-end-float":
      return `with the ${excessPlay(assessment).join(" and the ") || "end float"} corrected`;
    case "adjust-nut":
      return "with the nut adjusted";
    case "replace-nuts":
      return "with new nuts";
    case "remake-screw":
      return "with the screw remade, and nuts to match";
  }
}
