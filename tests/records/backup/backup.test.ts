import { expect, test } from "vitest";
import { isBackup, openBackup } from "../../../src/records/backup/backup.ts";

const stored = {
  id: "a",
  revision: 3,
  savedAt: "2026-03-02T10:00:00Z",
  inspection: null,
  draft: { fields: [], rows: [], later: "kept" },
};
const backup = {
  format: "tightspot-bundle",
  version: 1,
  saved: "2026-03-03T10:00:00Z",
  inspections: [stored],
  pictures: [{ id: "p", type: "image/png", data: "AAEC" }],
};

test("a backup is opened with its bytes, and each inspection as it stands in the file", () => {
  const opened = openBackup(JSON.stringify(backup));
  if (!opened.ok) throw new Error(opened.problem.what);
  expect(JSON.stringify(opened.value.inspections)).toBe(JSON.stringify([stored]));
  expect(opened.value.pictures).toEqual([{ id: "p", type: "image/png", bytes: Uint8Array.of(0, 1, 2) }]);
});

test("a backup has a format of its own", () => {
  expect(isBackup(JSON.stringify(backup))).toBe(true);
  expect(isBackup(JSON.stringify({ ...backup, format: "tightspot-inspection" }))).toBe(false);
  expect(isBackup("[1, 2]")).toBe(false);
  expect(isBackup("{")).toBe(false);
});

test.each([
  ["a duplicate id", { inspections: [stored, stored] }, "", 'two entries have the id "a"'],
  [
    "a missing revision",
    { inspections: [{ ...stored, revision: undefined }] },
    "inspections[0].revision",
    "is missing",
  ],
  ["no list of inspections", { inspections: 3 }, "inspections", "must be an array"],
  ["an inspection of a newer version", newerInspection(), "inspections[0].inspection.version", "newer than"],
  [
    "damaged pending input",
    { inspections: [{ ...stored, draft: {} }] },
    "inspections[0].draft.fields",
    "is missing",
  ],
])("a backup with %s is refused with the place", (_what, change, where, what) => {
  const opened = openBackup(JSON.stringify({ ...backup, ...change }));
  if (opened.ok) throw new Error("It was opened.");
  expect(opened.problem.where).toBe(where);
  expect(opened.problem.what).toContain(what);
  expect(opened.problem.cure).toContain("nothing was changed here");
});

function newerInspection() {
  return { inspections: [{ ...stored, inspection: { format: "tightspot-inspection", version: 9 } }] };
}
