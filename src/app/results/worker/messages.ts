import type { Assessment } from "../../../analysis/assessment.ts";
import type { BeforeAndAfter } from "../../../analysis/beforeAndAfter.ts";
import type { SurveyChoice } from "../../../analysis/comparison/chooseSurveys.ts";
import type { RetainedDraws } from "../../../analysis/decide/whatIf.ts";
import type { Outcome } from "../../../inspection/problem.ts";
import type { Inspection } from "../../../inspection/schema.ts";

/** Asks for the assessment of a survey. The worker answers each question with one reply, in order. */
export interface Question {
  readonly inspection: Inspection;
  readonly survey: string;
}

export type Answer = Outcome<Assessment>;

export interface Reply {
  readonly answer: Answer;
  /** The draws, for deciding again at other settings; null if there is no assessment. */
  readonly draws: RetainedDraws | null;
}

/** Asks for the comparison of two surveys. */
export interface ComparisonQuestion {
  readonly inspection: Inspection;
  readonly choice: SurveyChoice;
}

export type ComparisonReply = Outcome<BeforeAndAfter>;
