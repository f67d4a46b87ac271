import type { GuideState, PendingInput } from "../../records/editorState.ts";

/** How far the entry of a survey station by station is; null where it was not begun. */
export function guideOfSurvey(draft: PendingInput, survey: string): GuideState | null {
  return draft.guides?.find((guide) => guide.survey === survey) ?? null;
}

export function withGuide(draft: PendingInput, guide: GuideState): PendingInput {
  const others = (draft.guides ?? []).filter(({ survey }) => survey !== guide.survey);
  return { ...draft, guides: [...others, guide] };
}
