import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database } from "./database.ts";
import {
  awaitsReading,
  type EditorState,
  isSameState,
  type StoredInspection,
  slideName,
} from "./editorState.ts";
import { storageError } from "./storageErrors.ts";

/** One stored inspection as the list shows it. */
export interface ListEntry {
  readonly id: string;
  readonly savedAt: string;
  /** Null if the slide has no name yet. */
  readonly name: string | null;
  readonly machine: string | null;
  readonly surveys: number;
  /** When the last survey was taken, ISO 8601; null if there is none. */
  readonly lastTaken: string | null;
  readonly readings: number;
  readonly inFile: boolean;
  /** Whether the record is so damaged that nothing else can be shown of it. */
  readonly isDamaged: boolean;
}

/** The inspections stored in this browser, the last saved first. */
export async function listStored(): Promise<Outcome<readonly ListEntry[]>> {
  try {
    const all = await (await database()).getAll("inspections");
    return succeeded(all.map(listEntryOf).sort((a, b) => b.savedAt.localeCompare(a.savedAt)));
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** The list entry of a stored inspection. A damaged one has an entry too: it must neither hide the others nor be lost. */
export function listEntryOf(stored: StoredInspection): ListEntry {
  try {
    return entryOfSound(stored);
  } catch {
    return {
      id: stored.id,
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

/** Counts every reading entered, whether it can be read or not. Throws where the record is damaged. */
function entryOfSound(stored: StoredInspection): ListEntry {
  const { id, savedAt, inspection, draft } = stored;
  const surveys = inspection?.surveys ?? [];
  const readings = surveys.reduce((count, survey) => count + survey.readings.length, 0);
  const unread = draft.rows.filter((row) => !awaitsReading(row)).length;
  return {
    id,
    savedAt,
    name: slideName(stored),
    machine: inspection?.slide.machine ?? null,
    surveys: surveys.length,
    lastTaken:
      surveys
        .map(({ taken }) => taken)
        .sort()
        .at(-1) ?? null,
    readings: readings + unread + (draft.waiting?.readings.length ?? 0),
    inFile: stored.inFile === true,
    isDamaged: false,
  };
}

/** The entries whose name or machine contain every word of a search, whatever its case and accents. */
export function searchEntries(entries: readonly ListEntry[], typed: string): readonly ListEntry[] {
  const words = simplified(typed).split(/\s+/).filter(Boolean);
  return entries.filter(({ name, machine }) => {
    const text = simplified(`${name ?? ""} ${machine ?? ""}`);
    return words.every((word) => text.includes(word));
  });
}

function simplified(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{Mark}/gu, "")
    .toLowerCase();
}

/**
 * The stored inspection with exactly this state, or this state and further verdicts; null if there is none or the
 * database cannot be opened.
 */
export async function findStored(state: EditorState): Promise<StoredInspection | null> {
  try {
    const all = await (await database()).getAll("inspections");
    return all.find((stored) => contains(stored, state)) ?? null;
  } catch {
    return null;
  }
}

/** False for a damaged record. */
function contains(stored: StoredInspection, state: EditorState): boolean {
  try {
    return isSameState(stored, state) || hasFurtherVerdicts(stored, state);
  } catch {
    return false;
  }
}

/** Whether two states differ only in verdicts, and the stored one has all verdicts of the other. */
function hasFurtherVerdicts(stored: EditorState, state: EditorState): boolean {
  const noted = new Set((stored.inspection?.verdicts ?? []).map((given) => JSON.stringify(given)));
  return (
    (state.inspection?.verdicts ?? []).every((given) => noted.has(JSON.stringify(given))) &&
    isSameState(withoutVerdicts(stored), withoutVerdicts(state))
  );
}

function withoutVerdicts(state: EditorState): EditorState {
  if (state.inspection === null) return state;
  const { verdicts: _noted, ...inspection } = state.inspection;
  return { ...state, inspection };
}
