import { isPlainObject, type PlainObject } from "../inspection/plainData.ts";
import type { Reading } from "../inspection/schema.ts";
import type { MarkColumns } from "./layout.ts";
import type { Fault } from "./question.ts";
import { isEmpty, textRead } from "./textCell.ts";

type MarkName = keyof MarkColumns;

/** A column of what a reading carries beside its figures. */
export interface MarkColumn {
  readonly name: MarkName;
  readonly column: number;
}

/** What a row says of its readings beside their figures. */
export interface Marks {
  readonly time: string | undefined;
  readonly note: string | undefined;
  readonly excluded: string | undefined;
  /** Keys that this program does not know. */
  readonly others: PlainObject | undefined;
}

/** The columns that marks are read from. */
export function markColumns(marks: MarkColumns): readonly MarkColumn[] {
  return (["date", "time", "note", "excluded", "other keys"] as const).flatMap((name) => {
    const column = marks[name];
    return column === undefined ? [] : [{ name, column }];
  });
}

const UNMARKED: Marks = { time: undefined, note: undefined, excluded: undefined, others: undefined };

/**
 * Reads the cells of the columns that marks are in.
 *
 * @param cells those of the columns, in their order
 */
export function marksRead(columns: readonly MarkColumn[], cells: readonly string[]): Marks | Fault {
  let marks = UNMARKED;
  let date: string | undefined;
  for (let index = 0; index < columns.length; index++) {
    const name = columns[index]?.name;
    const cell = cells[index] ?? "";
    if (name === undefined || (cell.length <= 3 && isEmpty(cell))) continue;
    if (name === "other keys") {
      const others = objectRead(cell);
      if (others === undefined)
        return { fault: `"${name}" is no object of JSON`, cure: "Correct the cell, or empty it." };
      marks = { ...marks, others };
    } else if (name === "date") date = textRead(cell, isNoteText);
    else if (name !== "excluded") marks = { ...marks, [name]: textRead(cell, isNoteText) };
    else if (!meansNotStruck(cell)) marks = { ...marks, excluded: textRead(cell, isReasonText) };
  }
  if (date === undefined) return marks;
  return { ...marks, time: marks.time === undefined ? date : `${date} ${marks.time}` };
}

/** The reading with what its row says beside its figures. */
export function withMarks(reading: Reading, { time, note, excluded, others }: Marks): Reading {
  // Row by row a million times over: properties are added one by one, as spreading objects takes several times as long.
  const marked: Record<string, unknown> = others === undefined ? reading : { ...others, ...reading };
  if (time !== undefined) marked.time = time;
  if (note !== undefined) marked.note = note;
  if (excluded !== undefined) marked.excluded = excluded;
  return marked as Reading;
}

/** Whether a text can stand plainly in a cell for a note or a time. */
export function isNoteText(text: string): boolean {
  return !isEmpty(text);
}

/** Whether a text can stand plainly in a cell for the reason why a reading is struck. */
export function isReasonText(text: string): boolean {
  return !isEmpty(text) && !meansNotStruck(text);
}

/** In a column that says of every reading whether it is struck. */
function meansNotStruck(cell: string): boolean {
  return /^(?:no|n|false|0|nein|non)$/i.test(cell);
}

function objectRead(cell: string): PlainObject | undefined {
  try {
    const value: unknown = JSON.parse(cell);
    return isPlainObject(value) ? value : undefined;
  } catch {
    return undefined;
  }
}
