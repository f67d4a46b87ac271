/** What a key asks for: Ctrl+Z to take back a step, Ctrl+Y or Ctrl+Shift+Z to do it again; with ⌘ where that is used. */
export function undoKey({ key, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): "undo" | "redo" | null {
  if (!(ctrlKey || metaKey) || altKey) return null;
  const letter = key.toLowerCase();
  if (letter === "y" && !shiftKey) return "redo";
  if (letter !== "z") return null;
  return shiftKey ? "redo" : "undo";
}
