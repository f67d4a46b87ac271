import type { Action, Assessment } from "../../analysis/assessment.ts";
import type { SlideOverview } from "./slideOverview.ts";

/** The state of a slide: what has to be done, whether that is certain, or why it is not known. */
type Standing = "safety part" | "unknown" | Action | `perhaps ${Action}`;

/**
 * From the worst to the best. A screw that holds up a load without proof that it keeps its limit may hurt somebody and
 * comes first. The others follow by the work that they need, the certain before the likely. A slide without an answer
 * comes before one that is likely in order: both need more readings.
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
 * The slides with the worst first; within one state, by lost motion as a share of the limit, largest first. Equal
 * slides keep their order.
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
