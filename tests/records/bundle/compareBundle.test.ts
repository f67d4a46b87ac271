import { expect, test } from "vitest";
import { compareInspections } from "../../../src/records/bundle/compareBundle.ts";
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

const keptAs = (
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

const standings = (here: readonly StoredInspection[], backup: readonly StoredInspection[]) =>
  compareInspections(here, backup).map(({ standing, here: found }) => [standing, found?.id ?? null]);

test("what is kept under the same name is the same, or in conflict where anything was entered since", () => {
  const backup = [keptAs("a", "Saddle", "saddle"), keptAs("b", "Knee", "knee")];
  const here = [
    keptAs("a", "Saddle", "saddle", "2026-09-09T09:00:00Z"),
    keptAs("b", "Knee, renamed", "knee"),
  ];
  expect(standings(here, backup)).toEqual([
    ["same", "a"],
    ["conflict", "b"],
  ]);
});

test("what came here by a file is told by its slide, and the same before the one saved last", () => {
  const backup = [keptAs("a", "Saddle", "saddle")];
  const older = keptAs("x", "Saddle, older", "saddle", "2026-01-01T00:00:00Z");
  const newer = keptAs("y", "Saddle, newer", "saddle", "2026-08-01T00:00:00Z");
  expect(standings([older, newer], backup)).toEqual([["conflict", "y"]]);
  expect(standings([older, newer, keptAs("z", "Saddle", "saddle", "2025-01-01T00:00:00Z")], backup)).toEqual([
    ["same", "z"],
  ]);
  expect(standings([keptAs("k", "Knee", "knee")], backup)).toEqual([["new", null]]);
});

test("each is set against one only: of two copies in a backup the second does not write over the first", () => {
  const backup = [keptAs("a", "Saddle", "saddle"), keptAs("b", "Saddle, copy", "saddle")];
  expect(standings([keptAs("x", "Saddle, changed", "saddle")], backup)).toEqual([
    ["conflict", "x"],
    ["new", null],
  ]);
  // One that belongs to another by its name is left to that one.
  expect(standings([keptAs("b", "Saddle", "saddle")], backup)).toEqual([
    ["new", null],
    ["conflict", "b"],
  ]);
});

test("slides that are not described yet are the same only under their own name", () => {
  const blank = (id: string): StoredInspection => ({ ...keptAs(id, "", ""), inspection: null });
  const typed = {
    ...blank("c"),
    draft: { ...NO_PENDING_INPUT, fields: [{ survey: null, path: "name", text: "Q" }] },
  };
  expect(standings([typed], [blank("a"), typed])).toEqual([
    ["new", null],
    ["same", "c"],
  ]);
});

test("what is damaged here is in conflict, and never in the way", () => {
  const wreck = { id: "a", inspection: {}, revision: 4 } as unknown as StoredInspection;
  expect(standings([wreck], [keptAs("a", "Saddle", "saddle"), keptAs("b", "Knee", "knee")])).toEqual([
    ["conflict", "a"],
    ["new", null],
  ]);
});
