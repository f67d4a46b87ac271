import { dayNumber } from "../../inspection/dates.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import { hasReadings, surveysByDate } from "../surveysByDate.ts";

/** The surveys with readings since the last repair, by date; all if no repair is known. */
export function sinceLastRepair({ surveys, events = [] }: Inspection): readonly Survey[] {
  const repairs = events
    .filter(({ kind }) => kind !== "other")
    .map(({ date }) => Math.floor(dayNumber(date)));
  const inTime = surveysByDate(surveys).filter(hasReadings);
  if (inTime.at(-1)?.stage === "before-repair") return [];
  const start = inTime.findLastIndex(
    (survey, i) => i > 0 && isRepairedBetween(inTime[i - 1], survey, repairs),
  );
  return inTime.slice(Math.max(0, start));
}

/** According to the stages of the two surveys, or to an event between them. */
function isRepairedBetween(previous: Survey, survey: Survey, repairs: readonly number[]): boolean {
  const [from, to] = [dayNumber(previous.taken), dayNumber(survey.taken)];
  const followsRepair = survey.stage === "after-adjusting" || survey.stage === "after-repair";
  return (
    previous.stage === "before-repair" ||
    (followsRepair && survey.stage !== previous.stage) ||
    repairs.some((day) => day > Math.floor(from) && day <= to)
  );
}

/** Times of the surveys: hours of use if every survey states them, else days since 1970-01-01. */
export function timesOf(series: readonly Survey[]): {
  readonly by: "date" | "hours";
  readonly times: readonly number[];
} {
  const hours = series.flatMap(({ hoursOfUse }) => hoursOfUse ?? []);
  const rising = hours.every((each, i) => i === 0 || each >= hours[i - 1]);
  return hours.length === series.length && rising
    ? { by: "hours", times: hours }
    : { by: "date", times: series.map(({ taken }) => dayNumber(taken)) };
}
