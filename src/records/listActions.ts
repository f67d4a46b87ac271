import { picturesIn } from "../inspection/pictures.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database, type StoredPicture } from "./database.ts";
import { type EditorState, type StoredInspection, slideName } from "./editorState.ts";
import { storageError } from "./storageErrors.ts";
import { readStored, saveStored } from "./storedInspection.ts";

/** Gives the slide of a stored inspection another name. */
export async function renameStored(id: string, name: string): Promise<Outcome<StoredInspection>> {
  const read = await readStored(id);
  return read.ok ? save({ ...read.value, ...withName(read.value, name) }) : read;
}

/** Stores a copy of a stored inspection under the id `copyId`; the slide's name says that it is a copy. */
export async function duplicateStored(id: string, copyId: string): Promise<Outcome<StoredInspection>> {
  const read = await readStored(id);
  if (!read.ok) return read;
  const name = slideName(read.value);
  const copy = name === null ? read.value : { ...read.value, ...withName(read.value, `${name}, copy`) };
  return save({ ...copy, id: copyId, revision: 0 });
}

async function save(inspection: StoredInspection): Promise<Outcome<StoredInspection>> {
  const result = await saveStored(inspection);
  return result.ok ? succeeded(result.stored) : result;
}

/** The state with another name of the slide. */
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

/** A deleted inspection with its pictures, which may be gone from the store by the time the deletion is undone. */
export interface DeletedInspection {
  readonly stored: StoredInspection;
  readonly pictures: readonly StoredPicture[];
}

/** Deletes a stored inspection and returns it, so that it can be restored; null if there was none. */
export async function deleteStored(id: string): Promise<Outcome<DeletedInspection | null>> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"], "readwrite");
    const inspections = transaction.objectStore("inspections");
    const stored = await inspections.get(id);
    const ids = new Set(picturesIn(stored).map((picture) => picture.id));
    const found = await Promise.all([...ids].map((each) => transaction.objectStore("pictures").get(each)));
    await inspections.delete(id);
    await transaction.done;
    return succeeded(stored === undefined ? null : { stored, pictures: found.flatMap((each) => each ?? []) });
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** Stores a deleted inspection again exactly as it was. Overwrites nothing that has its id since. */
export async function restoreDeleted({ stored, pictures }: DeletedInspection): Promise<Outcome<null>> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"], "readwrite");
    const inspections = transaction.objectStore("inspections");
    if ((await inspections.getKey(stored.id)) === undefined) await inspections.put(stored);
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
