import { expect, test } from "vitest";
import { afterChange } from "../../../src/app/editing/afterChange.ts";
import { EMPTY_DRAFT, type Work } from "../../../src/records/record.ts";

const inFile: Work = { inspection: null, draft: EMPTY_DRAFT, inFile: true };

test("what a file holds is in it as long as only the course of the work changes", () => {
  const guides = [{ survey: "a", isOpen: true, at: "way", stations: [], typing: {} }] as const;
  expect(afterChange(inFile, { ...inFile, draft: { ...EMPTY_DRAFT, guides } }).inFile).toBe(true);
});

test("anything entered since is in no file", () => {
  const fields = [{ survey: null, path: "name", text: "Quill" }];
  expect(afterChange(inFile, { ...inFile, draft: { ...EMPTY_DRAFT, fields } }).inFile).toBe(false);
});
