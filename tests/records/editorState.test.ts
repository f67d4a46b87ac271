import { expect, test } from "vitest";
import type { Inspection } from "../../src/inspection/schema.ts";
import { BLOCKED_BY_TAB } from "../../src/records/database.ts";
import {
  afterChange,
  awaitsReading,
  type EditorState,
  isSameState,
  NO_PENDING_INPUT,
  type StoredInspection,
} from "../../src/records/editorState.ts";
import { storageError } from "../../src/records/storageErrors.ts";
import { isAsWritten } from "../../src/records/storedInspection.ts";

const inspection: Inspection = {
  format: "tightspot-inspection",
  version: 1,
  slide: {
    id: "slide",
    name: "Cross slide",
    machine: "Lathe 2",
    units: "mm",
    travel: { from: 0, to: 160 },
    screw: { lead: 4 },
    backlashLimit: 0.15,
  },
  surveys: [
    {
      id: "survey-1",
      taken: "2026-03-02",
      stage: "routine",
      method: "push-pull",
      readings: [
        { position: 0, backlash: 0.21 },
        { position: 80, backlash: 0.22 },
      ],
    },
  ],
};

const stored: StoredInspection = {
  id: "a",
  revision: 2,
  savedAt: "2026-03-02T10:00:00Z",
  inspection,
  draft: NO_PENDING_INPUT,
};

test("a row with a position only awaits its reading", () => {
  const marks = {};
  expect(awaitsReading({ cells: { position: "60" }, marks })).toBe(true);
  expect(awaitsReading({ cells: { position: "60", backlash: "" }, marks })).toBe(true);
  expect(awaitsReading({ cells: { position: "60", backlash: "x" }, marks })).toBe(false);
  expect(awaitsReading({ cells: { position: " ", backlash: "" }, marks })).toBe(false);
  expect(awaitsReading({ cells: { backlash: "0.2" }, marks })).toBe(false);
  expect(awaitsReading({ cells: { position: "60" }, marks: { excluded: "knocked" } })).toBe(false);
});

test("states are the same with the same inspection and input, whatever their id and revision", () => {
  const other: StoredInspection = { ...structuredClone(stored), id: "b", revision: 7 };
  expect(isSameState(other, stored)).toBe(true);
  expect(isSameState({ ...stored, inspection: { ...inspection, surveys: [] } }, stored)).toBe(false);
  const unread = { survey: "survey-1", row: 1, cells: { position: "40" }, marks: {} };
  expect(isSameState({ ...stored, draft: { fields: [], rows: [unread] } }, stored)).toBe(false);
});

test("a record is as written only if it is equal", () => {
  expect(isAsWritten(structuredClone(stored), stored)).toBe(true);
  expect(isAsWritten(undefined, stored)).toBe(false);
  expect(isAsWritten({ ...stored, inspection: { ...inspection, surveys: [] } }, stored)).toBe(false);
});

test("a record that another tab saved since counts as written", () => {
  expect(isAsWritten({ ...stored, revision: 3, inspection: null }, stored)).toBe(true);
});

test.each([
  [new DOMException("full", "QuotaExceededError"), "no storage space"],
  [new DOMException("newer", "VersionError"), "newer Tightspot"],
  [new DOMException("", BLOCKED_BY_TAB), "another tab blocks"],
  [new ReferenceError("indexedDB is not defined"), "indexedDB is not defined"],
])("a storage error is put in words: %s", (error, words) => {
  const { what, cure } = storageError(error);
  expect(what).toContain(words);
  expect(cure).toContain("file");
});

const inFile: EditorState = { inspection: null, draft: NO_PENDING_INPUT, inFile: true };

test("a state stays in its file while only guide and undo steps change", () => {
  const guides = [{ survey: "a", isOpen: true, at: "way", stations: [], typing: {} }] as const;
  expect(afterChange(inFile, { ...inFile, draft: { ...NO_PENDING_INPUT, guides } }).inFile).toBe(true);
});

test("after an entry the state is no longer in its file", () => {
  const fields = [{ survey: null, path: "name", text: "Quill" }];
  expect(afterChange(inFile, { ...inFile, draft: { ...NO_PENDING_INPUT, fields } }).inFile).toBe(false);
});
