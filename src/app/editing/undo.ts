import type { Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import type { TypedRow, UndoStep, UndoSteps } from "../../records/editorState.ts";
import { blankRow, type Row, readRow } from "./rows.ts";

export const NO_STEPS: UndoSteps = { done: [], undone: [] };

/** Steps beyond these, or beyond so many rows in all, are forgotten, the oldest first. */
const MOST_STEPS = 300;
const MOST_ROWS = 3000;

/**
 * The steps with one more. What was taken back cannot be done again after that.
 *
 * @param goesOn whether it goes on with the step before it, as the next key in the same cell does
 */
export function withStep({ done }: UndoSteps, step: UndoStep, goesOn: boolean): UndoSteps {
  const last = done.at(-1);
  const joined = goesOn && last !== undefined ? inOne(last, step) : null;
  const kept = joined === null ? [...done, step] : [...done.slice(0, -1), joined];
  return { done: latest(kept), undone: [] };
}

function inOne(first: UndoStep, second: UndoStep): UndoStep | null {
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
    return rows > MOST_ROWS;
  });
  // The last one can always be taken back.
  return steps.slice(Math.max(Math.min(tooOld + 1, steps.length - 1), steps.length - MOST_STEPS, 0));
}

/** The steps without those of a survey that is no more. */
export function withoutStepsOf({ done, undone }: UndoSteps = NO_STEPS, survey: string): UndoSteps {
  const isOther = (step: UndoStep): boolean => step.survey !== survey;
  return { done: done.filter(isOther), undone: undone.filter(isOther) };
}

/** The step from some rows of a survey to others; null where they are the same. */
export function stepBetween(survey: string, before: readonly Row[], after: readonly Row[]): UndoStep | null {
  const most = Math.min(before.length, after.length);
  let at = 0;
  while (at < most && isSame(before[at], after[at])) at += 1;
  let end = 0;
  while (end < most - at && isSame(before.at(-1 - end), after.at(-1 - end))) end += 1;
  const removed = before.slice(at, before.length - end).map(asTyped);
  const added = after.slice(at, after.length - end).map(asTyped);
  return removed.length + added.length === 0
    ? null
    : { of: "rows", survey, at, before: removed, after: added };
}

function isSame(one: Row | undefined, other: Row | undefined): boolean {
  return one === other || JSON.stringify(one && asTyped(one)) === JSON.stringify(other && asTyped(other));
}

function asTyped({ cells, marks }: Row): TypedRow {
  return { cells: { ...cells }, marks };
}

/** The step that takes one back. */
export function reversed(step: UndoStep): UndoStep {
  return { ...step, before: step.after, after: step.before } as UndoStep;
}

/**
 * The rows with a step done; null where it does not fit them, as after they were changed from outside. A row that
 * changes in its place stays the same row of the table.
 */
export function rowsAfterStep(
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
  const staysInPlace = before.length === after.length;
  const put = after.map(({ cells, marks }, index) => ({
    key: (staysInPlace ? replaced[index]?.key : undefined) ?? blankRow().key,
    cells,
    marks,
  }));
  return rows.toSpliced(at, before.length, ...put);
}
