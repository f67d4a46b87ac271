import { type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Slide } from "../../inspection/schema.ts";
import { measuringPlan } from "../../intake/plan/measuringPlan.ts";

/** Where to read a slide and why, in its own units. */
export interface PlannedStations {
  /** Every reading in the order it is taken, out along the travel and back. */
  readonly stations: readonly number[];
  readonly reasons: readonly string[];
}

/** The measuring plan as a guide follows it; fails where no plan can be made. */
export function plannedStations(slide: Slide): Outcome<PlannedStations> {
  const plan = measuringPlan(slide);
  if (!plan.ok) return plan;
  const { readings, reasons, notes } = plan.value;
  return succeeded({ stations: readings.map(({ position }) => position), reasons: [...notes, ...reasons] });
}
