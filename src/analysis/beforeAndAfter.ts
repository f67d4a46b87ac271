import { type Outcome, succeeded } from "../inspection/problem.ts";
import type { Inspection } from "../inspection/schema.ts";
import { type Assess, assessOnce } from "./assessOnce.ts";
import type { Choice } from "./comparison/choice.ts";
import { compareSurveys } from "./comparison/compareSurveys.ts";
import type { Comparison } from "./comparison/comparison.ts";
import type { RunningIn, TooLittle } from "./runningIn/runningIn.ts";
import { runningInOf } from "./runningIn/runningInOf.ts";

/** Two surveys of a slide against each other, and what all since the last repair show of running in. */
export interface BeforeAndAfter {
  readonly comparison: Comparison;
  readonly history: RunningIn | TooLittle;
}

/** Both of an inspection, every survey assessed once. Fails as `compareSurveys` and `runningInOf` do. */
export function beforeAndAfter(
  inspection: Inspection,
  choice: Choice = {},
  assess: Assess = assessOnce(),
): Outcome<BeforeAndAfter> {
  const comparison = compareSurveys(inspection, choice, assess);
  if (!comparison.ok) return comparison;
  const history = runningInOf(inspection, assess);
  if (!history.ok) return history;
  return succeeded({ comparison: comparison.value, history: history.value });
}
