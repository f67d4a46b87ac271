import type { Assessment, Verdict } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "../picture/evenness.ts";
import { greatestWords } from "./greatestWords.ts";
import { measureMoreSentences } from "./measureMore.ts";
import { noVerdictSentences } from "./noVerdict.ts";
import { enoughToCorrect, firstStep, whenConvenient } from "./outsidePlay.ts";
import { estimateWords } from "./words.ts";

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
