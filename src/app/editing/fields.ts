import { readInspection } from "../../inspection/open.ts";
import { type Plain, valueAt } from "../../inspection/parts.ts";
import { failed, type Outcome, type Problem } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { Place, TypedField, Work } from "../../records/record.ts";
import { fieldAt } from "./fieldList.ts";
import { withOrWithout } from "./places.ts";
import { readTyped, typedFrom } from "./typed.ts";

/** A field as it is to be shown. */
export interface ShownField {
  readonly text: string;
  /** Why what was typed is not part of the inspection. */
  readonly problem: Problem | null;
}

/**
 * Takes what was typed into a field. It becomes part of the inspection as soon as it fits, and whatever else was
 * typed before and did not fit is tried again; until then it is kept as typed.
 */
export function enterField(work: Work, place: Place, text: string): Work {
  const waiting = [...work.draft.fields.filter((field) => !isAt(field, place)), { ...place, text }];
  if (work.inspection === null) return { ...work, draft: { ...work.draft, fields: waiting } };
  let inspection = work.inspection;
  const refused = [...waiting].reverse().filter((field) => {
    const entered = withField(inspection, field);
    if (entered.ok) inspection = entered.value;
    return !entered.ok;
  });
  return { inspection, draft: { ...work.draft, fields: refused.reverse() } };
}

/** What a field shows: what was typed and does not fit yet, else its value. */
export function showField(work: Work, place: Place): ShownField {
  const typed = work.draft.fields.find((field) => isAt(field, place));
  if (typed !== undefined) {
    const entered = work.inspection === null ? null : withField(work.inspection, typed);
    return { text: typed.text, problem: entered === null || entered.ok ? null : entered.problem };
  }
  if (work.inspection === null) return { text: "", problem: null };
  const text = typedFrom(valueAt(holderOf(work.inspection, place), place.path));
  const read = readTyped(fieldAt(place.path), text, work.inspection.slide.units);
  return { text, problem: read.ok ? null : read.problem };
}

function isAt(field: TypedField, place: Place): boolean {
  return field.survey === place.survey && field.path === place.path;
}

/** The inspection with a field as typed, or why it does not fit. */
function withField(inspection: Inspection, typed: TypedField): Outcome<Inspection> {
  const read = readTyped(fieldAt(typed.path), typed.text, inspection.slide.units);
  if (!read.ok) return read;
  const change = (holder: Plain): Plain => withOrWithout(holder, typed.path, read.value);
  const changed =
    typed.survey === null
      ? { ...inspection, slide: change(inspection.slide) }
      : {
          ...inspection,
          surveys: inspection.surveys.map((survey) => (survey.id === typed.survey ? change(survey) : survey)),
        };
  const outcome = readInspection(changed);
  return outcome.ok ? outcome : failed("", inWordsOfTheField(outcome.problem, typed.path), "");
}

/** A problem that names a place elsewhere keeps its place; one of this very field needs none. */
function inWordsOfTheField({ where, what }: Problem, path: string): string {
  return where.endsWith(path) ? what : `${where.replace(/^slide\.|^surveys\[\d+\]\.?/, "")} ${what}`;
}

function holderOf(inspection: Inspection, { survey }: Place): object {
  return survey === null ? inspection.slide : (inspection.surveys.find(({ id }) => id === survey) ?? {});
}
