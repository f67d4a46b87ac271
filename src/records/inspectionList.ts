import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
import {
  type EditorState,
  isSameState,
  type ListEntry,
  listEntryOf,
  type StoredInspection,
} from "./editorState.ts";
import { storageError } from "./storageErrors.ts";

/** The inspections kept in this browser, the one saved last first. */
export async function listStored(): Promise<Outcome<readonly ListEntry[]>> {
  try {
    const all = await (await database()).getAll("inspections");
    return succeeded(all.map(entryOf).sort((a, b) => b.savedAt.localeCompare(a.savedAt)));
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** One that is damaged is listed, too: it must neither hide the others nor be lost sight of. */
export function entryOf(kept: StoredInspection): ListEntry {
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

/**
 * The kept inspection that holds just this work, or that and further verdicts; null where there is none, also where
 * the browser's database cannot be had.
 */
export async function findStored(state: EditorState): Promise<StoredInspection | null> {
  try {
    const all = await (await database()).getAll("inspections");
    return all.find((kept) => holds(kept, state)) ?? null;
  } catch {
    return null;
  }
}

/** A damaged one holds nothing that could be compared. */
function holds(kept: StoredInspection, state: EditorState): boolean {
  try {
    return isSameState(kept, state) || hasFurtherVerdicts(kept, state);
  } catch {
    return false;
  }
}

/** Whether only verdicts were noted since it was the same. */
function hasFurtherVerdicts(kept: EditorState, state: EditorState): boolean {
  const [more, less] = [kept.inspection?.verdicts ?? [], state.inspection?.verdicts ?? []];
  const noted = new Set(more.map((given) => JSON.stringify(given)));
  return (
    less.every((given) => noted.has(JSON.stringify(given))) &&
    isSameState(withoutVerdicts(kept), withoutVerdicts(state))
  );
}

function withoutVerdicts(state: EditorState): EditorState {
  if (state.inspection === null) return state;
  const { verdicts: _noted, ...inspection } = state.inspection;
  return { ...state, inspection };
}
