import { expect, test } from "vitest";
import { afterChange } from "../../../src/app/editing/afterChange.ts";
import { type EditorState, NO_PENDING_INPUT } from "../../../src/records/editorState.ts";

const inFile: EditorState = { inspection: null, draft: NO_PENDING_INPUT, inFile: true };

test("what a file holds is in it as long as only guide and undo steps change", () => {
  const guides = [{ survey: "a", isOpen: true, at: "way", stations: [], typing: {} }] as const;
  expect(afterChange(inFile, { ...inFile, draft: { ...NO_PENDING_INPUT, guides } }).inFile).toBe(true);
});

test("anything entered since is in no file", () => {
  const fields = [{ survey: null, path: "name", text: "Quill" }];
  expect(afterChange(inFile, { ...inFile, draft: { ...NO_PENDING_INPUT, fields } }).inFile).toBe(false);
});
