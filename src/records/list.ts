import { picturesIn } from "../inspection/pictures.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
import type { KeptPicture } from "./keptPicture.ts";
import { isSameWork, type KeptInspection, type ListEntry, listEntryOf, type Work } from "./record.ts";
import { troubleOf } from "./trouble.ts";

/** The inspections kept in this browser, the one saved last first. */
export async function listKept(): Promise<Outcome<readonly ListEntry[]>> {
  try {
    const all = await (await database()).getAll("inspections");
    return succeeded(all.map(entryOf).sort((a, b) => b.savedAt.localeCompare(a.savedAt)));
  } catch (error) {
    return { ok: false, problem: troubleOf(error) };
  }
}

/** One that is damaged is listed, too: it must neither hide the others nor be lost sight of. */
export function entryOf(kept: KeptInspection): ListEntry {
  try {
    return listEntryOf(kept);
  } catch {
    return {
      id: kept.id,
      savedAt: "",
      name: null,
      machine: null,
      surveys: 0,
      lastTaken: null,
      readings: 0,
      inFile: false,
      isDamaged: true,
    };
  }
}

/** The kept inspection that holds just this work, or null: also where the browser's database cannot be had. */
export async function findKept(work: Work): Promise<KeptInspection | null> {
  try {
    const all = await (await database()).getAll("inspections");
    return all.find((kept) => holds(kept, work)) ?? null;
  } catch {
    return null;
  }
}

/** A damaged one holds nothing that could be compared. */
function holds(kept: KeptInspection, work: Work): boolean {
  try {
    return isSameWork(kept, work);
  } catch {
    return false;
  }
}

/** What was deleted, with the pictures that it refers to, as these may be gone when it is put back. */
export interface Deleted {
  readonly kept: KeptInspection;
  readonly pictures: readonly KeptPicture[];
}

/** Deletes a kept inspection; what was deleted is handed back, so that it can be put back. */
export async function deleteKept(id: string): Promise<Outcome<Deleted | null>> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"], "readwrite");
    const inspections = transaction.objectStore("inspections");
    const kept = await inspections.get(id);
    const named = new Set(picturesIn(kept).map((picture) => picture.id));
    const found = await Promise.all([...named].map((name) => transaction.objectStore("pictures").get(name)));
    await inspections.delete(id);
    await transaction.done;
    return succeeded(kept === undefined ? null : { kept, pictures: found.flatMap((each) => each ?? []) });
  } catch (error) {
    return { ok: false, problem: troubleOf(error) };
  }
}

/** Puts back what was deleted, exactly as it was, unless it is there again. */
export async function putBack({ kept, pictures }: Deleted): Promise<Outcome<null>> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"], "readwrite");
    const inspections = transaction.objectStore("inspections");
    if ((await inspections.getKey(kept.id)) === undefined) await inspections.put(kept);
    const store = transaction.objectStore("pictures");
    for (const picture of pictures) {
      if ((await store.getKey(picture.id)) === undefined) await store.put(picture);
    }
    await transaction.done;
    return succeeded(null);
  } catch (error) {
    return { ok: false, problem: troubleOf(error) };
  }
}
