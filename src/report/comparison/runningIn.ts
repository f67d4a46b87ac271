import type { RunningIn, TooFewSurveys } from "../../analysis/runningIn/runningIn.ts";
import type { TrendKind } from "../../analysis/runningIn/trendShapes.ts";
import { dateOfDay } from "../../inspection/dates.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { runningInPicture } from "../../picture/runningIn/runningInPicture.ts";
import { runningInSvg } from "../../picture/runningIn/runningInSvg.ts";
import { estimateWords, inAHundred } from "../words.ts";
import type { ComparisonPart } from "./compared.ts";

/** How the uniform part has grown since the last repair, and when to look again; or that it is too early to say. */
export const runningIn: ComparisonPart = ({ history, inspection: { slide } }) => {
  if (!("trend" in history)) {
    if (history.surveys < 2) return null;
    return { title: "Running in", blocks: [{ kind: "paragraph", text: tooLittleWords(history) }] };
  }
  const lengths = lengthsIn(slide.units, history.resolution);
  const { by, surveys } = history;
  const picture = runningInPicture(history, slide.units);
  return {
    title: "Running in",
    blocks: [
      { kind: "paragraph", text: runningInSummary(history, lengths) },
      { kind: "picture", title: picture.title, svg: (setting) => runningInSvg(picture, setting) },
      {
        kind: "table",
        caption: "The uniform part, survey by survey.",
        columns: [by === "date" ? "Date" : "Hours of use", "Survey", "Uniform part"].map((name) => ({
          name,
          holds: "words",
        })),
        rows: surveys.map(({ at, survey, uniform }) => ({
          cells: [timeWords(at, by), survey, estimateWords(uniform, lengths)],
        })),
      },
    ],
  };
};

const COURSE: Readonly<Record<TrendKind, string>> = {
  constant: "it does not grow",
  steady: "it grows at a steady rate",
  settling: "it grew fast at first and levels off",
  slowing: "it grew fast at first and grows ever more slowly",
  "settling-then-steady": "it grew fast at first and now grows at a steady rate",
};

/** From this chance on, the likeliest course is stated as the one found. */
const STATED_FROM = 0.6;

/** The trend since the last repair in a few plain sentences. */
export function runningInSummary(runningIn: RunningIn, lengths: Lengths): string {
  return [
    growthSentence(runningIn, lengths),
    courseSentence(runningIn),
    limitSentence(runningIn, lengths),
    lookAgainSentence(runningIn),
  ].join(" ");
}

/** Why there is no trend yet. */
export function tooLittleWords({ surveys, why }: TooFewSurveys): string {
  return why === "times"
    ? "The surveys since the last repair were taken at fewer than three different times: too few to tell a trend."
    : `A trend takes three surveys since the last repair; there ${surveys === 1 ? "is one" : `are ${surveys === 0 ? "none" : surveys}`}.`;
}

/** A time of the trend: a date, or hours of use. */
export function timeWords(at: number, by: RunningIn["by"]): string {
  return by === "date" ? dateOfDay(at) : `${Math.round(at)} h of use`;
}

function growthSentence({ growth, surveys, by }: RunningIn, lengths: Lengths): string {
  const [first, last] = [surveys[0], surveys.at(-1)].map((point) => timeWords(point?.at ?? 0, by));
  const over = `Over ${surveys.length} surveys since the last repair, from ${first} to ${last}, the uniform part`;
  return lengths.figure(growth.low) === lengths.figure(0)
    ? `${over} has not grown as far as the readings show, by ${lengths.lostMotion(growth.high)} at most.`
    : `${over} grew by ${estimateWords(growth, lengths)}.`;
}

function courseSentence({ chances, likeliest }: RunningIn): string {
  const chance = chances[likeliest];
  return chance >= STATED_FROM
    ? `According to them, ${COURSE[likeliest]} (${inAHundred(chance)}).`
    : `They do not show yet how it goes on; most likely ${COURSE[likeliest]} (${inAHundred(chance)}).`;
}

function limitSentence({ limit, limitReached, by, surveys }: RunningIn, lengths: Lengths): string {
  const { value, low, high, chanceAlready, horizon } = limitReached;
  const words = lengths.position(limit);
  const lastAt = surveys.at(-1)?.at ?? 0;
  const time = (at: number): string => timeWords(at, by);
  if (chanceAlready >= 0.5) {
    return `The limit of ${words} is reached already, where lost motion is greatest (${inAHundred(chanceAlready)}).`;
  }
  if (low === null) {
    return `The limit of ${words} is not expected to be reached before ${time(horizon)}; the trend is not extended beyond that.`;
  }
  const earliest = low <= lastAt ? `already (${inAHundred(chanceAlready)})` : `from ${time(low)} on`;
  const likeliest = value === null ? "" : `, most likely about ${time(value)}`;
  const latest = high === null ? `perhaps not before ${time(horizon)}` : `by ${time(high)} at the latest`;
  return `Where lost motion is greatest, the limit of ${words} may be reached ${earliest}${likeliest}, and ${latest}.`;
}

function lookAgainSentence({ lookAgain: { at, why }, by }: RunningIn): string {
  switch (why) {
    case "now":
      return "Survey again now: the limit may have been reached.";
    case "limit":
      return `Survey again by ${timeWords(at, by)}, when the chance that the limit is reached comes to 5 in 100.`;
    case "watched":
      return `Survey again by ${timeWords(at, by)}: the trend reaches no further ahead than it was watched so far.`;
  }
}
