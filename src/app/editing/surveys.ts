import type { GivenVerdict, Reading, Survey } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";
import { STAGES } from "./fieldList.ts";
import { dayOf, today } from "./localTime.ts";
import { withVerdicts } from "./slideEvents.ts";
import { withoutStepsOf } from "./undo.ts";

/** The defaults of the first survey. */
export const FIRST_SURVEY = { id: "survey-1", stage: "routine", method: "push-pull" } as const;

/** A new survey after the given ones: taken today, with the last one's stage, method and instruments. */
export function nextSurvey(surveys: readonly Survey[], readings: readonly Reading[] = []): Survey {
  const last = surveys.at(-1);
  const taken = new Set(surveys.map(({ id }) => id));
  let number = surveys.length + 1;
  while (taken.has(`survey-${number}`)) number += 1;
  return {
    ...FIRST_SURVEY,
    ...(last && { stage: last.stage, method: last.method }),
    ...(last?.indicator && { indicator: last.indicator }),
    ...(last?.dial && { dial: last.dial }),
    id: `survey-${number}`,
    taken: today(),
    readings,
  };
}

export function withSurvey(state: EditorState, survey: Survey): EditorState {
  if (state.inspection === null) return state;
  return { ...state, inspection: { ...state.inspection, surveys: [...state.inspection.surveys, survey] } };
}

/** The state without a survey, its verdicts and its pending input. */
export function withoutSurvey({ inspection, draft }: EditorState, id: string): EditorState {
  return {
    inspection:
      inspection &&
      withVerdicts(
        { ...inspection, surveys: inspection.surveys.filter((survey) => survey.id !== id) },
        inspection.verdicts?.filter(({ survey }) => survey !== id),
      ),
    draft: {
      ...draft,
      fields: draft.fields.filter((field) => field.survey !== id),
      rows: draft.rows.filter((row) => row.survey !== id),
      guides: (draft.guides ?? []).filter((guide) => guide.survey !== id),
      steps: withoutStepsOf(draft.steps, id),
    },
  };
}

/** The state with a deleted survey back in its place, with its verdicts and its pending input. */
export function withSurveyRestored(state: EditorState, before: EditorState, id: string): EditorState {
  const at = before.inspection?.surveys.findIndex((survey) => survey.id === id) ?? -1;
  const survey = before.inspection?.surveys[at];
  if (survey === undefined || state.inspection === null) return state;
  return {
    inspection: withVerdicts(
      { ...state.inspection, surveys: state.inspection.surveys.toSpliced(at, 0, survey) },
      verdictsRestored(state.inspection.verdicts ?? [], before.inspection?.verdicts ?? [], id),
    ),
    draft: {
      ...state.draft,
      fields: [...state.draft.fields, ...before.draft.fields.filter((field) => field.survey === id)],
      rows: [...state.draft.rows, ...before.draft.rows.filter((row) => row.survey === id)],
      guides: [
        ...(state.draft.guides ?? []),
        ...(before.draft.guides ?? []).filter((guide) => guide.survey === id),
      ],
    },
  };
}

/** The verdicts with those of the survey back in their order; verdicts noted since come last. */
function verdictsRestored(
  now: readonly GivenVerdict[],
  before: readonly GivenVerdict[],
  survey: string,
): readonly GivenVerdict[] {
  const again = before.filter((given) => given.survey === survey || now.includes(given));
  return [...again, ...now.filter((given) => !before.includes(given))];
}

/** The name of a survey in lists: its date and stage. */
export function surveyName({ taken, stage }: Survey): string {
  const words = STAGES.find(([value]) => value === stage)?.[1] ?? stage;
  return `${dayOf(taken)}, ${words.toLowerCase()}`;
}
