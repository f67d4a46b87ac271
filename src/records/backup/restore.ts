import { picturesIn, withPictures } from "../../inspection/pictures.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { StoredPicture } from "../database.ts";
import { type Database, database } from "../database.ts";
import { type StoredInspection, slideName } from "../editorState.ts";
import { withName } from "../listActions.ts";
import { putPictures } from "../pictures.ts";
import { storageError } from "../storageErrors.ts";
import { isAsWritten } from "../storedInspection.ts";
import type { Backup } from "./backup.ts";
import type { ComparedInspection } from "./compareBackup.ts";

/** Which version of an inspection in conflict to have: the stored one, the one of the backup, or both. */
export type RestoreChoice = "stored" | "backup" | "both";

/** The name of the error when an inspection changed since the backup was compared. */
const CHANGED = "ChangedMeanwhileError";

/**
 * Restores a backup: all inspections that are new here, and those in conflict as chosen. It writes everything or, on any
 * failure, nothing, and never overwrites an inspection that was changed since the backup was compared.
 *
 * @param choices by the id in the backup; without a choice the stored inspection stays
 * @param newId makes an id for an inspection stored beside another
 * @returns the inspections written
 */
export async function restore(
  backup: Backup,
  compared: readonly ComparedInspection[],
  choices: ReadonlyMap<string, RestoreChoice>,
  newId: () => string,
): Promise<Outcome<readonly StoredInspection[]>> {
  const wanted = compared.flatMap((each) =>
    wantedOf(each, choices.get(each.inspection.id) ?? "stored", newId),
  );
  const same = compared.filter(({ status }) => status === "same").map(({ inspection }) => inspection);
  try {
    const records = await database();
    const written = await writeAll(records, backup, compared, wanted, same);
    for (const each of written) {
      if (!isAsWritten(await records.get("inspections", each.id), each)) {
        return failed("", "the browser returned something else than was saved", "Restore it again.");
      }
    }
    return succeeded(written);
  } catch (error) {
    if (error instanceof DOMException && error.name === CHANGED) {
      const what = "something was changed in another tab since the backup was compared";
      return failed("", what, "Nothing was restored. Open the backup again.");
    }
    return { ok: false, problem: storageError(error) };
  }
}

function wantedOf(
  { inspection, status, stored }: ComparedInspection,
  choice: RestoreChoice,
  newId: () => string,
): readonly StoredInspection[] {
  if (status === "new") return [inspection];
  if (status === "same" || choice === "stored" || stored === null) return [];
  if (choice === "backup") {
    // Above both revisions, so that a tab that shows the stored one notices the change.
    const revision = Math.max(Number(stored.revision) || 0, inspection.revision) + 1;
    return [{ ...inspection, id: stored.id, revision }];
  }
  const name = slideName(inspection);
  const copy =
    name === null ? inspection : { ...inspection, ...withName(inspection, `${name}, from the backup`) };
  return [{ ...copy, id: newId() }];
}

async function writeAll(
  records: Database,
  { damaged, pictures }: Backup,
  compared: readonly ComparedInspection[],
  wanted: readonly StoredInspection[],
  same: readonly StoredInspection[],
): Promise<readonly StoredInspection[]> {
  const transaction = records.transaction(["inspections", "pictures"], "readwrite", { durability: "strict" });
  const inspections = transaction.objectStore("inspections");
  try {
    for (const { inspection, stored } of compared) {
      const now = await inspections.get(stored?.id ?? inspection.id);
      if (now?.revision !== stored?.revision) throw new DOMException("", CHANGED);
    }
    const used = new Set(picturesIn([wanted, same, damaged]).map(({ id }) => id));
    const needed = pictures.filter(({ id }) => used.has(id));
    const ids = await putPictures(transaction.objectStore("pictures"), needed);
    const written = wanted.map((each) => withPictureIds(each, needed, ids));
    for (const each of written) await inspections.put(each);
    for (const record of damaged) {
      const exists = (await inspections.getKey(record.id)) !== undefined;
      if (!exists) await inspections.put(record as StoredInspection);
    }
    await transaction.done;
    return written;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}

function abort(transaction: { abort(): void; readonly done: Promise<void> }): void {
  // Its promise rejects because of this call.
  transaction.done.catch(() => {});
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}

/** The inspection with the ids under which its pictures are stored. */
function withPictureIds(
  inspection: StoredInspection,
  pictures: readonly StoredPicture[],
  ids: readonly string[],
): StoredInspection {
  const idOf = new Map(pictures.map(({ id }, index) => [id, ids[index] ?? id]));
  return withPictures(inspection, (picture) => {
    const id = idOf.get(picture.id) ?? picture.id;
    return id === picture.id ? picture : { ...picture, id };
  });
}
