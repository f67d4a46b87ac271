import type { PlannableSlide } from "../../../src/inspection/plannableSlide.ts";
import { measuringPlan, type Plan, type PlanOptions } from "../../../src/intake/plan/measuringPlan.ts";

/** A cross slide of which the least is known. */
export const BARE: PlannableSlide = { units: "mm", travel: { from: 0, to: 160 }, screw: { lead: 4 } };

export function planned(slide: PlannableSlide, options?: PlanOptions): Plan {
  const plan = measuringPlan(slide, options);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problem));
  return plan.value;
}
