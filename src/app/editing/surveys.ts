import type { GivenVerdict, Reading, Survey } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";
import { withVerdicts } from "./slideEvents.ts";
import { withoutStepsOf } from "./undo.ts";

/** What a first survey is taken to be. */
export const FIRST_SURVEY = { id: "survey-1", stage: "routine", method: "push-pull" } as const;

/** Today where the reader is, ISO 8601. */
export function today(): string {
  const now = new Date();
  const part = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${part(now.getMonth() + 1)}-${part(now.getDate())}`;
}

/** A survey to follow the given ones: taken today, in the same way as the last. */
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

/** The work without a survey, the verdicts on it and what was typed for it. */
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

/** The work with a survey that was taken away, back in its place with all that was typed for it. */
export function withSurveyRestored(state: EditorState, before: EditorState, id: string): EditorState {
  const at = before.inspection?.surveys.findIndex((survey) => survey.id === id) ?? -1;
  const survey = before.inspection?.surveys[at];
  if (survey === undefined || state.inspection === null) return state;
  return {
    inspection: withVerdicts(
      { ...state.inspection, surveys: state.inspection.surveys.toSpliced(at, 0, survey) },
      verdictsAgain(state.inspection.verdicts ?? [], before.inspection?.verdicts ?? [], id),
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

/** Those of the survey among the others, in the order in which they were given; what was noted since comes last. */
function verdictsAgain(
  now: readonly GivenVerdict[],
  before: readonly GivenVerdict[],
  survey: string,
): readonly GivenVerdict[] {
  const again = before.filter((given) => given.survey === survey || now.includes(given));
  return [...again, ...now.filter((given) => !before.includes(given))];
}
