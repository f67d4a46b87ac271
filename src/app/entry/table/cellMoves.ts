/** The table as the cursor meets it: in each row its number, where it can be pressed, and its cells. */
export type Grid = readonly (readonly HTMLElement[])[];

/**
 * Where a key moves the cursor in the table of readings, as in a spreadsheet: Enter to the next cell and, with Shift,
 * to the one before; the arrows to the neighbour, left and right only from the edge of what is typed; Tab from the end
 * of a row past the next row's number; Home and End with Ctrl to the first and the last cell.
 *
 * @returns where to go; null where the key keeps its usual meaning
 */
export function moveFor(event: KeyboardEvent, target: EventTarget | null, grid: Grid): HTMLElement | null {
  const { key, shiftKey, ctrlKey, altKey, metaKey } = event;
  if (!(target instanceof HTMLElement) || event.isComposing || altKey || metaKey) return null;
  const row = grid.findIndex((elements) => elements.includes(target));
  if (row === -1) return null;
  const cells = grid.flat().filter((element) => element instanceof HTMLInputElement);
  if (ctrlKey) {
    if (key === "Home") return cells[0] ?? null;
    return key === "End" ? (cells.at(-1) ?? null) : null;
  }
  const fromEnd = (grid[row]?.length ?? 0) - (grid[row]?.indexOf(target) ?? 0);
  const beside = (elements: Grid[number] | undefined): HTMLElement | null =>
    elements?.at(-fromEnd) ?? elements?.[0] ?? null;
  const after = (by: 1 | -1): HTMLElement | null =>
    cells[cells.indexOf(target as HTMLInputElement) + by] ?? null;
  const isCell = target instanceof HTMLInputElement;
  switch (key) {
    case "Enter":
      return isCell ? after(shiftKey ? -1 : 1) : null;
    case "Tab":
      return isCell && fromEnd === 1 && !shiftKey ? after(1) : null;
    case "ArrowDown":
      return beside(grid[row + 1]);
    case "ArrowUp":
      return row === 0 ? null : beside(grid[row - 1]);
    case "ArrowLeft":
      return atEdge(target, "start") && !shiftKey ? (grid[row]?.at(-fromEnd - 1) ?? null) : null;
    case "ArrowRight":
      return atEdge(target, "end") && !shiftKey && fromEnd > 1 ? (grid[row]?.at(-fromEnd + 1) ?? null) : null;
    default:
      return null;
  }
}

/** Whether the cursor can go no further within what is typed; all of it selected is like a cell chosen as a whole. */
function atEdge(target: HTMLElement, edge: "start" | "end"): boolean {
  if (!(target instanceof HTMLInputElement)) return true;
  const { selectionStart, selectionEnd, value } = target;
  if (selectionStart === 0 && selectionEnd === value.length) return true;
  return selectionStart === selectionEnd && selectionStart === (edge === "start" ? 0 : value.length);
}
