import { assessSurvey } from "../../analysis/assess.ts";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Outcome } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";

/** A survey to assess, as it is sent to another thread. */
export interface Request {
  readonly inspection: Inspection;
  readonly survey: string;
}

/** The result: an assessment, a problem that the user can cure, or a fault of the program. */
export type Reply = Outcome<Assessment> | { readonly fault: unknown };

/** Assesses a survey. A fault is returned, not thrown, so that the other surveys are still assessed. */
export function assessTask({ inspection, survey }: Request): Reply {
  try {
    return assessSurvey(inspection, survey);
  } catch (fault) {
    return { fault };
  }
}
