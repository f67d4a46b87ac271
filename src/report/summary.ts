import type { Assessment, Verdict } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { measureMoreSentences } from "./measureMore.ts";
import { endFloatComesFirst, estimateWords, withTolerance } from "./words.ts";

type Sentences = (assessment: Assessment, lengths: Lengths) => readonly string[];

const SENTENCES: Readonly<Record<Verdict, Sentences>> = {
  "leave-alone": leaveAlone,
  "correct-end-float": correctEndFloat,
  "adjust-nut": adjustNut,
  "replace-nuts": replaceNuts,
  "remake-screw": remakeScrew,
  "measure-more": measureMoreSentences,
  "no-verdict": noVerdict,
};

/** The assessment in a few plain sentences: what was found, what to do, and what that will leave. */
export function summaryOf(assessment: Assessment, lengths: Lengths): string {
  const sentences = SENTENCES[assessment.verdict](assessment, lengths);
  const saidAlready = assessment.verdict === "correct-end-float" || assessment.verdict === "no-verdict";
  const first = !saidAlready && endFloatComesFirst(assessment) ? [endFloatFirst(assessment, lengths)] : [];
  return [...first, ...sentences].join(" ");
}

function endFloatFirst({ endFloat, settings }: Assessment, lengths: Lengths): string {
  const found = endFloat === null ? "" : ` of ${estimateWords(endFloat, lengths)},`;
  return `First bring the end float${found} down to ${lengths.position(settings.endFloatAttainable)} at the thrust bearing; no nut removes it.`;
}

function leaveAlone(assessment: Assessment, lengths: Lengths): readonly string[] {
  return [
    `${greatest(assessment, lengths)}: within the limit of ${lengths.position(assessment.settings.limit)}.`,
    "Nut and screw need nothing done.",
  ];
}

function correctEndFloat(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { endFloat, settings } = assessment;
  const share = endFloat === null ? "enough of it" : estimateWords(endFloat, lengths);
  return [
    over(assessment, lengths),
    `Of that, ${share}, is end float of the screw in its thrust bearing.`,
    `Bring the end float down to ${lengths.position(settings.endFloatAttainable)} and the slide comes within the limit; leave the nut as it is.`,
  ];
}

function adjustNut(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { takeUp, settings, tightSpot } = assessment;
  const limited = takeUp.value > settings.takeUpLeft;
  const amount = limited
    ? `the ${lengths.position(settings.takeUpLeft)} that it has left`
    : `${estimateWords(takeUp, lengths)}${Number.isFinite(settings.takeUpLeft) ? "" : ", if it still has as much to take up"}`;
  const stop = `it binds first at the tight spot, at about ${lengths.spot(tightSpot.position)}`;
  return [
    over(assessment, lengths),
    `Take up the nut by ${amount}; ${stop}.`,
    leaves("That", assessment, lengths),
  ];
}

function replaceNuts(assessment: Assessment, lengths: Lengths): readonly string[] {
  return [
    over(assessment, lengths),
    whyNotAdjust(assessment, lengths),
    `${leaves("New nuts cut to fit this screw", assessment, lengths)} Stock nuts add their own clearance to that.`,
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
  const { uneven, afterAdjusting, settings, loosestSpot, tightSpot } = assessment;
  return [
    `Lost motion at about ${lengths.spot(loosestSpot.position)} exceeds that at the tight spot, at about ${lengths.spot(tightSpot.position)}, by ${estimateWords(uneven, lengths)}: the screw has worn unevenly.`,
    `Neither adjusting nor new nuts remove this; they would leave ${estimateWords(afterAdjusting.worst, lengths)}, at about ${lengths.spot(afterAdjusting.position)}, over the limit of ${lengths.position(settings.limit)}.`,
    "Remake the screw, with nuts to match.",
  ];
}

function noVerdict(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { reasons, settings, tightSpot } = assessment;
  const found = `${greatest(assessment, lengths)}, against ${lengths.lostMotion(tightSpot.backlash)} at the tight spot.`;
  if (reasons.includes("holds-load")) {
    return [
      "This screw holds up a load and is a safety part, so no verdict is given: have it inspected by a competent person to the maker's limits and local rules.",
      found,
    ];
  }
  if (reasons.includes("spring-loaded")) {
    return [
      "A spring-loaded nut hides its wear unless the reading force exceeds the spring, so no verdict is given.",
      "Read again with a force that overcomes the spring, and say in the slide's data that it was overcome.",
      found,
    ];
  }
  const perfect = settings.runningClearance + settings.endFloatAttainable;
  return [
    `Parts in perfect order could not meet a limit of ${lengths.position(settings.limit)}: running clearance and attainable end float already come to ${lengths.position(perfect)}.`,
    "Set a limit that can be met.",
    found,
  ];
}

function over(assessment: Assessment, lengths: Lengths): string {
  return `${greatest(assessment, lengths)}: over the limit of ${lengths.position(assessment.settings.limit)}.`;
}

function greatest({ loosestSpot, uncertainty }: Assessment, lengths: Lengths): string {
  const amount = withTolerance(loosestSpot.backlash, uncertainty.expanded, lengths);
  return `At about ${lengths.spot(loosestSpot.position)}, where it is greatest, lost motion is ${amount}`;
}

function leaves(what: string, { afterAdjusting }: Assessment, lengths: Lengths): string {
  return `${what} will leave ${estimateWords(afterAdjusting.worst, lengths)}, where it is worst, at about ${lengths.spot(afterAdjusting.position)}.`;
}
