import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { hasReadings, surveysByDate } from "../surveysByDate.ts";

/** The ids of the two surveys to compare; one that is left out is chosen. */
export interface SurveyChoice {
  readonly from?: string | undefined;
  readonly to?: string | undefined;
}

/** The ids of the earlier and the later survey. */
export interface SurveyPair {
  readonly from: string;
  readonly to: string;
}

/**
 * The two surveys to compare. If not named: the latest, and the last one before it that was taken before a repair, else
 * the first; surveys without readings are skipped. Fails if a named survey does not exist, or there are no two.
 */
export function chooseSurveys({ surveys }: Inspection, choice: SurveyChoice): Outcome<SurveyPair> {
  const inTime = surveysByDate(surveys);
  const ids = inTime.map(({ id }) => id);
  for (const id of [choice.from, choice.to]) {
    if (id !== undefined && !ids.includes(id)) {
      const known = ids.join(", ") || "none";
      return failed("", `there is no survey "${id}" of this slide`, `Its surveys: ${known}.`);
    }
  }
  const read = inTime.filter(hasReadings);
  const to = choice.to ?? read.findLast(({ id }) => id !== choice.from)?.id;
  const others = read.filter(({ id }) => id !== to);
  const earlier = to === undefined ? [] : others.filter(({ id }) => ids.indexOf(id) < ids.indexOf(to));
  const before = earlier.findLast(({ stage }) => stage === "before-repair");
  const from = choice.from ?? (before ?? others[0])?.id;
  if (from === undefined || to === undefined) {
    return failed(
      "",
      `there ${read.length === 1 ? "is only one survey" : "are no surveys"} with readings of this slide, and comparing takes two`,
      "Survey the slide again, and give the file with both surveys or both files.",
    );
  }
  if (from === to) {
    return failed("", `the survey "${from}" would be compared with itself`, "Name two different surveys.");
  }
  return succeeded({ from, to });
}
