import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { createAutosave, type SaveStatus } from "../../src/records/autosave.ts";
import { type EditorState, NO_PENDING_INPUT, type StoredInspection } from "../../src/records/editorState.ts";
import type { SaveResult } from "../../src/records/storedInspection.ts";

beforeEach(() => {
  vi.useFakeTimers();
});

afterEach(() => {
  vi.useRealTimers();
});

const fresh: StoredInspection = {
  id: "a",
  revision: 3,
  savedAt: "",
  inspection: null,
  draft: NO_PENDING_INPUT,
};

const typed = (text: string): EditorState => ({
  inspection: null,
  draft: { ...NO_PENDING_INPUT, fields: [{ survey: null, path: "name", text }] },
});

/** A keeper whose savings take `time` milliseconds, with what it saved and told. */
function watched(answer: (kept: StoredInspection) => SaveResult, time = 0) {
  const saved: StoredInspection[] = [];
  const told: SaveStatus[] = [];
  const keeper = createAutosave(
    fresh,
    async (kept) => {
      saved.push(kept);
      if (time > 0) await new Promise((done) => setTimeout(done, time));
      return answer(kept);
    },
    (keeping) => told.push(keeping),
  );
  return { keeper, saved, told, texts: () => saved.map(({ draft }) => draft.fields[0]?.text) };
}

const succeeds = (kept: StoredInspection): SaveResult => ({
  ok: true,
  kept: { ...kept, revision: kept.revision + 1, savedAt: `save ${kept.revision + 1}` },
});

const problem = { where: "", what: "no room", cure: "Make some." };

test("a burst of typing is saved once, with its last state, within a third of a second", async () => {
  const { keeper, texts, told } = watched(succeeds);
  for (const text of ["C", "Cr", "Cross"]) keeper.schedule(typed(text));
  expect(keeper.hasUnsaved).toBe(true);
  await vi.advanceTimersByTimeAsync(300);
  expect(texts()).toEqual(["Cross"]);
  expect(told.at(-1)).toEqual({ state: "kept", at: "save 4" });
  expect(keeper.hasUnsaved).toBe(false);
});

test("typing without a pause is saved at least once a second", async () => {
  const { keeper, saved } = watched(succeeds);
  for (let time = 0; time < 3000; time += 50) {
    keeper.schedule(typed(String(time)));
    await vi.advanceTimersByTimeAsync(50);
  }
  expect(saved.length).toBeGreaterThanOrEqual(3);
});

test("what changes while a saving goes on is saved after it, onto the revision it made", async () => {
  const { keeper, saved, texts } = watched(succeeds, 400);
  keeper.schedule(typed("one"));
  await vi.advanceTimersByTimeAsync(300);
  keeper.schedule(typed("two"));
  await vi.advanceTimersByTimeAsync(1500);
  expect(texts()).toEqual(["one", "two"]);
  expect(saved.map(({ revision }) => revision)).toEqual([3, 4]);
});

test("leaving the page saves at once what was not saved yet", async () => {
  const { keeper, texts } = watched(succeeds);
  keeper.schedule(typed("last"));
  await keeper.saveNow();
  expect(texts()).toEqual(["last"]);
});

test("a failure is told with its reason, and the change stays unsaved until a later try succeeds", async () => {
  let isFull = true;
  const { keeper, told } = watched((kept) =>
    isFull ? { ok: false, because: "trouble", problem } : succeeds(kept),
  );
  keeper.schedule(typed("kept at last"));
  await vi.advanceTimersByTimeAsync(300);
  expect(told.at(-1)).toEqual({ state: "not kept", because: "trouble", problem });
  expect(keeper.hasUnsaved).toBe(true);
  isFull = false;
  await keeper.saveNow();
  expect(told.at(-1)).toEqual({ state: "kept", at: "save 4" });
});

test("once another tab has saved, nothing is saved over it, whatever is typed", async () => {
  const { keeper, saved, told } = watched(() => ({ ok: false, because: "elsewhere", problem }));
  keeper.schedule(typed("mine"));
  await vi.advanceTimersByTimeAsync(300);
  keeper.schedule(typed("mine, too"));
  await vi.advanceTimersByTimeAsync(1000);
  expect(saved).toHaveLength(1);
  expect(told.at(-1)).toEqual({ state: "not kept", because: "elsewhere", problem });
  expect(keeper.hasUnsaved).toBe(true);
});
