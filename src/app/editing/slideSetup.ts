import { readingInUnits, slideLengths, surveyLengths } from "../../inspection/metric.ts";
import { readInspection } from "../../inspection/open.ts";
import { merged, type Plain, valueAt } from "../../inspection/parts.ts";
import type { Outcome } from "../../inspection/problem.ts";
import { FORMAT, type Inspection, VERSION } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import {
  type EditorState,
  NO_PENDING_INPUT,
  type PendingInput,
  type TypedField,
  type WaitingReadings,
} from "../../records/editorState.ts";
import { fieldAt, SETUP_FIELDS } from "./fieldList.ts";
import { fieldProblemWords } from "./fieldWords.ts";
import { newId } from "./newId.ts";
import { withValueOrWithout } from "./places.ts";
import { rowsFrom, withRows } from "./rows.ts";
import { FIRST_SURVEY, today } from "./surveys.ts";
import { fieldText, readFieldText } from "./typedValue.ts";

const OFFERED_LIMIT: Readonly<Record<Units, string>> = { mm: "0.15", in: "0.006" };

/** What a new inspection starts with. */
export function newPendingInput(units: Units): PendingInput {
  const fields = [slideField("units", units), slideField("backlashLimit", OFFERED_LIMIT[units])];
  return { ...NO_PENDING_INPUT, fields };
}

export function setupUnits(draft: PendingInput): Units {
  return setupText(draft, "units") === "in" ? "in" : "mm";
}

/**
 * The draft in other units. The limit on offer follows them as long as it was not changed, and so does what a log says
 * of the slide in units of its own; what was typed stays as typed.
 */
export function withUnits(draft: PendingInput, units: Units): PendingInput {
  const before = setupUnits(draft);
  const limit = setupText(draft, "backlashLimit");
  const isOffered = limit === "" || limit === OFFERED_LIMIT[before];
  const changed = withSetupText(draft, "units", units);
  const offered = isOffered ? withSetupText(changed, "backlashLimit", OFFERED_LIMIT[units]) : changed;
  return Object.values(SETUP_FIELDS)
    .filter(
      ({ kind, path }) => kind === "length" && setupText(draft, path) === textOfLog(draft, path, before),
    )
    .reduce((filled, { path }) => withSetupText(filled, path, textOfLog(draft, path, units)), offered);
}

/** What a log that is waiting says at a place of the slide, as it stands in a field of the given units. */
function textOfLog({ waiting }: PendingInput, path: string, units: Units): string {
  if (waiting?.units === undefined) return "";
  return fieldText(valueAt(slideLengths(waiting.slide, waiting.units, units), path));
}

export function setupText(draft: PendingInput, path: string): string {
  return draft.fields.find((field) => field.survey === null && field.path === path)?.text ?? "";
}

export function withSetupText(draft: PendingInput, path: string, text: string): PendingInput {
  const others = draft.fields.filter((field) => field.survey !== null || field.path !== path);
  return { ...draft, fields: [...others, slideField(path, text)] };
}

export type SlideDescription =
  | { readonly ok: true; readonly state: EditorState }
  /** What is wrong or missing, by field. */
  | { readonly ok: false; readonly problems: ReadonlyMap<string, string> };

/** The inspection that the draft describes, with the readings that were waiting for it. */
export function describedSlide(draft: PendingInput): SlideDescription {
  const typed = typedSlide(draft);
  if (typed.problems.size > 0) return { ok: false, problems: typed.problems };
  const waiting = waitingIn(draft, setupUnits(draft));
  // What a log says besides is taken where it is sound, and never stands in the way.
  const whole = inspectionOf(draft, typed.slide, waiting);
  const sound = whole.ok ? whole : inspectionOf(draft, typed.slide, undefined);
  if (sound.ok) {
    const state = { inspection: sound.value, draft: NO_PENDING_INPUT };
    return { ok: true, state: withRows(state, FIRST_SURVEY.id, rowsFrom(waiting?.readings ?? [])) };
  }
  const { where } = sound.problem;
  const path = where === "slide.travel" ? SETUP_FIELDS.to.path : where.replace(/^slide\./, "");
  return { ok: false, problems: new Map([[path, fieldProblemWords({ ...sound.problem, cure: "" }, path)]]) };
}

function typedSlide(draft: PendingInput): {
  readonly slide: Plain;
  readonly problems: ReadonlyMap<string, string>;
} {
  const problems = new Map<string, string>();
  let slide: Plain = {};
  for (const { path } of Object.values(SETUP_FIELDS)) {
    const text = setupText(draft, path);
    const read = readFieldText(fieldAt(path), text, setupUnits(draft));
    if (!read.ok) problems.set(path, fieldProblemWords(read.problem, path));
    else if (read.value === undefined) problems.set(path, `${fieldAt(path).label} is needed.`);
    else slide = withValueOrWithout(slide, path, read.value);
  }
  return { slide, problems };
}

/** The readings that wait, and what came with them, in the units that the slide is described in. */
function waitingIn({ waiting }: PendingInput, units: Units): WaitingReadings | undefined {
  if (waiting?.units === undefined || waiting.units === units) return waiting;
  const { units: from, method } = waiting;
  return {
    ...waiting,
    units,
    readings: waiting.readings.map((reading) => readingInUnits(reading, method, from, units)),
    slide: slideLengths(waiting.slide, from, units),
    survey: surveyLengths(waiting.survey, from, units),
  };
}

function inspectionOf(
  draft: PendingInput,
  typed: Plain,
  { slide = {}, survey = {}, others = {} }: Partial<WaitingReadings> = {},
): Outcome<Inspection> {
  const name = `Slide ${setupText(draft, "travel.from")} to ${setupText(draft, "travel.to")} ${setupUnits(draft)}`;
  const method = draft.waiting?.method ?? FIRST_SURVEY.method;
  return readInspection({
    ...others,
    format: FORMAT,
    version: VERSION,
    slide: { ...merged({ name, ...slide }, typed), id: `slide-${newId()}` },
    surveys: [
      { ...merged({ ...FIRST_SURVEY, taken: today() }, survey), id: FIRST_SURVEY.id, method, readings: [] },
    ],
  });
}

function slideField(path: string, text: string): TypedField {
  return { survey: null, path, text };
}
