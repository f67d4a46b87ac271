import { type Outcome, succeeded } from "../inspection/problem.ts";
import { type EditorState, type StoredInspection, slideName } from "./editorState.ts";
import { readStored, saveStored } from "./storedInspection.ts";

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
