import type { PlainObject } from "../inspection/plainData.ts";
import type { Inspection, Method, Reading, SlideEvent } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";

/** A row of readings that cannot be read yet, as typed, with its place among all rows of its survey. */
export interface UnreadRow {
  readonly survey: string;
  readonly row: number;
  /** The text typed in each column: `{ "position": "120", "backlash": "0.2x" }`. */
  readonly cells: Readonly<Record<string, string>>;
  /** Data of the row besides its cells: why it is excluded, its note, keys that this program does not know. */
  readonly marks: Readonly<Record<string, unknown>>;
}

/** Whether a row has a position only: its reading is still to be taken. */
export function awaitsReading({ cells, marks }: Omit<UnreadRow, "survey" | "row">): boolean {
  const filled = Object.keys(cells).filter((name) => cells[name]?.trim() !== "");
  return filled.length === 1 && filled[0] === "position" && Object.keys(marks).length === 0;
}

/** Readings imported before the slide is described, with what else the log says. */
export interface WaitingReadings {
  readonly method: Method;
  readonly readings: readonly Reading[];
  /** The unit of lengths in the log; if missing, the unit that the slide gets. */
  readonly units?: Units;
  /** What the log says besides slide and survey, such as events. */
  readonly others?: PlainObject;
  /** What the log says about the slide and the survey, under the names of the schema. */
  readonly slide: PlainObject;
  readonly survey: PlainObject;
}

/** A field of the slide, or of one survey: `{ survey: null, path: "screw.lead" }`. */
export interface FieldPlace {
  readonly survey: string | null;
  readonly path: string;
}

/** The text typed into a field. */
export interface TypedField extends FieldPlace {
  readonly text: string;
}

/** The progress of the guide, which asks for the readings of one survey station by station. */
export interface GuideState {
  readonly survey: string;
  /** Whether the guide is shown; otherwise the table is. */
  readonly isOpen: boolean;
  readonly at: "way" | "end float" | "stations" | "readings";
  /** Where to read, in this order, each as often as it is to be read; in the slide's units. */
  readonly stations: readonly number[];
  /** The station to read next, if the user chose it out of turn. */
  readonly chosen?: number;
  /** Text typed and not entered yet, by column, in the order in which it is asked for. */
  readonly typing: Readonly<Record<string, string>>;
  /** The unit of figures typed without one, if it is not the slide's. */
  readonly unit?: string;
}

/** A row as typed. */
export type TypedRow = Pick<UnreadRow, "cells" | "marks">;

/** One change that can be undone and redone. */
export type UndoStep =
  | {
      readonly of: "rows";
      readonly survey: string;
      /** The index of the first changed row among all rows of the survey. */
      readonly at: number;
      readonly before: readonly TypedRow[];
      readonly after: readonly TypedRow[];
    }
  | ({ readonly of: "field"; readonly before: string; readonly after: string } & FieldPlace)
  | {
      readonly of: "stations";
      readonly survey: string;
      readonly before: readonly number[];
      readonly after: readonly number[];
    }
  | {
      readonly of: "events";
      readonly survey: null;
      readonly before: readonly SlideEvent[];
      readonly after: readonly SlideEvent[];
    };

export interface UndoSteps {
  /** The latest last. */
  readonly done: readonly UndoStep[];
  /** The next to redo last. */
  readonly undone: readonly UndoStep[];
}

/** Input that is not, or no longer, part of the inspection. Stored under the key `draft`. */
export interface PendingInput {
  readonly fields: readonly TypedField[];
  readonly rows: readonly UnreadRow[];
  readonly waiting?: WaitingReadings;
  readonly guides?: readonly GuideState[];
  readonly steps?: UndoSteps;
}

export const NO_PENDING_INPUT: PendingInput = { fields: [], rows: [] };

/** An inspection being edited: what of it can be read, and the rest as typed. */
export interface EditorState {
  /** Null until travel, lead and limit are known. */
  readonly inspection: Inspection | null;
  readonly draft: PendingInput;
  /** Whether a file holds the inspection: opened from it or saved to it, and not changed since. */
  readonly inFile?: boolean;
}

/** An inspection as stored in this browser's database. */
export interface StoredInspection extends EditorState {
  readonly id: string;
  /** Number of saves; 0 if never saved. */
  readonly revision: number;
  /** When it was last saved, ISO 8601; empty if never. */
  readonly savedAt: string;
}

/** Whether two states hold the same inspection and the same unread input; guides and undo steps do not count. */
export function isSameState(one: EditorState, other: EditorState): boolean {
  // Most differ in the slide's id; comparing the rest may mean megabytes of pictures.
  if (one.inspection?.slide.id !== other.inspection?.slide.id) return false;
  return contentOf(one) === contentOf(other);
}

function contentOf({ inspection, draft: { fields, rows, waiting } }: EditorState): string {
  return JSON.stringify([inspection, fields, rows, waiting]);
}

/** The state after a change: no longer in a file if the change concerns what a file holds. */
export function afterChange(before: EditorState, after: EditorState): EditorState {
  const isFileCurrent =
    after.inspection === before.inspection &&
    after.draft.fields === before.draft.fields &&
    after.draft.rows === before.draft.rows &&
    after.draft.waiting === before.draft.waiting;
  return isFileCurrent ? after : { ...after, inFile: false };
}

/** The slide's name, or the name typed before the slide is described; null if there is none. */
export function slideName({ inspection, draft }: EditorState): string | null {
  const typed = draft.fields.find(({ survey, path }) => survey === null && path === "name");
  return inspection?.slide.name ?? typed?.text ?? null;
}

/** The guide of a survey; null if it was never opened. */
export function guideOf(draft: PendingInput, survey: string): GuideState | null {
  return draft.guides?.find((guide) => guide.survey === survey) ?? null;
}

/** The pending input with this guide in place of the one of its survey. */
export function withGuide(draft: PendingInput, guide: GuideState): PendingInput {
  const others = (draft.guides ?? []).filter(({ survey }) => survey !== guide.survey);
  return { ...draft, guides: [...others, guide] };
}
