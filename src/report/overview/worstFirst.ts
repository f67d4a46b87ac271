import type { Action, Assessment } from "../../analysis/assessment.ts";
import type { SlideOverview } from "./slideOverview.ts";

/** How a slide stands: what has to be done, whether that is settled, or why it cannot be said. */
type Standing = "safety part" | "unknown" | Action | `perhaps ${Action}`;

/**
 * From the worst to the best. A screw that holds up a load and does not provably keep its limit may hurt somebody and
 * stands first; the rest go by the work that they need, the settled before the likely. Of a slide that nothing can be
 * said of there is still something to find out, as there is of one that is only likely to be in order.
 */
const STANDINGS: readonly Standing[] = [
  "safety part",
  "remake-screw",
  "perhaps remake-screw",
  "replace-nuts",
  "perhaps replace-nuts",
  "adjust-nut",
  "perhaps adjust-nut",
  "correct-end-float",
  "perhaps correct-end-float",
  "unknown",
  "perhaps leave-alone",
  "leave-alone",
];

/**
 * The slides with the worst first; of those that stand alike, the one whose lost motion is the greatest share of its
 * limit. What is alike in that too stays in the order given.
 */
export function worstFirst(slides: readonly SlideOverview[]): readonly SlideOverview[] {
  return slides.toSorted(
    ({ assessment: one }, { assessment: other }) =>
      rank(one) - rank(other) || shareOfLimit(other) - shareOfLimit(one),
  );
}

function rank(assessment: Assessment): number {
  return STANDINGS.indexOf(standingOf(assessment));
}

function standingOf({ verdict, likeliest, conformance, reasons }: Assessment): Standing {
  if (verdict === "no-verdict") {
    return reasons.includes("holds-load") && conformance !== "proven" ? "safety part" : "unknown";
  }
  if (verdict !== "measure-more") return verdict;
  return likeliest === null ? "unknown" : `perhaps ${likeliest}`;
}

function shareOfLimit({ greatest, settings }: Assessment): number {
  return greatest.value / settings.limit;
}
