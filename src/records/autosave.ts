import type { Problem } from "../inspection/problem.ts";
import type { EditorState, StoredInspection } from "./editorState.ts";
import type { SaveResult } from "./storedInspection.ts";

/** Whether the browser's database holds what the page shows. */
export type SaveStatus =
  | { readonly state: "saved"; readonly at: string }
  | { readonly state: "saving" }
  | {
      readonly state: "not saved";
      readonly because: "conflict" | "storage error";
      readonly problem: Problem;
    };

export interface Autosave {
  /** Saves this state shortly. */
  schedule(state: EditorState): void;
  /** Saves unsaved changes now; after an error, tries again. */
  saveNow(): Promise<void>;
  readonly hasUnsaved: boolean;
}

/** Milliseconds: one save for a burst of keys, and all within a second of the first key. */
const DELAY = 250;

/**
 * Saves one inspection as it changes. Only one save runs at a time, always of the latest state, onto the revision
 * before. After a conflict with another tab it saves nothing more: the reader has to choose.
 *
 * @param start the inspection as it was read
 * @param save writes an inspection to the database
 * @param notify is called with each change of the status
 */
export function createAutosave(
  start: StoredInspection,
  save: (inspection: StoredInspection) => Promise<SaveResult>,
  notify: (status: SaveStatus) => void,
): Autosave {
  let stored = start;
  let unsaved: EditorState | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | undefined;
  let hasConflict = false;

  async function saveLatest(): Promise<void> {
    while (unsaved !== null && !hasConflict) {
      const state = unsaved;
      const result = await save({ ...stored, ...state });
      if (!result.ok) {
        hasConflict = result.because === "conflict";
        notify({ state: "not saved", because: result.because, problem: result.problem });
        return;
      }
      stored = result.stored;
      if (unsaved === state) unsaved = null;
    }
    if (!hasConflict) notify({ state: "saved", at: stored.savedAt });
  }

  function saveNow(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    if (unsaved === null) return running ?? Promise.resolve();
    running ??= saveLatest().finally(() => {
      running = undefined;
    });
    return running;
  }

  return {
    schedule(state) {
      unsaved = state;
      if (hasConflict) return;
      notify({ state: "saving" });
      // The next key does not restart the timer, so continuous typing is saved too.
      timer ??= setTimeout(saveNow, DELAY);
    },
    saveNow,
    get hasUnsaved() {
      return unsaved !== null;
    },
  };
}
