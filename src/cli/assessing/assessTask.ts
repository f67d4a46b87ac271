import { assessSurvey } from "../../analysis/assess.ts";
import type { Assessment } from "../../analysis/assessment.ts";
import type { Outcome } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";

/** What takes the processor's time, as it is sent to another thread. */
export interface Request {
  readonly inspection: Inspection;
  readonly survey: string;
}

/** What comes of it: an assessment, what the user can cure, or a fault of the program. */
export type Reply = Outcome<Assessment> | { readonly fault: unknown };

/** Assesses a survey. A fault is given back, for what fails for one survey says nothing of the others. */
export function assessTask({ inspection, survey }: Request): Reply {
  try {
    return assessSurvey(inspection, survey);
  } catch (fault) {
    return { fault };
  }
}
