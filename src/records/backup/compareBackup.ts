import { type Outcome, succeeded } from "../../inspection/problem.ts";
import { database } from "../database.ts";
import { isSameState, type StoredInspection } from "../editorState.ts";
import { storageError } from "../storageErrors.ts";
import type { Backup } from "./backup.ts";

/** An inspection of a backup, and the one of this browser that it belongs to. */
export interface ComparedInspection {
  readonly inspection: StoredInspection;
  readonly status: "new" | "same" | "conflict";
  /** The one stored in this browser; null if the status is `new`. */
  readonly stored: StoredInspection | null;
}

/** Compares the inspections of a backup with those stored in this browser. */
export async function compareBackup({
  inspections,
}: Backup): Promise<Outcome<readonly ComparedInspection[]>> {
  try {
    const all = await (await database()).getAll("inspections");
    return succeeded(compareInspections(all, inspections));
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/**
 * Compares the inspections of a backup with stored ones, which may be damaged. An inspection belongs to the stored one
 * with its id, else to one with the same content, else to the last saved one of the same slide, which came by a file.
 */
export function compareInspections(
  all: readonly StoredInspection[],
  inspections: readonly StoredInspection[],
): readonly ComparedInspection[] {
  const ids = new Set(inspections.map(({ id }) => id));
  const others = new Set(all.filter(({ id }) => !ids.has(id)));
  return inspections.map((inspection): ComparedInspection => {
    const candidates = [...others];
    const stored =
      all.find(({ id }) => id === inspection.id) ??
      candidates.find((each) => isSame(each, inspection)) ??
      latest(candidates.filter((each) => isSameSlide(each, inspection))) ??
      null;
    if (stored === null) return { inspection, status: "new", stored };
    // Each stored inspection is used once, or one restored would overwrite another.
    others.delete(stored);
    return { inspection, status: isSame(stored, inspection) ? "same" : "conflict", stored };
  });
}

function isSame(stored: StoredInspection, inspection: StoredInspection): boolean {
  try {
    return isSameState(stored, inspection);
  } catch {
    return false;
  }
}

function isSameSlide(stored: StoredInspection, { inspection }: StoredInspection): boolean {
  return inspection !== null && stored.inspection?.slide?.id === inspection.slide.id;
}

function latest(inspections: readonly StoredInspection[]): StoredInspection | undefined {
  return [...inspections].sort((one, other) => String(other.savedAt).localeCompare(String(one.savedAt)))[0];
}
