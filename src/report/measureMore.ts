import { ACTIONS, type Assessment, type NextReading, type Reason } from "../analysis/assessment.ts";
import { LEAST_STATIONS } from "../inspection/leastStations.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { actionWords, excessPlay } from "./outsidePlay.ts";
import { allOf, anyOf, estimateWords, inAHundred } from "./words.ts";

/** Actions less likely than this are not named beside the likeliest. */
const WORTH_NAMING = 0.05;

/** Checks whose message stands alone: chances and further places rest on the value that they question. */
const DOUBTS = ["end float larger than lost motion", "drive play larger than lost motion"];

/** Why there is no verdict yet, what is likeliest so far, and what to do next, in sentences. */
export function measureMoreSentences(assessment: Assessment, lengths: Lengths): readonly string[] {
  const chief = assessment.reasons[0];
  const why = chief === undefined ? [] : [whySentence(chief, assessment, lengths)];
  const doubts = assessment.checks
    .filter(({ check }) => DOUBTS.includes(check))
    .map(({ message }) => message);
  if (doubts.length > 0) return [...new Set([...why, ...doubts])];
  return [
    ...why,
    ...soFar(assessment),
    ...(chief === "at-the-limit"
      ? [reversibleStep(assessment)]
      : whatToRead(assessment.nextReadings, lengths)),
  ];
}

function whySentence(reason: Reason, assessment: Assessment, lengths: Lengths): string {
  const { stations, checks, settings, greatest } = assessment;
  switch (reason) {
    case "coverage":
      return stations.length < LEAST_STATIONS
        ? `There ${stations.length === 1 ? "is 1 station" : `are ${stations.length} stations`}, and a verdict needs at least ${LEAST_STATIONS}.`
        : `Some of the working range is farther than the nut's length, ${lengths.position(settings.engagedLength)}, from every station.`;
    case "unread-end":
      return `An end of the travel has no reading within half the nut's length, ${lengths.position(settings.engagedLength / 2)}, and an unread end may be the tight spot.`;
    case "checks":
      return checks.find(({ severity }) => severity === "stop")?.message ?? "A check on the readings failed.";
    case "end-float-unmeasured":
      return "Lost motion exceeds the limit by no more than the end float may come to, and the end float was not measured.";
    case "at-the-limit":
      return `This sits so close to the limit of ${lengths.position(settings.limit)} that further readings cannot be expected to settle it${finerWould(assessment)}.`;
    default:
      return `Lost motion is ${estimateWords(greatest, lengths)}, where it is greatest, against a limit of ${lengths.position(settings.limit)}, and the readings do not yet say which step is right.`;
  }
}

/** Finer graduations help where rounding, rectangular over a graduation, exceeds the scatter of the readings. */
function finerWould({ resolution, repeatability }: Assessment): string {
  return resolution / Math.sqrt(12) > repeatability
    ? "; readings with an indicator of finer graduations may"
    : "";
}

function soFar(assessment: Assessment): readonly string[] {
  const { chances, likeliest } = assessment;
  if (chances === null || likeliest === null) return [];
  const others = ACTIONS.filter((action) => action !== likeliest && chances[action] >= WORTH_NAMING)
    .sort((a, b) => chances[b] - chances[a])
    .map((action) => `${actionWords(action, assessment)} (${inAHundred(chances[action])})`);
  const besides = others.length === 0 ? "" : `; it could also be ${anyOf(others)}`;
  return [
    `Likeliest so far: ${actionWords(likeliest, assessment)} (chance ${inAHundred(chances[likeliest])})${besides}.`,
  ];
}

/** The step that can be undone; none on a slide that is likeliest in order. */
function reversibleStep(assessment: Assessment): string {
  const { likeliest, settings } = assessment;
  if (likeliest === "correct-end-float" || excessPlay(assessment).length > 0) {
    const step = actionWords("correct-end-float", assessment);
    return `First ${step}, which can be undone, and read again.`;
  }
  if (likeliest === "leave-alone")
    return "Leave it as it is for now, and read again after some hours of use.";
  return settings.adjustable
    ? "First adjust the nut, which can be undone, and read again."
    : "Read again after some hours of use, before parts are made.";
}

function whatToRead(next: readonly NextReading[], lengths: Lengths): readonly string[] {
  const places = next.map((reading) =>
    "endFloat" in reading ? "the end float" : `at about ${lengths.spot(reading.position)}`,
  );
  if (places.length === 0) return [];
  return [`Read next ${allOf(places)}.`];
}
