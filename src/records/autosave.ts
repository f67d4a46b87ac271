import type { Problem } from "../inspection/problem.ts";
import type { EditorState, StoredInspection } from "./editorState.ts";
import type { SaveResult } from "./storedInspection.ts";

/** Whether what is on the page is also kept. */
export type SaveStatus =
  | { readonly state: "kept"; readonly at: string }
  | { readonly state: "saving" }
  | { readonly state: "not kept"; readonly because: "elsewhere" | "trouble"; readonly problem: Problem };

export interface Autosave {
  /** Takes note of a change, and saves it shortly. */
  schedule(state: EditorState): void;
  /** Saves now what was not saved yet; after trouble, this tries again. */
  saveNow(): Promise<void>;
  readonly hasUnsaved: boolean;
}

/** Long enough to save once for a burst of keys, short enough to be saved within a second of the first. */
const DELAY = 250;

/**
 * Saves one inspection as it changes: one saving at a time, always the latest state, each onto the revision before.
 * Once another tab has saved it, nothing is saved any more: the page has to ask.
 *
 * @param start the inspection as it was read
 * @param save writes it, and says how that ended
 * @param tell is told of each change of state
 */
export function createAutosave(
  start: StoredInspection,
  save: (kept: StoredInspection) => Promise<SaveResult>,
  tell: (saveStatus: SaveStatus) => void,
): Autosave {
  let kept = start;
  let unsaved: EditorState | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<void> | undefined;
  let refused = false;

  async function saveLatest(): Promise<void> {
    while (unsaved !== null && !refused) {
      const state = unsaved;
      const saving = await save({ ...kept, ...state });
      if (!saving.ok) {
        refused = saving.because === "elsewhere";
        tell({ state: "not kept", because: saving.because, problem: saving.problem });
        return;
      }
      kept = saving.kept;
      if (unsaved === state) unsaved = null;
    }
    if (!refused) tell({ state: "kept", at: kept.savedAt });
  }

  function flush(): Promise<void> {
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
      if (refused) return;
      tell({ state: "saving" });
      // Not restarted by the next key: typing without a pause is saved too.
      timer ??= setTimeout(flush, DELAY);
    },
    saveNow: flush,
    get hasUnsaved() {
      return unsaved !== null;
    },
  };
}
