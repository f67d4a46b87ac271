import { expect, test } from "vitest";
import type { Inspection } from "../../src/inspection/schema.ts";
import { BLOCKED_BY_TAB } from "../../src/records/database.ts";
import {
  awaitsReading,
  isSameState,
  listEntryOf,
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

const kept: StoredInspection = {
  id: "a",
  revision: 2,
  savedAt: "2026-03-02T10:00:00Z",
  inspection,
  draft: NO_PENDING_INPUT,
};

test("a list counts the readings that cannot be read yet among the others, but none that are still to be taken", () => {
  const unread = { survey: "survey-1", row: 1, cells: { position: "40", backlash: "O.2" }, marks: {} };
  const awaited = { survey: "survey-1", row: 2, cells: { position: "60", backlash: " " }, marks: {} };
  const entry = listEntryOf({ ...kept, draft: { fields: [], rows: [unread, awaited] } });
  expect(entry).toMatchObject({ name: "Cross slide", machine: "Lathe 2", surveys: 1, readings: 3 });
});

test("a row awaits its reading where only its place is written", () => {
  const marks = {};
  expect(awaitsReading({ cells: { position: "60" }, marks })).toBe(true);
  expect(awaitsReading({ cells: { position: "60", backlash: "" }, marks })).toBe(true);
  expect(awaitsReading({ cells: { position: "60", backlash: "x" }, marks })).toBe(false);
  expect(awaitsReading({ cells: { position: " ", backlash: "" }, marks })).toBe(false);
  expect(awaitsReading({ cells: { backlash: "0.2" }, marks })).toBe(false);
  expect(awaitsReading({ cells: { position: "60" }, marks: { excluded: "knocked" } })).toBe(false);
});

test("an inspection that is not described yet is listed with the readings that wait for it", () => {
  const readings = [{ position: 0, backlash: 0.2 }];
  const waiting = { method: "push-pull", readings, slide: {}, survey: {} } as const;
  const entry = listEntryOf({ ...kept, inspection: null, draft: { ...NO_PENDING_INPUT, waiting } });
  expect(entry).toMatchObject({ name: null, machine: null, surveys: 0, readings: 1 });
});

test("a list tells when the last survey was taken, whatever their order", () => {
  const [first] = inspection.surveys;
  const surveys = ["2026-03-02", "2026-05-11T08:30", "2026-04-01"].map((taken) => ({ ...first, taken }));
  expect(listEntryOf({ ...kept, inspection: { ...inspection, surveys } as Inspection }).lastTaken).toBe(
    "2026-05-11T08:30",
  );
  expect(listEntryOf({ ...kept, inspection: { ...inspection, surveys: [] } }).lastTaken).toBe(null);
});

test("the same state is the same inspection with nothing else entered, under whatever id it is stored", () => {
  const other: StoredInspection = { ...structuredClone(kept), id: "b", revision: 7 };
  expect(isSameState(other, kept)).toBe(true);
  expect(isSameState({ ...kept, inspection: { ...inspection, surveys: [] } }, kept)).toBe(false);
  const unread = { survey: "survey-1", row: 1, cells: { position: "40" }, marks: {} };
  expect(isSameState({ ...kept, draft: { fields: [], rows: [unread] } }, kept)).toBe(false);
});

test("what is read back agrees only when it is all that was written", () => {
  expect(isAsWritten(structuredClone(kept), kept)).toBe(true);
  expect(isAsWritten(undefined, kept)).toBe(false);
  expect(isAsWritten({ ...kept, inspection: { ...inspection, surveys: [] } }, kept)).toBe(false);
});

test("what another tab saved over it since agrees with what was written", () => {
  expect(isAsWritten({ ...kept, revision: 3, inspection: null }, kept)).toBe(true);
});

test.each([
  [new DOMException("full", "QuotaExceededError"), "no room"],
  [new DOMException("newer", "VersionError"), "newer Tightspot"],
  [new DOMException("", BLOCKED_BY_TAB), "another tab holds on"],
  [new ReferenceError("indexedDB is not defined"), "indexedDB is not defined"],
])("trouble with the browser's database is told in words: %s", (error, words) => {
  const { what, cure } = storageError(error);
  expect(what).toContain(words);
  expect(cure).toContain("file");
});
