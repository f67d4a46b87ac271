import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
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
function entryOf(kept: KeptInspection): ListEntry {
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

/** Deletes a kept inspection; what was deleted is handed back, so that it can be put back. */
export async function deleteKept(id: string): Promise<Outcome<KeptInspection | null>> {
  try {
    const transaction = (await database()).transaction("inspections", "readwrite");
    const found = await transaction.store.get(id);
    await transaction.store.delete(id);
    await transaction.done;
    return succeeded(found ?? null);
  } catch (error) {
    return { ok: false, problem: troubleOf(error) };
  }
}

/** Puts back what was deleted, exactly as it was, unless it is there again. */
export async function putBack(kept: KeptInspection): Promise<Outcome<null>> {
  try {
    const transaction = (await database()).transaction("inspections", "readwrite");
    if ((await transaction.store.getKey(kept.id)) === undefined) await transaction.store.put(kept);
    await transaction.done;
    return succeeded(null);
  } catch (error) {
    return { ok: false, problem: troubleOf(error) };
  }
}
