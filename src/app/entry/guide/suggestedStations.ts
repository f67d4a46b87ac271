import type { Assessment } from "../../../analysis/assessment.ts";
import { fromMillimetres, roundTo, type Units } from "../../../inspection/units.ts";
import { isReady } from "../../results/headline.ts";

/** A station that would tell most about the verdict, in the slide's units, or the end float; and why. */
export type SuggestedStation =
  | { readonly position: number; readonly why: string }
  | { readonly endFloat: true; readonly why: string };

/** What the assessment asks for next, once there are readings enough to say. */
export function suggestedStations(assessment: Assessment | null, units: Units): readonly SuggestedStation[] {
  if (assessment === null || !isReady(assessment)) return [];
  return assessment.nextReadings.map((next) =>
    "position" in next ? { position: settable(next.position, units), why: next.why } : next,
  );
}

/** A place that can be set at the machine: to the millimetre, or to a twentieth of an inch, as it is told of. */
function settable(millimetres: number, units: Units): number {
  const position = fromMillimetres(millimetres, units);
  return units === "in" ? roundTo(Math.round(position * 20) / 20, 2) : Math.round(position);
}
