import { picturesIn, withPictures } from "../../inspection/pictures.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { type Database, database } from "../database.ts";
import { type StoredInspection, slideName } from "../editorState.ts";
import { withName } from "../listActions.ts";
import { putPictures } from "../pictures.ts";
import { storageError } from "../storageErrors.ts";
import { isAsWritten } from "../storedInspection.ts";
import type { StoredPicture } from "../storedPicture.ts";
import type { Backup } from "./bundle.ts";
import type { ComparedInspection } from "./compareBundle.ts";

/** What becomes of an inspection that is not the same here as in the backup. */
export type RestoreChoice = "keep" | "take" | "both";

/** Something changed here since the backup was compared. */
const CHANGED = "ChangedMeanwhileError";

/**
 * Puts a backup back: what is new here, and of what is in conflict what was chosen. All of it or, whatever happens,
 * nothing; what was changed here since it was compared is not written over either.
 *
 * @param choices by the id in the backup; what is not among them stays as it is here
 * @param newId makes an id for what is kept beside another
 * @returns what was written
 */
export async function restore(
  bundle: Backup,
  compared: readonly ComparedInspection[],
  choices: ReadonlyMap<string, RestoreChoice>,
  newId: () => string,
): Promise<Outcome<readonly StoredInspection[]>> {
  const wanted = compared.flatMap((each) => wantedOf(each, choices.get(each.inspection.id) ?? "keep", newId));
  const same = compared.filter(({ standing }) => standing === "same").map(({ inspection }) => inspection);
  try {
    const records = await database();
    const written = await writeAll(records, bundle, compared, wanted, same);
    for (const kept of written) {
      if (!isAsWritten(await records.get("inspections", kept.id), kept)) {
        return failed(
          "",
          "what was read back from this browser is not what was written",
          "Restore it again.",
        );
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
  { inspection, standing, here }: ComparedInspection,
  choice: RestoreChoice,
  newId: () => string,
): readonly StoredInspection[] {
  if (standing === "new") return [inspection];
  if (standing === "same" || choice === "keep" || here === null) return [];
  if (choice === "take") {
    // Saved once more than either, so that a tab that shows what was here notices.
    const revision = Math.max(Number(here.revision) || 0, inspection.revision) + 1;
    return [{ ...inspection, id: here.id, revision }];
  }
  const name = slideName(inspection);
  const beside =
    name === null ? inspection : { ...inspection, ...withName(inspection, `${name}, from the backup`) };
  return [{ ...beside, id: newId() }];
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
    for (const { inspection, here } of compared) {
      const there = await inspections.get(here?.id ?? inspection.id);
      if (there?.revision !== here?.revision) throw new DOMException("", CHANGED);
    }
    const named = new Set(picturesIn([wanted, same, damaged]).map(({ id }) => id));
    const needed = pictures.filter(({ id }) => named.has(id));
    const ids = await putPictures(transaction.objectStore("pictures"), needed);
    const written = wanted.map((kept) => withIds(kept, needed, ids));
    for (const kept of written) await inspections.put(kept);
    for (const wreck of damaged) {
      const isThere = (await inspections.getKey(wreck.id)) !== undefined;
      if (!isThere) await inspections.put(wreck as StoredInspection);
    }
    await transaction.done;
    return written;
  } catch (error) {
    abort(transaction);
    throw error;
  }
}

/** What was written before is taken back with it. */
function abort(transaction: { abort(): void; readonly done: Promise<void> }): void {
  // It says that it was given up, which is known.
  transaction.done.catch(() => {});
  try {
    transaction.abort();
  } catch {
    // It has ended by itself.
  }
}

/** Refers to pictures by the ids that they were put under. */
function withIds(
  kept: StoredInspection,
  pictures: readonly StoredPicture[],
  ids: readonly string[],
): StoredInspection {
  const idOf = new Map(pictures.map(({ id }, index) => [id, ids[index] ?? id]));
  return withPictures(kept, (picture) => {
    const id = idOf.get(picture.id) ?? picture.id;
    return id === picture.id ? picture : { ...picture, id };
  });
}
