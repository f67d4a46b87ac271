import type { Assessment, Verdict } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "../picture/evenness.ts";
import { measureMoreSentences } from "./measureMore.ts";
import { actionWords, correctedFirst, enoughToCorrect, firstStep, whenConvenient } from "./outsidePlay.ts";
import { capitalised, estimateWords } from "./words.ts";

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

type Sentences = (assessment: Assessment, lengths: Lengths) => readonly string[];

const SENTENCES: Readonly<Record<Verdict, Sentences>> = {
  "leave-alone": leaveAlone,
  "correct-end-float": correctEndFloat,
  "adjust-nut": adjustNut,
  "replace-nuts": replaceNuts,
  "remake-screw": remakeScrew,
  "measure-more": measureMoreSentences,
  "no-verdict": noVerdictSentences,
};

/** The assessment in a few plain sentences: what was found, what to do, and what that will leave. */
export function summaryOf(assessment: Assessment, lengths: Lengths): string {
  const sentences = SENTENCES[assessment.verdict](assessment, lengths);
  return [...firstStep(assessment, lengths), ...sentences].join(" ");
}

function leaveAlone(assessment: Assessment, lengths: Lengths): readonly string[] {
  return [
    `${greatestWords(assessment, lengths)}: within the limit of ${lengths.position(assessment.settings.limit)}.`,
    ...(assessment.conformance === "not proven"
      ? [
          "That it keeps the limit is not proven by the rule of ISO 14253-1, for the uncertainty reaches beyond it.",
        ]
      : []),
    "Nut and screw need nothing done.",
    ...whenConvenient(assessment, lengths),
  ];
}

function correctEndFloat(assessment: Assessment, lengths: Lengths): readonly string[] {
  return [over(assessment, lengths), ...enoughToCorrect(assessment, lengths)];
}

function adjustNut(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { takeUp, settings, tightSpot, afterAdjusting } = assessment;
  const limited = takeUp.value > settings.takeUpLeft;
  const amount = limited
    ? `the ${lengths.position(settings.takeUpLeft)} that it has left`
    : `${estimateWords(takeUp, lengths)}${Number.isFinite(settings.takeUpLeft) ? "" : ", if it still has as much to take up"}`;
  const stop =
    evennessOf(assessment, lengths) === "uneven"
      ? `; it binds first at the tight spot, at about ${lengths.spot(tightSpot.position)}`
      : "";
  return [
    over(assessment, lengths),
    `Take up the nut by ${amount}${stop}.`,
    leaves("That", afterAdjusting, assessment, lengths),
  ];
}

function replaceNuts(assessment: Assessment, lengths: Lengths): readonly string[] {
  return [
    over(assessment, lengths),
    whyNotAdjust(assessment, lengths),
    leaves("New nuts cut to fit this screw", assessment.afterNewNuts, assessment, lengths),
    "Stock nuts add their own clearance to that.",
  ];
}

/** The first thing in the way of adjusting, by the medians. */
function whyNotAdjust({ settings, takeUp }: Assessment, lengths: Lengths): string {
  if (!settings.adjustable) return "The nut cannot be adjusted, so what it has worn stays.";
  const clearance = takeUp.value + settings.runningClearance;
  const worn = clearance + settings.takeUpUsed - settings.clearanceNew;
  return worn > settings.wearLimit
    ? `The nut has worn by about ${lengths.lostMotion(worn)}, more than the ${lengths.position(settings.wearLimit)} that it may.`
    : `The nut has only ${lengths.position(settings.takeUpLeft)} left to take up, which is not enough.`;
}

function remakeScrew(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { uneven, afterNewNuts, settings, loosestSpot, tightSpot } = assessment;
  return [
    `Lost motion at about ${lengths.spot(loosestSpot.position)} exceeds that at the tight spot, at about ${lengths.spot(tightSpot.position)}, by ${estimateWords(uneven, lengths)}: the screw has worn unevenly.`,
    `Neither adjusting nor new nuts remove this; even new nuts would leave ${estimateWords(afterNewNuts.worst, lengths)}, at about ${lengths.spot(afterNewNuts.position)}, over the limit of ${lengths.position(settings.limit)}.`,
    "Remake the screw, with nuts to match.",
  ];
}

function over(assessment: Assessment, lengths: Lengths): string {
  return `${greatestWords(assessment, lengths)}: over the limit of ${lengths.position(assessment.settings.limit)}.`;
}

function leaves(
  what: string,
  { worst, position }: Assessment["afterNewNuts"],
  assessment: Assessment,
  lengths: Lengths,
): string {
  const where =
    evennessOf(assessment, lengths) === "uneven"
      ? `, where it is worst, at about ${lengths.spot(position)}`
      : "";
  return `${what} will leave ${estimateWords(worst, lengths)}${where}.`;
}

/** Why no verdict is given, what to do about it, and what was found all the same. */
function noVerdictSentences(assessment: Assessment, lengths: Lengths): readonly string[] {
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

/** How much lost motion was found, as the beginning of a sentence; where, as far as the readings show it. */
function greatestWords(assessment: Assessment, lengths: Lengths): string {
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
