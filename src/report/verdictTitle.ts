import type { Assessment } from "../analysis/assessment.ts";
import { actionWords, correctedFirst } from "./outsidePlay.ts";
import { capitalised } from "./words.ts";

/** The verdict in a few words, for a heading. */
export function verdictTitle(assessment: Assessment): string {
  const { verdict, reasons } = assessment;
  if (verdict === "no-verdict") return "No verdict";
  if (verdict === "measure-more") {
    return reasons[0] === "at-the-limit" ? "Too close to the limit to call" : "Measure more before deciding";
  }
  const action = actionWords(verdict, assessment);
  return correctedFirst(assessment).length === 0
    ? capitalised(action)
    : `${capitalised(actionWords("correct-end-float", assessment))}, then ${action}`;
}
