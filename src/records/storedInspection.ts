import * as z from "zod/mini";
import { readInspection } from "../inspection/open.ts";
import { failed, type Outcome, type Problem, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
import type { StoredInspection } from "./editorState.ts";
import { storageError } from "./storageErrors.ts";

export type SaveResult =
  | { readonly ok: true; readonly stored: StoredInspection }
  | {
      readonly ok: false;
      /** `conflict`: another tab saved or deleted the inspection since it was read here; nothing was overwritten. */
      readonly because: "conflict" | "storage error";
      readonly problem: Problem;
    };

const cells = z.record(z.string(), z.string());
const plain = z.record(z.string(), z.unknown());
const steps = z.array(z.looseObject({ of: z.enum(["rows", "field", "stations", "events"]) }));

/** The part of the pending input that the page relies on; further keys are left as they are. */
export const pendingInputSchema = z.looseObject({
  fields: z.array(z.looseObject({ survey: z.nullable(z.string()), path: z.string(), text: z.string() })),
  rows: z.array(z.looseObject({ survey: z.string(), row: z.number(), cells, marks: plain })),
  waiting: z.optional(z.looseObject({ readings: z.array(plain), slide: plain, survey: plain })),
  guides: z.optional(
    z.array(z.looseObject({ survey: z.string(), stations: z.array(z.number()), typing: cells })),
  ),
  steps: z.optional(z.looseObject({ done: steps, undone: steps })),
});

/** Reads a stored inspection. Fails, and leaves it alone, if it is damaged or was saved by a newer program. */
export async function readStored(id: string): Promise<Outcome<StoredInspection>> {
  let found: StoredInspection | undefined;
  try {
    found = await (await database()).get("inspections", id);
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
  if (found === undefined) {
    return failed("", "this inspection is not in this browser", "Open its file, or choose another.");
  }
  return validated(found);
}

function validated(found: StoredInspection): Outcome<StoredInspection> {
  if (!pendingInputSchema.safeParse(found.draft).success) {
    const cure = "It was left as it is. Open a file of it, if there is one.";
    return failed("", "the copy of this inspection in this browser is damaged", cure);
  }
  if (found.inspection === null) return succeeded(found);
  const read = readInspection(found.inspection);
  return read.ok ? succeeded({ ...found, inspection: read.value }) : read;
}

/** Whether a stored inspection can be opened. */
export function canBeOpened(found: StoredInspection): boolean {
  return found.revision > 0 && typeof found.savedAt === "string" && validated(found).ok;
}

/** The stored record with this id, damaged or not; null if there is none or the database cannot be opened. */
export async function readStoredRaw(id: string): Promise<unknown> {
  try {
    return (await (await database()).get("inspections", id)) ?? null;
  } catch {
    return null;
  }
}

/**
 * Saves an inspection, reads it back and compares the two.
 *
 * @param inspection what to save; its `revision` is the one that it was read or last saved at
 * @returns the inspection with its new revision, or why it was not saved
 */
export async function saveStored(inspection: StoredInspection): Promise<SaveResult> {
  try {
    const inspections = await database();
    const transaction = inspections.transaction("inspections", "readwrite", { durability: "strict" });
    const before = await transaction.store.get(inspection.id);
    if ((before?.revision ?? 0) !== inspection.revision) return conflict(before);
    const next = { ...inspection, revision: inspection.revision + 1, savedAt: new Date().toISOString() };
    await transaction.store.put(next);
    await transaction.done;
    const readBack = await inspections.get("inspections", inspection.id);
    return isAsWritten(readBack, next) ? { ok: true, stored: next } : notAsWritten();
  } catch (error) {
    return { ok: false, because: "storage error", problem: storageError(error) };
  }
}

/** Whether what was read back is what was written, or another tab has saved it again since. */
export function isAsWritten(readBack: StoredInspection | undefined, written: StoredInspection): boolean {
  if (readBack === undefined) return false;
  return readBack.revision > written.revision || JSON.stringify(readBack) === JSON.stringify(written);
}

function conflict(other: StoredInspection | undefined): SaveResult {
  const what =
    other === undefined
      ? "it was deleted in another tab"
      : "it was changed in another tab after it was opened here";
  const cure = "Nothing was overwritten. Keep this version as a copy, or show the other tab’s version.";
  return { ok: false, because: "conflict", problem: { where: "", what, cure } };
}

function notAsWritten(): SaveResult {
  return {
    ok: false,
    because: "storage error",
    problem: {
      where: "",
      what: "the browser returned something else than was saved",
      cure: "Save the inspection as a file to be safe.",
    },
  };
}
