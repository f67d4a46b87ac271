import type { Outcome } from "../inspection/problem.ts";
import type { Inspection } from "../inspection/schema.ts";
import { type AssessedSurvey, assessWithDraws } from "./assess.ts";

/** How a survey of an inspection is assessed. */
export type Assess = (inspection: Inspection, surveyId: string) => Outcome<AssessedSurvey>;

interface Remembered {
  /** Slide and survey as they were. */
  readonly asked: string;
  readonly assessed: Outcome<AssessedSurvey>;
}

/** Assesses like `assessWithDraws`, but a survey again only where it or the slide has changed. */
export function assessOnce(): Assess {
  const memory = new Map<string, Remembered>();
  return (inspection, surveyId) => {
    const survey = inspection.surveys.find(({ id }) => id === surveyId);
    for (const id of memory.keys()) if (inspection.surveys.every((each) => each.id !== id)) memory.delete(id);
    const asked = JSON.stringify([inspection.slide, survey]);
    const remembered = memory.get(surveyId);
    if (remembered?.asked === asked) return remembered.assessed;
    const assessed = assessWithDraws(inspection, surveyId);
    if (survey !== undefined) memory.set(surveyId, { asked, assessed });
    return assessed;
  };
}
