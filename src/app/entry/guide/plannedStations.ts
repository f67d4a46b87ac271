import { type Outcome, succeeded } from "../../../inspection/problem.ts";
import type { Slide } from "../../../inspection/schema.ts";
import { measuringPlan } from "../../../intake/plan/measuringPlan.ts";
import { orderOf } from "./stationList.ts";

/** Where to read a slide and why, in its own units. Readings are in the order they are taken. */
export interface PlannedStations {
  /** Every reading of the first round, out along the travel and back. */
  readonly stations: readonly number[];
  /** Every reading of all rounds, out along the travel and back; the same where there is but one round. */
  readonly all: readonly number[];
  readonly reasons: readonly string[];
}

/** The measuring plan as a guide follows it; fails where no plan can be made. */
export function plannedStations(slide: Slide): Outcome<PlannedStations> {
  const plan = measuringPlan(slide);
  if (!plan.ok) return plan;
  const { readings, stations, reasons, notes } = plan.value;
  return succeeded({
    stations: readings.flatMap(({ round, position }) => (round === 0 ? [position] : [])),
    all: orderOf({ positions: stations.map(({ position }) => position), isBackToo: true }),
    reasons: [...notes, ...reasons],
  });
}
