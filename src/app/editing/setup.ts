import { readInspection } from "../../inspection/open.ts";
import { merged, type Plain } from "../../inspection/parts.ts";
import type { Outcome } from "../../inspection/problem.ts";
import { FORMAT, type Inspection, VERSION } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { type Draft, EMPTY_DRAFT, type TypedField, type Work } from "../../records/record.ts";
import { fieldAt, SETUP_FIELDS } from "./fieldList.ts";
import { withOrWithout } from "./places.ts";
import { rowsFrom, withRows } from "./rows.ts";
import { FIRST_SURVEY, today } from "./surveys.ts";
import { readTyped } from "./typed.ts";

const OFFERED_LIMIT: Readonly<Record<Units, string>> = { mm: "0.15", in: "0.006" };

/** What a new inspection starts with. */
export function newDraft(units: Units): Draft {
  const fields = [slideField("units", units), slideField("backlashLimit", OFFERED_LIMIT[units])];
  return { ...EMPTY_DRAFT, fields };
}

export function setupUnits(draft: Draft): Units {
  return setupText(draft, "units") === "in" ? "in" : "mm";
}

/** The draft in other units: the limit on offer follows them as long as it was not changed. */
export function withUnits(draft: Draft, units: Units): Draft {
  const limit = setupText(draft, "backlashLimit");
  const isOffered = limit === "" || limit === OFFERED_LIMIT[setupUnits(draft)];
  const changed = withSetupText(draft, "units", units);
  return isOffered ? withSetupText(changed, "backlashLimit", OFFERED_LIMIT[units]) : changed;
}

export function setupText(draft: Draft, path: string): string {
  return draft.fields.find((field) => field.survey === null && field.path === path)?.text ?? "";
}

export function withSetupText(draft: Draft, path: string, text: string): Draft {
  const others = draft.fields.filter((field) => field.survey !== null || field.path !== path);
  return { ...draft, fields: [...others, slideField(path, text)] };
}

export type Described =
  | { readonly ok: true; readonly work: Work }
  /** What is wrong or missing, by field. */
  | { readonly ok: false; readonly problems: ReadonlyMap<string, string> };

/** The inspection that the draft describes, with the readings that were waiting for it. */
export function describe(draft: Draft): Described {
  const typed = typedSlide(draft);
  if (typed.problems.size > 0) return { ok: false, problems: typed.problems };
  const { waiting } = draft;
  // What a log says besides is taken where it is sound, and never stands in the way.
  const whole = inspectionOf(draft, typed.slide, waiting?.slide ?? {}, waiting?.survey ?? {});
  const sound = whole.ok ? whole : inspectionOf(draft, typed.slide, {}, {});
  if (sound.ok) {
    const work = { inspection: sound.value, draft: EMPTY_DRAFT };
    return { ok: true, work: withRows(work, FIRST_SURVEY.id, rowsFrom(waiting?.readings ?? [])) };
  }
  const { where, what } = sound.problem;
  const path = where === "slide.travel" ? SETUP_FIELDS.to.path : where.replace(/^slide\./, "");
  return { ok: false, problems: new Map([[path, what]]) };
}

function typedSlide(draft: Draft): { readonly slide: Plain; readonly problems: ReadonlyMap<string, string> } {
  const problems = new Map<string, string>();
  let slide: Plain = {};
  for (const { path } of Object.values(SETUP_FIELDS)) {
    const text = setupText(draft, path);
    const read = readTyped(fieldAt(path), text, setupUnits(draft));
    if (!read.ok) problems.set(path, `${read.problem.what}. ${read.problem.cure}`);
    else if (read.value === undefined) problems.set(path, "is needed");
    else slide = withOrWithout(slide, path, read.value);
  }
  return { slide, problems };
}

function inspectionOf(draft: Draft, typed: Plain, slide: Plain, survey: Plain): Outcome<Inspection> {
  const name = `Slide ${setupText(draft, "travel.from")} to ${setupText(draft, "travel.to")} ${setupUnits(draft)}`;
  const method = draft.waiting?.method ?? FIRST_SURVEY.method;
  return readInspection({
    format: FORMAT,
    version: VERSION,
    slide: { ...merged({ name, ...slide }, typed), id: "slide" },
    surveys: [
      { ...merged({ ...FIRST_SURVEY, taken: today() }, survey), id: FIRST_SURVEY.id, method, readings: [] },
    ],
  });
}

function slideField(path: string, text: string): TypedField {
  return { survey: null, path, text };
}
