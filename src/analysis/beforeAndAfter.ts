import { type Outcome, succeeded } from "../inspection/problem.ts";
import type { Inspection } from "../inspection/schema.ts";
import { type Assess, cachedAssess } from "./assess.ts";
import type { SurveyChoice } from "./comparison/chooseSurveys.ts";
import { compareSurveys } from "./comparison/compareSurveys.ts";
import type { Comparison } from "./comparison/comparison.ts";
import type { RunningIn, TooFewSurveys } from "./runningIn/runningIn.ts";
import { runningInOf } from "./runningIn/runningInOf.ts";

/** The comparison of two surveys of a slide, and the running-in of all surveys since the last repair. */
export interface BeforeAndAfter {
  readonly comparison: Comparison;
  readonly history: RunningIn | TooFewSurveys;
}

/** Comparison and running-in, with every survey assessed once. Fails as `compareSurveys` and `runningInOf` do. */
export function beforeAndAfter(
  inspection: Inspection,
  choice: SurveyChoice = {},
  assess: Assess = cachedAssess(),
): Outcome<BeforeAndAfter> {
  const comparison = compareSurveys(inspection, choice, assess);
  if (!comparison.ok) return comparison;
  const history = runningInOf(inspection, assess);
  if (!history.ok) return history;
  return succeeded({ comparison: comparison.value, history: history.value });
}
