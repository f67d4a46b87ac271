import type { Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "../picture/evenness.ts";
import { greatestWords } from "./greatestWords.ts";

/** Why no verdict is given, what to do about it, and what was found all the same. */
export function noVerdictSentences(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { reasons, settings } = assessment;
  if (reasons.includes("holds-load")) {
    return [
      "This screw holds up a load and is a safety part, so no verdict is given: have it inspected by a competent person to the maker's limits and local rules.",
      found(assessment, lengths),
    ];
  }
  if (reasons.includes("spring-loaded")) {
    return [
      "A spring-loaded nut hides its wear unless the reading force exceeds the spring, so no verdict is given.",
      "Read again with a force that overcomes the spring, and say in the slide's data that it was overcome.",
      found(assessment, lengths),
    ];
  }
  const perfect = settings.runningClearance + settings.endFloatAttainable;
  return [
    `Parts in perfect order could not meet a limit of ${lengths.position(settings.limit)}: running clearance and attainable end float already come to ${lengths.position(perfect)}.`,
    "Set a limit that can be met.",
    found(assessment, lengths),
  ];
}

function found(assessment: Assessment, lengths: Lengths): string {
  const against =
    evennessOf(assessment, lengths) === "uneven"
      ? `, against ${lengths.lostMotion(assessment.tightSpot.backlash)} at the tight spot`
      : "";
  return `${greatestWords(assessment, lengths)}${against}.`;
}
