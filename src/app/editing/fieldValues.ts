import { readInspection } from "../../inspection/open.ts";
import { type PlainObject, valueAt } from "../../inspection/plainData.ts";
import type { Outcome } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { EditorState, FieldPlace, TypedField } from "../../records/editorState.ts";
import { fieldAt } from "./fieldList.ts";
import { fieldProblemWords, fieldText, readFieldText, withValueOrWithout } from "./fieldText.ts";

/** What a field shows. */
export interface ShownField {
  readonly text: string;
  /** Why the text is not part of the inspection, in words; empty if it is. */
  readonly problem: string;
}

/**
 * The state with a text typed into a field. It becomes part of the inspection if the inspection is valid with it;
 * otherwise it is pending. Fields that were pending before are tried again.
 */
export function enterField(state: EditorState, place: FieldPlace, text: string): EditorState {
  const pending = [...state.draft.fields.filter((field) => !isAt(field, place)), { ...place, text }];
  if (state.inspection === null) return { ...state, draft: { ...state.draft, fields: pending } };
  let inspection = state.inspection;
  const take = (fields: readonly TypedField[]): boolean => {
    const entered = withFields(inspection, fields);
    if (entered.ok) inspection = entered.value;
    return entered.ok;
  };
  const alone = pending.toReversed().filter((field) => !take([field]));
  // Fields that are valid only together, as the two ends of a range.
  const taken = new Set<TypedField>();
  for (const field of alone) {
    const both = alone.filter((other) => areSiblings(other, field));
    if (both.length > 1 && !taken.has(field) && take(both)) for (const each of both) taken.add(each);
  }
  const refused = alone.filter((field) => !taken.has(field)).toReversed();
  return { inspection, draft: { ...state.draft, fields: refused } };
}

/** The text of a field: what is typed and pending, else its value; and what is wrong with it. */
export function showField(state: EditorState, place: FieldPlace): ShownField {
  const { inspection, draft } = state;
  const typed = draft.fields.find((field) => isAt(field, place));
  if (typed !== undefined) {
    return {
      text: typed.text,
      problem: inspection === null ? "" : whyPending(inspection, typed, draft.fields),
    };
  }
  if (inspection === null) return { text: "", problem: "" };
  const text = fieldText(valueAt(holderOf(inspection, place), place.path));
  return { text, problem: wrongIn(readFieldText(fieldAt(place.path), text, inspection.slide.units), place) };
}

function isAt(field: TypedField, place: FieldPlace): boolean {
  return field.survey === place.survey && field.path === place.path;
}

/** Whether two fields belong to one part of the slide or survey. */
function areSiblings(one: FieldPlace, other: FieldPlace): boolean {
  const partOf = ({ path }: FieldPlace): string => path.slice(0, path.lastIndexOf(".") + 1);
  return one.survey === other.survey && partOf(one) !== "" && partOf(one) === partOf(other);
}

/** Why a text is pending, even with the pending fields of its part. */
function whyPending(inspection: Inspection, typed: TypedField, pending: readonly TypedField[]): string {
  const { units } = inspection.slide;
  const others = pending.filter(
    (field) =>
      field !== typed &&
      areSiblings(field, typed) &&
      readFieldText(fieldAt(field.path), field.text, units).ok,
  );
  return wrongIn(withFields(inspection, [typed, ...others]), typed);
}

function wrongIn(read: Outcome<unknown>, { path }: FieldPlace): string {
  return read.ok ? "" : fieldProblemWords(read.problem, path);
}

/** The inspection with the fields as typed, or why it is not valid. */
function withFields(inspection: Inspection, fields: readonly TypedField[]): Outcome<Inspection> {
  let { slide, surveys }: { slide: PlainObject; surveys: readonly PlainObject[] } = inspection;
  for (const { survey: of, path, text } of fields) {
    const read = readFieldText(fieldAt(path), text, inspection.slide.units);
    if (!read.ok) return read;
    if (of === null) slide = withValueOrWithout(slide, path, read.value);
    else
      surveys = surveys.map((survey) =>
        survey.id === of ? withValueOrWithout(survey, path, read.value) : survey,
      );
  }
  const outcome = readInspection({ ...inspection, slide, surveys });
  // The cure is about correcting a file.
  return outcome.ok ? outcome : { ok: false, problem: { ...outcome.problem, cure: "" } };
}

function holderOf(inspection: Inspection, { survey }: FieldPlace): object {
  return survey === null ? inspection.slide : (inspection.surveys.find(({ id }) => id === survey) ?? {});
}
