import type { Assessment } from "../../../analysis/assessment.ts";
import type { BeforeAndAfter } from "../../../analysis/beforeAndAfter.ts";
import type { SurveyChoice } from "../../../analysis/comparison/chooseSurveys.ts";
import type { RetainedDraws } from "../../../analysis/decide/whatIf.ts";
import type { Outcome } from "../../../inspection/problem.ts";
import type { Inspection } from "../../../inspection/schema.ts";

/** What the worker is asked; it answers each question with one reply, in order. */
export interface Question {
  readonly inspection: Inspection;
  readonly survey: string;
}

export type Answer = Outcome<Assessment>;

export interface Reply {
  readonly answer: Answer;
  /** What it takes to decide anew at other settings; null where there is no assessment. */
  readonly kept: RetainedDraws | null;
}

/** Asked which of its surveys to compare. */
export interface ComparisonQuestion {
  readonly inspection: Inspection;
  readonly choice: SurveyChoice;
}

export type ComparisonReply = Outcome<BeforeAndAfter>;
