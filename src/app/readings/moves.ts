/**
 * Where a key moves the cursor in the table of readings: Enter to the next cell and, with Shift, to the one before;
 * the arrows up and down along a column; Tab from the end of a row past the row's button to the next row.
 *
 * @param inputs the cells, row by row
 * @returns the cell to go to; null where the key keeps its usual meaning
 */
export function moveFor(
  { key, shiftKey, target, isComposing }: KeyboardEvent,
  inputs: readonly HTMLInputElement[],
  columns: number,
): HTMLInputElement | null {
  if (!(target instanceof HTMLInputElement) || isComposing) return null;
  const at = inputs.indexOf(target);
  if (at === -1) return null;
  const endsRow = at % columns === columns - 1;
  switch (key) {
    case "Enter":
      return inputs[at + (shiftKey ? -1 : 1)] ?? null;
    case "ArrowDown":
      return inputs[at + columns] ?? null;
    case "ArrowUp":
      return inputs[at - columns] ?? null;
    case "Tab":
      return endsRow && !shiftKey ? (inputs[at + 1] ?? null) : null;
    default:
      return null;
  }
}
