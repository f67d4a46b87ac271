import type { Assessment } from "../analysis/assessment.ts";
import { ACTION_WORDS, capitalised, endFloatComesFirst } from "./words.ts";

/** The verdict in a few words, for a heading. */
export function verdictTitle(assessment: Assessment): string {
  const { verdict, reasons } = assessment;
  if (verdict === "no-verdict") return "No verdict";
  if (verdict === "measure-more") {
    return reasons[0] === "at-the-limit" ? "Too close to the limit to call" : "Measure more before deciding";
  }
  const changesParts = verdict !== "leave-alone" && verdict !== "correct-end-float";
  return changesParts && endFloatComesFirst(assessment)
    ? `Correct the end float, then ${ACTION_WORDS[verdict]}`
    : capitalised(ACTION_WORDS[verdict]);
}
