import { dayNumber } from "../../inspection/dates.ts";
import type { AssessedSurvey } from "../assess.ts";
import { sameIndicator } from "./indicatorError.ts";

/** How two surveys were made comparable, in sentences. */
export function notesOf(from: AssessedSurvey, to: AssessedSurvey): readonly string[] {
  return [
    ...orderNotes(from, to),
    ...methodNotes(from, to),
    ...indicatorNotes(from, to),
    ...endFloatNotes(from, to),
  ];
}

function orderNotes({ survey: from }: AssessedSurvey, { survey: to }: AssessedSurvey): readonly string[] {
  return dayNumber(from.taken) > dayNumber(to.taken)
    ? [`"${from.id}" was taken after "${to.id}": the change is given backwards in time.`]
    : [];
}

function methodNotes(from: AssessedSurvey, to: AssessedSurvey): readonly string[] {
  if (from.asPairs === to.asPairs) return [];
  const pairs = from.asPairs ? from : to;
  return [
    "One survey was read by push–pull and the other as pairs. Uneven drag of the gib lowers the one and raises the other, and can look like a change.",
    pairs.survey.drivePlay === undefined
      ? `The readings of "${pairs.survey.id}" carry the play between handwheel and screw, which was not stated: it is part of the change.`
      : `The play between handwheel and screw was subtracted from the readings of "${pairs.survey.id}", since the others do not carry it.`,
  ];
}

function indicatorNotes({ survey: from }: AssessedSurvey, { survey: to }: AssessedSurvey): readonly string[] {
  const stated = [from, to].some(
    ({ indicator }) => (indicator?.error ?? 0) > 0 || (indicator?.hysteresis ?? 0) > 0,
  );
  if (!stated) return [];
  return sameIndicator(from, to)
    ? ["Both surveys name the same indicator: its error cancels in the change."]
    : [
        "The surveys do not name one and the same indicator, so the stated error of each counts in full towards the change.",
      ];
}

function endFloatNotes(from: AssessedSurvey, to: AssessedSurvey): readonly string[] {
  const without = [from, to].filter((each) => !each.endFloat.measured).map(({ survey }) => `"${survey.id}"`);
  return without.length === 0
    ? []
    : [
        `End float was not measured in ${without.join(" and ")}: the change of the uniform part cannot be divided between nut and thrust bearing.`,
      ];
}
