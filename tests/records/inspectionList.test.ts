import { expect, test } from "vitest";
import type { Inspection } from "../../src/inspection/schema.ts";
import { NO_PENDING_INPUT, type StoredInspection } from "../../src/records/editorState.ts";
import { type ListEntry, listEntryOf, searchEntries } from "../../src/records/inspectionList.ts";

const entry = (name: string | null, machine: string | null): ListEntry => ({
  id: `${name} ${machine}`,
  savedAt: "",
  name,
  machine,
  surveys: 0,
  lastTaken: null,
  readings: 0,
  inFile: false,
  isDamaged: false,
});

const entries = [entry("Cross slide", "Lathe 2"), entry("Quill", "Fräsmaschine 1"), entry(null, null)];
const found = (typed: string) => searchEntries(entries, typed).map(({ name }) => name);

test("a search finds entries with every word in the slide's or the machine's name, in any order", () => {
  expect(found("lathe cross")).toEqual(["Cross slide"]);
  expect(found("lathe quill")).toEqual([]);
});

test("a search ignores case and accents, composed or not", () => {
  expect(found("FRASMASCHINE")).toEqual(["Quill"]);
  expect(found("fra\u0308s")).toEqual(["Quill"]);
});

test("an empty search finds all entries, those without a name too", () => {
  expect(found("  ")).toEqual(["Cross slide", "Quill", null]);
});

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

test("an entry counts unread rows as readings, but not rows that await a reading", () => {
  const unread = { survey: "survey-1", row: 1, cells: { position: "40", backlash: "O.2" }, marks: {} };
  const awaited = { survey: "survey-1", row: 2, cells: { position: "60", backlash: " " }, marks: {} };
  const entry = listEntryOf({ ...stored, draft: { fields: [], rows: [unread, awaited] } });
  expect(entry).toMatchObject({ name: "Cross slide", machine: "Lathe 2", surveys: 1, readings: 3 });
});

test("the entry of an inspection without a slide counts the readings that wait", () => {
  const readings = [{ position: 0, backlash: 0.2 }];
  const waiting = { method: "push-pull", readings, slide: {}, survey: {} } as const;
  const entry = listEntryOf({ ...stored, inspection: null, draft: { ...NO_PENDING_INPUT, waiting } });
  expect(entry).toMatchObject({ name: null, machine: null, surveys: 0, readings: 1 });
});

test("an entry has the date of the last survey, whatever their order", () => {
  const [first] = inspection.surveys;
  const surveys = ["2026-03-02", "2026-05-11T08:30", "2026-04-01"].map((taken) => ({ ...first, taken }));
  expect(listEntryOf({ ...stored, inspection: { ...inspection, surveys } as Inspection }).lastTaken).toBe(
    "2026-05-11T08:30",
  );
  expect(listEntryOf({ ...stored, inspection: { ...inspection, surveys: [] } }).lastTaken).toBe(null);
});
