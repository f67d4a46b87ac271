import { type Outcome, succeeded } from "../../inspection/problem.ts";
import { database } from "../database.ts";
import { isSameState, type StoredInspection } from "../editorState.ts";
import { storageError } from "../storageErrors.ts";
import type { Backup } from "./bundle.ts";

/** An inspection of a backup beside what this browser keeps of it. */
export interface ComparedInspection {
  readonly inspection: StoredInspection;
  readonly standing: "new" | "same" | "conflict";
  /** What is kept here; null where it is new. */
  readonly here: StoredInspection | null;
}

/** Sets the inspections of a backup against those kept in this browser. */
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
 * The same for what is kept, which may be damaged. An inspection belongs to the one that is kept under its name here;
 * failing that, to one that is just the same; failing that, to the one saved last of the same slide, as that came here
 * by a file.
 */
export function compareInspections(
  all: readonly StoredInspection[],
  inspections: readonly StoredInspection[],
): readonly ComparedInspection[] {
  const named = new Set(inspections.map(({ id }) => id));
  const others = new Set(all.filter(({ id }) => !named.has(id)));
  return inspections.map((inspection): ComparedInspection => {
    const unclaimed = [...others];
    const here =
      all.find(({ id }) => id === inspection.id) ??
      unclaimed.find((kept) => isSame(kept, inspection)) ??
      latest(unclaimed.filter((kept) => isSameSlide(kept, inspection))) ??
      null;
    if (here === null) return { inspection, standing: "new", here };
    // Each is set against one only, or one restored would be written over by the next.
    others.delete(here);
    return { inspection, standing: isSame(here, inspection) ? "same" : "conflict", here };
  });
}

function isSame(kept: StoredInspection, inspection: StoredInspection): boolean {
  try {
    return isSameState(kept, inspection);
  } catch {
    return false;
  }
}

function isSameSlide(kept: StoredInspection, { inspection }: StoredInspection): boolean {
  return inspection !== null && kept.inspection?.slide?.id === inspection.slide.id;
}

function latest(kept: readonly StoredInspection[]): StoredInspection | undefined {
  return [...kept].sort((one, other) => String(other.savedAt).localeCompare(String(one.savedAt)))[0];
}
