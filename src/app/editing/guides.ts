import type { Draft, Guide } from "../../records/record.ts";

/** How far the entry of a survey station by station is; null where it was not begun. */
export function guideOf(draft: Draft, survey: string): Guide | null {
  return draft.guides?.find((guide) => guide.survey === survey) ?? null;
}

export function withGuide(draft: Draft, guide: Guide): Draft {
  const others = (draft.guides ?? []).filter(({ survey }) => survey !== guide.survey);
  return { ...draft, guides: [...others, guide] };
}
