import { encodeBase64 } from "../../inspection/base64.ts";
import { type Outcome, succeeded } from "../../inspection/problem.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import type { StoredPicture } from "../database.ts";
import { database } from "../database.ts";
import type { StoredInspection } from "../editorState.ts";
import { storageError } from "../storageErrors.ts";
import { canBeOpened } from "../storedInspection.ts";
import { BACKUP_KIND } from "./backup.ts";

/** The text of a backup in parts, and what it holds. */
export interface NewBackup {
  readonly parts: readonly string[];
  readonly inspections: readonly StoredInspection[];
  /** Number of pictures. */
  readonly pictures: number;
}

/**
 * Makes a backup of everything stored in this browser. Its inspections are marked as being in a file.
 *
 * @param now the current time
 */
export async function createBackup(now: Date): Promise<Outcome<NewBackup>> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"]);
    const [records, pictures] = await Promise.all([
      transaction.objectStore("inspections").getAll(),
      transaction.objectStore("pictures").getAll(),
    ]);
    const inspections = records.filter(canBeOpened).map((each) => ({ ...each, inFile: true }));
    const damaged = records.filter((each) => !canBeOpened(each));
    return succeeded({
      parts: partsOf(now, inspections, damaged, pictures),
      inspections,
      pictures: pictures.length,
    });
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** In parts, because many pictures together may exceed the longest string of a browser. */
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
  const entries = pictures.map(({ id, type, bytes }) =>
    JSON.stringify({ id, type, data: encodeBase64(bytes) }),
  );
  return [
    `${JSON.stringify(head, null, 1).slice(0, -2)},\n "pictures": [`,
    ...entries.map((entry, index) => `${index === 0 ? "" : ","}\n  ${entry}`),
    "\n ]\n}\n",
  ];
}

/** Marks these inspections as being in a file, except those changed or deleted since. */
export async function markInFile(inspections: readonly StoredInspection[]): Promise<Outcome<null>> {
  try {
    const transaction = (await database()).transaction("inspections", "readwrite");
    for (const each of inspections) {
      const now = await transaction.store.get(each.id);
      if (now?.revision === each.revision) await transaction.store.put(each);
    }
    await transaction.done;
    return succeeded(null);
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}
