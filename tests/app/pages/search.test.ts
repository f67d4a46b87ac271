import { expect, test } from "vitest";
import { search } from "../../../src/app/pages/search.ts";
import type { ListEntry } from "../../../src/records/editorState.ts";

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
const found = (typed: string) => search(entries, typed).map(({ name }) => name);

test("every word that is typed must be in the slide's name or the machine's, in any order", () => {
  expect(found("lathe cross")).toEqual(["Cross slide"]);
  expect(found("lathe quill")).toEqual([]);
});

test("case and accents make no difference, whichever way they are typed", () => {
  expect(found("FRASMASCHINE")).toEqual(["Quill"]);
  expect(found("fra\u0308s")).toEqual(["Quill"]);
});

test("nothing typed finds all, those without a name too", () => {
  expect(found("  ")).toEqual(["Cross slide", "Quill", null]);
});
