import { assessWithDraws, cachedAssess } from "../../../analysis/assess.ts";
import { beforeAndAfter } from "../../../analysis/beforeAndAfter.ts";
import { failed, type Outcome, succeeded } from "../../../inspection/problem.ts";
import type { ComparisonQuestion, ComparisonReply, Question, Reply } from "./messages.ts";

self.onmessage = ({ data }: MessageEvent<Question | ComparisonQuestion>) =>
  self.postMessage("choice" in data ? comparisonOf(data) : replyTo(data));

/** Assesses each survey once, whatever surveys it is compared with. */
const assess = cachedAssess();

function comparisonOf({ inspection, choice }: ComparisonQuestion): ComparisonReply {
  try {
    return beforeAndAfter(inspection, choice, assess);
  } catch (error) {
    return fault("comparison", error);
  }
}

function replyTo({ inspection, survey }: Question): Reply {
  try {
    const assessed = assessWithDraws(inspection, survey);
    return assessed.ok
      ? { answer: succeeded(assessed.value.assessment), draws: assessed.value.retainedDraws() }
      : { answer: assessed, draws: null };
  } catch (error) {
    return { answer: fault("assessment", error), draws: null };
  }
}

function fault(what: string, error: unknown): Outcome<never> {
  const said = error instanceof Error ? error.message : String(error);
  return failed(
    "",
    `the ${what} failed: ${said}`,
    "This is a fault of the program; what was entered is kept.",
  );
}
