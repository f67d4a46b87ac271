import type { ColumnName } from "../../editing/columns.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import { undoKey } from "../undoKey.ts";
import { type Grid, moveFor } from "./cellMoves.ts";

/** The cell that the cursor is in. */
export interface ActiveCell {
  readonly row: number;
  readonly column: ColumnName;
  /** What stood there when the cursor came, for Escape. */
  readonly original: string;
}

/** The table as keys act on it. */
export interface KeyedTable {
  readonly editor: InspectionEditor | null;
  readonly root: ParentNode;
  readonly active: ActiveCell | null;
  /** The key of the empty row at the end. */
  readonly next: number;
  readonly deleteRow: (key: number) => void;
}

/** Does what a key asks for in the table, and keeps it from doing anything else; other keys keep their meaning. */
export function onTableKey(event: KeyboardEvent, table: KeyedTable): void {
  const [target] = event.composedPath();
  const way = undoKey(event);
  if (way !== null) {
    event.preventDefault();
    stepBack(way, table);
  } else if (actedOn(event, target, table)) {
    event.preventDefault();
  } else {
    const to = moveFor(event, target ?? null, gridOf(table.root));
    if (to === null) return;
    event.preventDefault();
    goTo(to);
  }
}

/** Moves the cursor; what is in the cell is selected, so that typing replaces it. */
export function goTo(element: HTMLElement | null): void {
  element?.focus();
  if (element instanceof HTMLInputElement) element.select();
}

/** Escape puts back what stood in the cell, F2 goes to the end of it, Delete on a row's number deletes the row. */
function actedOn({ key }: KeyboardEvent, target: EventTarget | undefined, table: KeyedTable): boolean {
  const { editor, active, next } = table;
  if (target instanceof HTMLInputElement && active !== null) {
    if (key === "F2") target.setSelectionRange(target.value.length, target.value.length);
    if (key === "Escape" && active.row !== next) {
      target.value = active.original;
      target.select();
      editor?.enterCell(active.row, active.column, active.original);
    }
    return key === "F2" || key === "Escape";
  }
  if (key !== "Delete" || !(target instanceof HTMLButtonElement)) return false;
  const { row } = target.dataset;
  if (row !== undefined) table.deleteRow(Number(row));
  return row !== undefined;
}

function gridOf(root: ParentNode): Grid {
  return [...root.querySelectorAll("tbody")].map((body) => [
    ...body.querySelectorAll<HTMLElement>("button.number, [data-column]"),
  ]);
}

/** The cursor goes where something was taken back, or done again. */
function stepBack(way: "undo" | "redo", { editor, root, active, next }: KeyedTable): void {
  const step = editor?.[way]() ?? null;
  if (step?.of !== "rows") return;
  const row = editor?.rows[step.at]?.key ?? next;
  // What was done goes up to the page and comes down again before the table is drawn.
  requestAnimationFrame(() => {
    const cell = root.querySelector<HTMLElement>(`[data-row="${row}"][data-column="${active?.column}"]`);
    goTo(cell ?? root.querySelector<HTMLElement>(`[data-row="${row}"][data-column]`));
  });
}
