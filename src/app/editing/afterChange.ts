import type { EditorState } from "../../records/editorState.ts";

/** The work after a change: there is no file of it any more, unless nothing was changed that a file would hold. */
export function afterChange(before: EditorState, after: EditorState): EditorState {
  const isAsBefore =
    after.inspection === before.inspection &&
    after.draft.fields === before.draft.fields &&
    after.draft.rows === before.draft.rows &&
    after.draft.waiting === before.draft.waiting;
  return isAsBefore ? after : { ...after, inFile: false };
}
