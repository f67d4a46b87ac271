import type { Plain } from "../inspection/parts.ts";
import type { Inspection, Method, Reading, SlideEvent } from "../inspection/schema.ts";
import type { Units } from "../inspection/units.ts";

/** A row of readings that cannot be read yet, as it was typed, with its place among all rows of its survey. */
export interface UnreadRow {
  readonly survey: string;
  readonly row: number;
  /** What was typed, by column: `{ "position": "120", "backlash": "0.2x" }`. */
  readonly cells: Readonly<Record<string, string>>;
  /** What the row carries beside its cells: why it is struck, its note, keys this program does not know. */
  readonly marks: Readonly<Record<string, unknown>>;
}

/** Whether a row holds no more than its place: the reading there is still to be taken. */
export function awaitsReading({ cells, marks }: Omit<UnreadRow, "survey" | "row">): boolean {
  const written = Object.keys(cells).filter((name) => cells[name]?.trim() !== "");
  return written.length === 1 && written[0] === "position" && Object.keys(marks).length === 0;
}

/** Readings that came in before the slide was described, with what came with them. */
export interface WaitingReadings {
  readonly method: Method;
  readonly readings: readonly Reading[];
  /** The unit of their lengths and of what the log says; where it is missing, the one that the slide is given. */
  readonly units?: Units;
  /** What the log says beside slide and survey, such as events. */
  readonly others?: Plain;
  /** What the log says of the slide and of the survey, under the names of the schema. */
  readonly slide: Plain;
  readonly survey: Plain;
}

/** A place in the slide's data, or in those of one survey: `{ survey: null, path: "screw.lead" }`. */
export interface FieldPlace {
  readonly survey: string | null;
  readonly path: string;
}

/** What was typed into a field. */
export interface TypedField extends FieldPlace {
  readonly text: string;
}

/** How far the entry of one survey, station by station, is. */
export interface GuideState {
  readonly survey: string;
  /** Whether readings are entered station by station now, or in the table. */
  readonly isOpen: boolean;
  readonly at: "way" | "end float" | "stations" | "readings";
  /** Where to read, in this order, each as often as it is to be read; in the slide's units. */
  readonly stations: readonly number[];
  /** The station to read next, where it was chosen out of turn. */
  readonly chosen?: number;
  /** What is typed and not taken yet, by column, in the order in which it is asked for. */
  readonly typing: Readonly<Record<string, string>>;
  /** The name of the unit that bare figures are in, where it is not the slide's. */
  readonly unit?: string;
}

/** A row as it was typed. */
export type TypedRow = Pick<UnreadRow, "cells" | "marks">;

/** One thing that was done, such that it can be taken back and done again. */
export type UndoStep =
  | {
      readonly of: "rows";
      readonly survey: string;
      /** The place among all rows of the survey. */
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
  /** Taken back; the one to be done again first is the last. */
  readonly undone: readonly UndoStep[];
}

/** Everything that was entered and that the inspection cannot hold, or holds no more. */
export interface PendingInput {
  readonly fields: readonly TypedField[];
  readonly rows: readonly UnreadRow[];
  readonly waiting?: WaitingReadings;
  readonly guides?: readonly GuideState[];
  readonly steps?: UndoSteps;
}

export const NO_PENDING_INPUT: PendingInput = { fields: [], rows: [] };

/** What someone is working on: the inspection as far as it can be read, and the rest as it was typed. */
export interface EditorState {
  /** Null until travel, lead and limit are known. */
  readonly inspection: Inspection | null;
  readonly draft: PendingInput;
  /** Whether there is a file of it: opened from one or saved to one, and not changed since. */
  readonly inFile?: boolean;
}

/** An inspection as it is kept in this browser. */
export interface StoredInspection extends EditorState {
  readonly id: string;
  /** Counts the savings; 0 for one that was never saved. */
  readonly revision: number;
  /** When it was last saved, ISO 8601; empty for one that was never saved. */
  readonly savedAt: string;
}

/** Whether two hold the same inspection, and nothing else was entered in either that the other lacks. */
export function isSameState(one: EditorState, other: EditorState): boolean {
  // The slide's name in the file tells nearly all apart, before what may be megabytes of pictures is compared.
  if (one.inspection?.slide.id !== other.inspection?.slide.id) return false;
  return contentOf(one) === contentOf(other);
}

function contentOf({ inspection, draft: { fields, rows, waiting } }: EditorState): string {
  return JSON.stringify([inspection, fields, rows, waiting]);
}

/** What a list of kept inspections shows of one. */
export interface ListEntry {
  readonly id: string;
  readonly savedAt: string;
  /** Null where neither a name was given nor the slide described. */
  readonly name: string | null;
  readonly machine: string | null;
  readonly surveys: number;
  /** When the last survey was taken, ISO 8601; null where there is none. */
  readonly lastTaken: string | null;
  readonly readings: number;
  readonly inFile: boolean;
  /** Whether it is so damaged that nothing of it can be told. */
  readonly isDamaged: boolean;
}

/** What a list shows of a kept inspection; everything entered counts, whether it can be read or not. */
export function listEntryOf(kept: StoredInspection): ListEntry {
  const { id, savedAt, inspection, draft } = kept;
  const surveys = inspection?.surveys ?? [];
  const read = surveys.reduce((count, survey) => count + survey.readings.length, 0);
  return {
    id,
    savedAt,
    name: slideName(kept),
    machine: inspection?.slide.machine ?? null,
    surveys: surveys.length,
    lastTaken:
      surveys
        .map(({ taken }) => taken)
        .sort()
        .at(-1) ?? null,
    readings:
      read + draft.rows.filter((row) => !awaitsReading(row)).length + (draft.waiting?.readings.length ?? 0),
    inFile: kept.inFile === true,
    isDamaged: false,
  };
}

/** The slide's name; null where neither a name was given nor the slide described. */
export function slideName({ inspection, draft }: EditorState): string | null {
  const typed = draft.fields.find(({ survey, path }) => survey === null && path === "name");
  return inspection?.slide.name ?? typed?.text ?? null;
}
