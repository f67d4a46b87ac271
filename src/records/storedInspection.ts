import { readInspection } from "../inspection/open.ts";
import { failed, type Outcome, type Problem, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
import type { StoredInspection } from "./editorState.ts";
import { pendingInputSchema } from "./pendingInputSchema.ts";
import { storageError } from "./storageErrors.ts";

/** How a saving ended. */
export type SaveResult =
  | { readonly ok: true; readonly kept: StoredInspection }
  | {
      readonly ok: false;
      /** `elsewhere`: another tab saved or deleted it since it was read here, and what is kept was left alone. */
      readonly because: "elsewhere" | "trouble";
      readonly problem: Problem;
    };

/**
 * Reads a kept inspection. One that a newer program kept, or that is damaged, is refused and left alone.
 */
export async function readStored(id: string): Promise<Outcome<StoredInspection>> {
  let found: StoredInspection | undefined;
  try {
    found = await (await database()).get("inspections", id);
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
  if (found === undefined) {
    return failed("", "this inspection is not kept in this browser", "Open its file, or choose another.");
  }
  return sound(found);
}

/** A kept inspection as it can be worked on. */
function sound(found: StoredInspection): Outcome<StoredInspection> {
  if (!pendingInputSchema.safeParse(found.draft).success) {
    const cure = "It was left as it is. Open a file of it, if there is one.";
    return failed("", "what this browser kept of this inspection is damaged", cure);
  }
  if (found.inspection === null) return succeeded(found);
  const read = readInspection(found.inspection);
  return read.ok ? succeeded({ ...found, inspection: read.value }) : read;
}

/** Whether a kept inspection can be opened. */
export function canBeOpened(found: StoredInspection): boolean {
  return found.revision > 0 && typeof found.savedAt === "string" && sound(found).ok;
}

/** What is kept under a name, just as it is there, damaged or not; null where there is nothing. */
export async function readStoredRaw(id: string): Promise<unknown> {
  try {
    return (await (await database()).get("inspections", id)) ?? null;
  } catch {
    return null;
  }
}

/**
 * Saves an inspection onto the revision it was read at, reads it back and compares the two.
 *
 * @param kept what to save; its `revision` is the one that it was read or last saved at
 * @returns the inspection with its new revision, or why it was not saved
 */
export async function saveStored(kept: StoredInspection): Promise<SaveResult> {
  try {
    const inspections = await database();
    const transaction = inspections.transaction("inspections", "readwrite", { durability: "strict" });
    const there = await transaction.store.get(kept.id);
    if ((there?.revision ?? 0) !== kept.revision) return savedElsewhere(there);
    const next = { ...kept, revision: kept.revision + 1, savedAt: new Date().toISOString() };
    await transaction.store.put(next);
    await transaction.done;
    const back = await inspections.get("inspections", kept.id);
    return isAsWritten(back, next) ? { ok: true, kept: next } : notAsWritten();
  } catch (error) {
    return { ok: false, because: "trouble", problem: storageError(error) };
  }
}

/** Whether what was read back is what was written, or was saved over by another tab since. */
export function isAsWritten(back: StoredInspection | undefined, written: StoredInspection): boolean {
  if (back === undefined) return false;
  return back.revision > written.revision || JSON.stringify(back) === JSON.stringify(written);
}

function savedElsewhere(there: StoredInspection | undefined): SaveResult {
  const what =
    there === undefined
      ? "it was deleted in another tab"
      : "it was changed in another tab after it was read here";
  const cure = "Nothing was overwritten. Keep what is here as a copy, or show what the other tab saved.";
  return { ok: false, because: "elsewhere", problem: { where: "", what, cure } };
}

function notAsWritten(): SaveResult {
  return {
    ok: false,
    because: "trouble",
    problem: {
      where: "",
      what: "what was read back from this browser is not what was written",
      cure: "Save the inspection as a file to be safe.",
    },
  };
}
