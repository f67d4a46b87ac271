import type { Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "../picture/evenness.ts";
import { estimateWords } from "./words.ts";

/** How much lost motion was found, as the beginning of a sentence; where, as far as the readings show it. */
export function greatestWords(assessment: Assessment, lengths: Lengths): string {
  const amount = estimateWords(assessment.greatest, lengths);
  switch (evennessOf(assessment, lengths)) {
    case "uneven":
      return `At about ${lengths.spot(assessment.loosestSpot.position)}, where it is greatest, lost motion is ${amount}`;
    case "even":
      return `Lost motion is ${amount}, the same everywhere as far as the readings show`;
    case "open":
      return `Lost motion is ${amount}, where it is greatest`;
  }
}
