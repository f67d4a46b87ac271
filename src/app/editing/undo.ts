import type { Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import {
  type EditorState,
  guideOf,
  type TypedRow,
  type UndoStep,
  type UndoSteps,
  withGuide,
} from "../../records/editorState.ts";
import { enterField } from "./fieldValues.ts";
import { blankRow, type Row, readRow, withRows } from "./rows.ts";
import { sameEvents, withEvents } from "./slideEvents.ts";

export const NO_STEPS: UndoSteps = { done: [], undone: [] };

/** The oldest steps beyond this number of steps, or of rows in all of them, are dropped. */
const MAX_STEPS = 300;
const MAX_ROWS = 3000;

/**
 * The steps with one more. Steps undone before can no longer be redone.
 *
 * @param goesOn whether it continues the last step, as the next key in the same cell does
 */
export function withStep({ done }: UndoSteps, step: UndoStep, goesOn: boolean): UndoSteps {
  const last = done.at(-1);
  const joined = goesOn && last !== undefined ? joinedSteps(last, step) : null;
  const steps = joined === null ? [...done, step] : [...done.slice(0, -1), joined];
  return { done: latest(steps), undone: [] };
}

function joinedSteps(first: UndoStep, second: UndoStep): UndoStep | null {
  if (first.of === "field" && second.of === "field") return { ...second, before: first.before };
  if (first.of === "stations" && second.of === "stations") return { ...second, before: first.before };
  if (first.of === "events" && second.of === "events") return { ...second, before: first.before };
  if (first.of !== "rows" || second.of !== "rows" || first.at !== second.at) return null;
  return first.after.length === second.before.length ? { ...second, before: first.before } : null;
}

function latest(steps: readonly UndoStep[]): readonly UndoStep[] {
  let rows = 0;
  const tooOld = steps.findLastIndex((step) => {
    rows += step.of === "rows" ? step.before.length + step.after.length : 0;
    return rows > MAX_ROWS;
  });
  // The last step always stays.
  return steps.slice(Math.max(Math.min(tooOld + 1, steps.length - 1), steps.length - MAX_STEPS, 0));
}

/** The steps without those of a deleted survey. */
export function withoutStepsOf({ done, undone }: UndoSteps = NO_STEPS, survey: string): UndoSteps {
  const isOther = (step: UndoStep): boolean => step.survey !== survey;
  return { done: done.filter(isOther), undone: undone.filter(isOther) };
}

/** The step from some rows of a survey to others; null if they are the same. */
export function stepBetween(survey: string, before: readonly Row[], after: readonly Row[]): UndoStep | null {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && isSame(before[at], after[at])) at += 1;
  let end = 0;
  while (end < most - at && isSame(before.at(-1 - end), after.at(-1 - end))) end += 1;
  const removed = before.slice(at, before.length - end).map(withoutKey);
  const added = after.slice(at, after.length - end).map(withoutKey);
  return removed.length + added.length === 0
    ? null
    : { of: "rows", survey, at, before: removed, after: added };
}

function isSame(one: Row | undefined, other: Row | undefined): boolean {
  return (
    one === other || JSON.stringify(one && withoutKey(one)) === JSON.stringify(other && withoutKey(other))
  );
}

function withoutKey({ cells, marks }: Row): TypedRow {
  return { cells: { ...cells }, marks };
}

/** The step that undoes a step. */
export function reversed(step: UndoStep): UndoStep {
  return { ...step, before: step.after, after: step.before } as UndoStep;
}

/**
 * Does a step.
 *
 * @param rows the rows of the survey that the step belongs to
 * @returns the state and these rows after it; null if the step does not fit, as after a change from elsewhere
 */
export function applyStep(
  state: EditorState,
  rows: readonly Row[],
  step: UndoStep,
): { readonly state: EditorState; readonly rows: readonly Row[] } | null {
  const { inspection, draft } = state;
  const survey = inspection?.surveys.find(({ id }) => id === step.survey);
  if (step.survey !== null && survey === undefined) return null;
  switch (step.of) {
    case "field": {
      const entered = enterField(state, step, step.after);
      // A survey's data may make rows readable, or change its columns.
      return { rows, state: step.survey === null ? entered : withRows(entered, step.survey, rows) };
    }
    case "events":
      if (!sameEvents(inspection?.events ?? [], step.before)) return null;
      return { rows, state: withEvents(state, step.after) };
    case "rows": {
      const after = inspection && survey && rowsAfterStep(rows, step, survey, inspection.slide.units);
      return after ? { rows: after, state: withRows(state, step.survey, after) } : null;
    }
    case "stations": {
      const guide = guideOf(draft, step.survey);
      if (guide === null) return null;
      return { rows, state: { ...state, draft: withGuide(draft, { ...guide, stations: step.after }) } };
    }
  }
}

/** The rows after a step, or null if it does not fit them. A row that changes in its place keeps its key. */
function rowsAfterStep(
  rows: readonly Row[],
  { at, before, after }: Extract<UndoStep, { of: "rows" }>,
  survey: Survey,
  units: Units,
): readonly Row[] | null {
  const replaced = rows.slice(at, at + before.length);
  const read = (row: TypedRow): string => JSON.stringify(readRow({ key: 0, ...row }, survey, units));
  const fits =
    at <= rows.length &&
    replaced.length === before.length &&
    replaced.every((row, index) => read(row) === read(before[index] ?? { cells: {}, marks: {} }));
  if (!fits) return null;
  const isSameCount = before.length === after.length;
  const inserted = after.map(({ cells, marks }, index) => ({
    key: (isSameCount ? replaced[index]?.key : undefined) ?? blankRow().key,
    cells,
    marks,
  }));
  return rows.toSpliced(at, before.length, ...inserted);
}
