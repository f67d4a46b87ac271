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

/** An autosave whose saves take `time` milliseconds, with what it saved and notified. */
function watched(answer: (inspection: StoredInspection) => SaveResult, time = 0) {
  const saved: StoredInspection[] = [];
  const statuses: SaveStatus[] = [];
  const autosave = createAutosave(
    fresh,
    async (inspection) => {
      saved.push(inspection);
      if (time > 0) await new Promise((done) => setTimeout(done, time));
      return answer(inspection);
    },
    (status) => statuses.push(status),
  );
  return { autosave, saved, statuses, texts: () => saved.map(({ draft }) => draft.fields[0]?.text) };
}

const succeeds = (saving: StoredInspection): SaveResult => ({
  ok: true,
  stored: { ...saving, revision: saving.revision + 1, savedAt: `save ${saving.revision + 1}` },
});

const problem = { where: "", what: "no room", cure: "Make some." };

test("a burst of typing is saved once, with its last state, within 0.3 s", async () => {
  const { autosave, texts, statuses } = watched(succeeds);
  for (const text of ["C", "Cr", "Cross"]) autosave.schedule(typed(text));
  expect(autosave.hasUnsaved).toBe(true);
  await vi.advanceTimersByTimeAsync(300);
  expect(texts()).toEqual(["Cross"]);
  expect(statuses.at(-1)).toEqual({ state: "saved", at: "save 4" });
  expect(autosave.hasUnsaved).toBe(false);
});

test("typing without a pause is saved at least once a second", async () => {
  const { autosave, saved } = watched(succeeds);
  for (let time = 0; time < 3000; time += 50) {
    autosave.schedule(typed(String(time)));
    await vi.advanceTimersByTimeAsync(50);
  }
  expect(saved.length).toBeGreaterThanOrEqual(3);
});

test("a change during a save is saved after it, onto the new revision", async () => {
  const { autosave, saved, texts } = watched(succeeds, 400);
  autosave.schedule(typed("one"));
  await vi.advanceTimersByTimeAsync(300);
  autosave.schedule(typed("two"));
  await vi.advanceTimersByTimeAsync(1500);
  expect(texts()).toEqual(["one", "two"]);
  expect(saved.map(({ revision }) => revision)).toEqual([3, 4]);
});

test("saveNow saves unsaved changes at once", async () => {
  const { autosave, texts } = watched(succeeds);
  autosave.schedule(typed("last"));
  await autosave.saveNow();
  expect(texts()).toEqual(["last"]);
});

test("a failure is reported with its reason, and the change stays unsaved until a later try succeeds", async () => {
  let isFull = true;
  const { autosave, statuses } = watched((inspection) =>
    isFull ? { ok: false, because: "storage error", problem } : succeeds(inspection),
  );
  autosave.schedule(typed("saved at last"));
  await vi.advanceTimersByTimeAsync(300);
  expect(statuses.at(-1)).toEqual({ state: "not saved", because: "storage error", problem });
  expect(autosave.hasUnsaved).toBe(true);
  isFull = false;
  await autosave.saveNow();
  expect(statuses.at(-1)).toEqual({ state: "saved", at: "save 4" });
});

test("after a conflict nothing is saved over the other tab's version", async () => {
  const { autosave, saved, statuses } = watched(() => ({ ok: false, because: "conflict", problem }));
  autosave.schedule(typed("mine"));
  await vi.advanceTimersByTimeAsync(300);
  autosave.schedule(typed("mine, too"));
  await vi.advanceTimersByTimeAsync(1000);
  expect(saved).toHaveLength(1);
  expect(statuses.at(-1)).toEqual({ state: "not saved", because: "conflict", problem });
  expect(autosave.hasUnsaved).toBe(true);
});
