import type { Assessment } from "../../analysis/assessment.ts";
import type { Outcome } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";

/** What the worker is asked; it answers each question with one `Answer`, in order. */
export interface Question {
  readonly inspection: Inspection;
  readonly survey: string;
}

export type Answer = Outcome<Assessment>;
