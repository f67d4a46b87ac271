import type { UndoStep } from "../../../records/editorState.ts";

/** What a step did, for "Taken back: …" and "Done again: …". */
export function undoStepWords(step: UndoStep): string {
  if (step.of === "stations") return "a change of the stations";
  if (step.of === "field") return "what was entered in a field";
  if (step.of === "events") return "a change of the slide’s history";
  const { before, after } = step;
  if (before.length === 0)
    return after.length === 1 ? `the reading at ${placeOf(step)}` : `${after.length} readings`;
  if (after.length === 0)
    return before.length === 1 ? `deleting the reading at ${placeOf(step)}` : "deleting readings";
  return before.length === 1
    ? `a change of the reading at ${placeOf(step)}`
    : `a change of ${before.length} readings`;
}

/** Where the first reading of a step was taken, as it was typed. */
export function placeOf(step: Extract<UndoStep, { of: "rows" }>): string {
  const [row] = step.after.length > 0 ? step.after : step.before;
  return row?.cells.position ?? row?.cells.target ?? "";
}
