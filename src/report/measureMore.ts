import { ACTIONS, type Assessment, type NextReading, type Reason } from "../analysis/assessment.ts";
import { LEAST_STATIONS } from "../analysis/coverage.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { ACTION_WORDS, inAHundred } from "./words.ts";

/** An action less likely than this is not worth naming beside the likeliest. */
const WORTH_NAMING = 0.05;

/** Why there is no verdict yet, what it looks like so far, and what to do next. */
export function measureMoreSentences(assessment: Assessment, lengths: Lengths): readonly string[] {
  const chief = assessment.reasons[0];
  return [
    ...(chief === undefined ? [] : [whySentence(chief, assessment, lengths)]),
    ...soFar(assessment),
    ...(chief === "at-the-limit"
      ? [reversibleStep(assessment)]
      : whatToRead(assessment.nextReadings, lengths)),
  ];
}

function whySentence(reason: Reason, assessment: Assessment, lengths: Lengths): string {
  const { stations, checks, settings, loosestSpot } = assessment;
  switch (reason) {
    case "coverage":
      return stations.length < LEAST_STATIONS
        ? `There are ${stations.length} stations, and a verdict needs at least ${LEAST_STATIONS}.`
        : `Some of the working range is farther than the nut's length, ${lengths.position(settings.engagedLength)}, from every station.`;
    case "unread-end":
      return `An end of the travel has no reading within half the nut's length, ${lengths.position(settings.engagedLength / 2)}, and an unread end may be the tight spot.`;
    case "checks":
      return checks.find(({ severity }) => severity === "stop")?.message ?? "A check on the readings failed.";
    case "at-the-limit":
      return `This sits so close to the limit of ${lengths.position(settings.limit)} that further readings cannot be expected to settle it.`;
    default:
      return `Lost motion is ${lengths.lostMotion(loosestSpot.backlash)} where it is greatest against a limit of ${lengths.position(settings.limit)}, and the readings do not yet say which step is right.`;
  }
}

function soFar({ chances, likeliest }: Assessment): readonly string[] {
  if (chances === null || likeliest === null) return [];
  const others = ACTIONS.filter((action) => action !== likeliest && chances[action] >= WORTH_NAMING)
    .sort((a, b) => chances[b] - chances[a])
    .map((action) => `${ACTION_WORDS[action]} (${inAHundred(chances[action])})`);
  const besides = others.length === 0 ? "" : `; it could also be ${others.join(" or ")}`;
  return [
    `Likeliest so far: ${ACTION_WORDS[likeliest]} (chance ${inAHundred(chances[likeliest])})${besides}.`,
  ];
}

/** What can be undone comes before what cannot. */
function reversibleStep({ endFloat, settings }: Assessment): string {
  const endFloatInOrder = endFloat !== null && endFloat.value <= settings.endFloatAttainable;
  if (!endFloatInOrder) return "Correct the end float first, which can be undone, and read again.";
  return settings.adjustable
    ? "Adjust the nut first, which can be undone, and read again."
    : "Read again after some hours of use, before parts are made.";
}

function whatToRead(next: readonly NextReading[], lengths: Lengths): readonly string[] {
  const places = next.map((reading) =>
    "endFloat" in reading ? "the end float" : `at about ${lengths.spot(reading.position)}`,
  );
  if (places.length === 0) return [];
  const last = places.at(-1);
  const list = places.length === 1 ? last : `${places.slice(0, -1).join(", ")} and ${last}`;
  return [`Read next ${list}.`];
}
