import { picturesIn } from "../inspection/pictures.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
import { type EditorState, type StoredInspection, slideName } from "./editorState.ts";
import { storageError } from "./storageErrors.ts";
import { readStored, saveStored } from "./storedInspection.ts";
import type { StoredPicture } from "./storedPicture.ts";

/** Gives a kept inspection another name. */
export async function renameStored(id: string, name: string): Promise<Outcome<StoredInspection>> {
  const read = await readStored(id);
  return read.ok ? saveAs({ ...read.value, ...withName(read.value, name) }) : read;
}

/**
 * Keeps a kept inspection a second time, as a copy.
 *
 * @param as the name to keep the copy under
 */
export async function duplicateStored(id: string, as: string): Promise<Outcome<StoredInspection>> {
  const read = await readStored(id);
  if (!read.ok) return read;
  const name = slideName(read.value);
  const copy = name === null ? read.value : { ...read.value, ...withName(read.value, `${name}, copy`) };
  return saveAs({ ...copy, id: as, revision: 0 });
}

async function saveAs(kept: StoredInspection): Promise<Outcome<StoredInspection>> {
  const saving = await saveStored(kept);
  return saving.ok ? succeeded(saving.kept) : saving;
}

/** The work with the slide under another name. */
export function withName({ inspection, draft }: EditorState, name: string): EditorState {
  if (inspection !== null) {
    return { draft, inFile: false, inspection: { ...inspection, slide: { ...inspection.slide, name } } };
  }
  const others = draft.fields.filter(({ survey, path }) => survey !== null || path !== "name");
  return {
    inspection,
    inFile: false,
    draft: { ...draft, fields: [...others, { survey: null, path: "name", text: name }] },
  };
}

/** A deleted inspection with its pictures, which may be gone from the database by the time it is restored. */
export interface DeletedInspection {
  readonly kept: StoredInspection;
  readonly pictures: readonly StoredPicture[];
}

/** Deletes a stored inspection, and returns it so that it can be restored; null where there was none. */
export async function deleteStored(id: string): Promise<Outcome<DeletedInspection | null>> {
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
    return { ok: false, problem: storageError(error) };
  }
}

/** Restores a deleted inspection exactly as it was, unless one with its id exists again. */
export async function restoreDeleted({ kept, pictures }: DeletedInspection): Promise<Outcome<null>> {
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
    return { ok: false, problem: storageError(error) };
  }
}
