import { expect, test } from "vitest";
import { compareInspections } from "../../../src/records/backup/compareBackup.ts";
import { NO_PENDING_INPUT, type StoredInspection } from "../../../src/records/editorState.ts";

const slideCalled = (name: string, id: string): StoredInspection["inspection"] => ({
  format: "tightspot-inspection",
  version: 1,
  slide: {
    id,
    name,
    units: "mm",
    travel: { from: 0, to: 160 },
    screw: { lead: 4 },
    backlashLimit: 0.15,
  },
  surveys: [],
});

const storedAs = (
  id: string,
  name: string,
  slide: string,
  savedAt = "2026-03-02T10:00:00Z",
): StoredInspection => ({
  id,
  revision: 2,
  savedAt,
  inspection: slideCalled(name, slide),
  draft: NO_PENDING_INPUT,
});

const statuses = (here: readonly StoredInspection[], backup: readonly StoredInspection[]) =>
  compareInspections(here, backup).map(({ status, stored }) => [status, stored?.id ?? null]);

test("an inspection with the same id is the same, or in conflict after a change", () => {
  const backup = [storedAs("a", "Saddle", "saddle"), storedAs("b", "Knee", "knee")];
  const here = [
    storedAs("a", "Saddle", "saddle", "2026-09-09T09:00:00Z"),
    storedAs("b", "Knee, renamed", "knee"),
  ];
  expect(statuses(here, backup)).toEqual([
    ["same", "a"],
    ["conflict", "b"],
  ]);
});

test("without a common id, equal content counts first, then the last saved one of the slide", () => {
  const backup = [storedAs("a", "Saddle", "saddle")];
  const older = storedAs("x", "Saddle, older", "saddle", "2026-01-01T00:00:00Z");
  const newer = storedAs("y", "Saddle, newer", "saddle", "2026-08-01T00:00:00Z");
  expect(statuses([older, newer], backup)).toEqual([["conflict", "y"]]);
  expect(statuses([older, newer, storedAs("z", "Saddle", "saddle", "2025-01-01T00:00:00Z")], backup)).toEqual(
    [["same", "z"]],
  );
  expect(statuses([storedAs("k", "Knee", "knee")], backup)).toEqual([["new", null]]);
});

test("each stored inspection is used once: the second of two copies in a backup is new", () => {
  const backup = [storedAs("a", "Saddle", "saddle"), storedAs("b", "Saddle, copy", "saddle")];
  expect(statuses([storedAs("x", "Saddle, changed", "saddle")], backup)).toEqual([
    ["conflict", "x"],
    ["new", null],
  ]);
  // One with the id of another inspection belongs to that one.
  expect(statuses([storedAs("b", "Saddle", "saddle")], backup)).toEqual([
    ["new", null],
    ["conflict", "b"],
  ]);
});

test("inspections without a slide belong together only by their id", () => {
  const blank = (id: string): StoredInspection => ({ ...storedAs(id, "", ""), inspection: null });
  const typed = {
    ...blank("c"),
    draft: { ...NO_PENDING_INPUT, fields: [{ survey: null, path: "name", text: "Q" }] },
  };
  expect(statuses([typed], [blank("a"), typed])).toEqual([
    ["new", null],
    ["same", "c"],
  ]);
});

test("a damaged stored inspection is in conflict", () => {
  const damaged = { id: "a", inspection: {}, revision: 4 } as unknown as StoredInspection;
  expect(statuses([damaged], [storedAs("a", "Saddle", "saddle"), storedAs("b", "Knee", "knee")])).toEqual([
    ["conflict", "a"],
    ["new", null],
  ]);
});
