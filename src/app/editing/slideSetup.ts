import { readingInUnits, slideLengths, surveyLengths } from "../../inspection/metric.ts";
import { readInspection } from "../../inspection/open.ts";
import { merged, type PlainObject, valueAt } from "../../inspection/plainData.ts";
import type { Outcome } from "../../inspection/problem.ts";
import { isPositioning } from "../../inspection/readingShapes.ts";
import { FORMAT, type Inspection, type Reading, VERSION } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { convertLength, lengthUnit, plainUnit } from "../../intake/lengthUnit.ts";
import { type UnitDoubt, unitDoubts } from "../../intake/unitDoubts.ts";
import {
  type EditorState,
  NO_PENDING_INPUT,
  type PendingInput,
  type TypedField,
  type WaitingReadings,
} from "../../records/editorState.ts";
import { fieldAt, SETUP_FIELDS } from "./fieldList.ts";
import { fieldProblemWords, fieldText, readFieldText, withValueOrWithout } from "./fieldText.ts";
import { today } from "./localTime.ts";
import { newId } from "./newId.ts";
import { rowsFrom, withRows } from "./rows.ts";
import { FIRST_SURVEY } from "./surveys.ts";

const DEFAULT_LIMIT: Readonly<Record<Units, string>> = { mm: "0.15", in: "0.006" };

/** The pending input of a new inspection: the units and a usual limit. */
export function newPendingInput(units: Units): PendingInput {
  const fields = [slideField("units", units), slideField("backlashLimit", DEFAULT_LIMIT[units])];
  return { ...NO_PENDING_INPUT, fields };
}

export function setupUnits(draft: PendingInput): Units {
  return setupText(draft, "units") === "in" ? "in" : "mm";
}

/**
 * The pending input in other units. Typed text stays as it is; the offered limit is replaced unless it was changed, and
 * lengths from a log with units of its own are converted.
 */
export function withUnits(draft: PendingInput, units: Units): PendingInput {
  const before = setupUnits(draft);
  const limit = setupText(draft, "backlashLimit");
  const isDefault = limit === "" || limit === DEFAULT_LIMIT[before];
  const changed = withSetupText(draft, "units", units);
  const withLimit = isDefault ? withSetupText(changed, "backlashLimit", DEFAULT_LIMIT[units]) : changed;
  return Object.values(SETUP_FIELDS)
    .filter(
      ({ kind, path }) => kind === "length" && setupText(draft, path) === textOfLog(draft, path, before),
    )
    .reduce((filled, { path }) => withSetupText(filled, path, textOfLog(draft, path, units)), withLimit);
}

/** The text of a setup field, in the given units, from the log that waits; empty if it says nothing. */
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
  /** The problems by the path of their field. */
  | { readonly ok: false; readonly problems: ReadonlyMap<string, string> };

/** The inspection that the setup fields describe, with the readings that wait for it. */
export function describedSlide(draft: PendingInput): SlideDescription {
  const typed = typedSlide(draft);
  if (typed.problems.size > 0) return { ok: false, problems: typed.problems };
  const waiting = waitingIn(draft, setupUnits(draft));
  // Invalid data of the log must not keep the slide from being described.
  const whole = inspectionOf(draft, typed.slide, waiting);
  const valid = whole.ok ? whole : inspectionOf(draft, typed.slide, undefined);
  if (valid.ok) {
    const state = { inspection: valid.value, draft: NO_PENDING_INPUT };
    return { ok: true, state: withRows(state, FIRST_SURVEY.id, rowsFrom(waiting?.readings ?? [])) };
  }
  const { where } = valid.problem;
  const path = where === "slide.travel" ? SETUP_FIELDS.to.path : where.replace(/^slide\./, "");
  return { ok: false, problems: new Map([[path, fieldProblemWords({ ...valid.problem, cure: "" }, path)]]) };
}

function typedSlide(draft: PendingInput): {
  readonly slide: PlainObject;
  readonly problems: ReadonlyMap<string, string>;
} {
  const problems = new Map<string, string>();
  let slide: PlainObject = {};
  for (const { path } of Object.values(SETUP_FIELDS)) {
    const text = setupText(draft, path);
    const read = readFieldText(fieldAt(path), text, setupUnits(draft));
    if (!read.ok) problems.set(path, fieldProblemWords(read.problem, path));
    else if (read.value === undefined) problems.set(path, `${fieldAt(path).label} is needed.`);
    else slide = withValueOrWithout(slide, path, read.value);
  }
  return { slide, problems };
}

/** The waiting readings, and the data that came with them, in the slide's units. */
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
  typed: PlainObject,
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

/** The doubt whether the positions of the readings are in the slide's units, if they make no sense on its travel. */
export function positionUnitDoubt({ slide, surveys }: Inspection): UnitDoubt | undefined {
  const readings = surveys.flatMap((survey) => survey.readings);
  const column = { header: "", as: "position", takenAs: "position", unit: slide.units, why: "" } as const;
  const doubts = unitDoubts({ readings, units: slide.units, columns: [column] }, slide.travel);
  return doubts.find((doubt) => doubt.of === "position");
}

/** The pending input with the positions of the waiting readings taken to be in `unit`. */
export function withPositionsIn(draft: PendingInput, unit: string): PendingInput {
  const { waiting } = draft;
  const from = lengthUnit(unit);
  if (waiting === undefined || from === undefined) return draft;
  const to = plainUnit(setupUnits(draft));
  const moved = (reading: Reading): Reading =>
    isPositioning(reading)
      ? { ...reading, target: convertLength(reading.target, from, to) }
      : { ...reading, position: convertLength(reading.position, from, to) };
  return { ...draft, waiting: { ...waiting, readings: waiting.readings.map(moved) } };
}
