import { base64Of } from "../../inspection/base64.ts";
import { type Outcome, succeeded } from "../../inspection/problem.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import { database } from "../database.ts";
import type { StoredInspection } from "../editorState.ts";
import { storageError } from "../storageErrors.ts";
import { canBeOpened } from "../storedInspection.ts";
import type { StoredPicture } from "../storedPicture.ts";
import { BACKUP_KIND } from "./bundle.ts";

/** A backup, as the parts of its text, and the inspections in it. */
export interface NewBackup {
  readonly parts: readonly string[];
  readonly inspections: readonly StoredInspection[];
  readonly pictures: number;
}

/**
 * Everything that this browser keeps as one backup. Each inspection in it says of itself that there is a file of it.
 *
 * @param now the time it is
 */
export async function createBackup(now: Date): Promise<Outcome<NewBackup>> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"]);
    const [records, pictures] = await Promise.all([
      transaction.objectStore("inspections").getAll(),
      transaction.objectStore("pictures").getAll(),
    ]);
    const inspections = records.filter(canBeOpened).map((kept) => ({ ...kept, inFile: true }));
    const damaged = records.filter((kept) => !canBeOpened(kept));
    return succeeded({
      parts: partsOf(now, inspections, damaged, pictures),
      inspections,
      pictures: pictures.length,
    });
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** Apart, as a browser allows no text as long as many pictures together may be. */
function partsOf(
  now: Date,
  inspections: readonly StoredInspection[],
  damaged: readonly unknown[],
  pictures: readonly StoredPicture[],
): readonly string[] {
  const head = {
    format: BACKUP_KIND.format,
    version: BACKUP_KIND.version,
    saved: now.toISOString(),
    program: PROGRAM_VERSION,
    inspections,
    damaged,
  };
  const entries = pictures.map(({ id, type, bytes }) => JSON.stringify({ id, type, data: base64Of(bytes) }));
  return [
    `${JSON.stringify(head, null, 1).slice(0, -2)},\n "pictures": [`,
    ...entries.map((entry, index) => `${index === 0 ? "" : ","}\n  ${entry}`),
    "\n ]\n}\n",
  ];
}

/** Takes note that there is a file of these inspections, but of those that were changed or deleted since. */
export async function markInFile(inspections: readonly StoredInspection[]): Promise<Outcome<null>> {
  try {
    const transaction = (await database()).transaction("inspections", "readwrite");
    for (const kept of inspections) {
      const there = await transaction.store.get(kept.id);
      if (there?.revision === kept.revision) await transaction.store.put(kept);
    }
    await transaction.done;
    return succeeded(null);
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}
