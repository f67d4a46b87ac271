import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { readProgress, saveProgress, unitsLeft } from "./progress.ts";

const folder = mkdtempSync(join(tmpdir(), "long-"));
const file = join(folder, "below", "fuzz.json");

afterAll(() => rmSync(folder, { recursive: true }));

const UNITS = ["a", "b", "c"].map((name) => ({ name }));

test("the long check goes on with what never ran, then with what failed", () => {
  saveProgress(file, { state: "one", passed: { a: false, b: true } });
  expect(unitsLeft(UNITS, readProgress(file, "one")).map(({ name }) => name)).toEqual(["c", "a"]);
});

test("the long check starts afresh once the project has changed, and where nothing was saved", () => {
  saveProgress(file, { state: "one", passed: { a: true, b: true, c: true } });
  expect(unitsLeft(UNITS, readProgress(file, "two"))).toEqual(UNITS);
  expect(unitsLeft(UNITS, readProgress(join(folder, "none.json"), "one"))).toEqual(UNITS);
});
