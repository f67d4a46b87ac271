import type { StoredInspection } from "../../../records/editorState.ts";
import { listEntryOf } from "../../../records/inspectionList.ts";
import { momentOf } from "../../editing/localTime.ts";
import { listEntryName, listEntrySummary } from "../listEntryWords.ts";

export function storedName(stored: StoredInspection): string {
  return listEntryName(listEntryOf(stored));
}

/** Its machine, surveys, readings and when it was saved; a backup is a file, so that is not mentioned. */
export function storedSummary(stored: StoredInspection): string {
  return listEntrySummary({ ...listEntryOf(stored), inFile: true });
}

export function counted(count: number, noun: string): string {
  return `${count === 1 ? "one" : count} ${noun}${count === 1 ? "" : "s"}`;
}

/** @param damaged number of damaged records restored with the others */
export function restoredWords(restored: readonly StoredInspection[], damaged: number): string {
  const [first] = restored;
  if (first !== undefined && restored.length === 1 && damaged === 0)
    return `“${storedName(first)}” was restored.`;
  return `${restored.length + damaged} slides were restored.`;
}

/** Warns of stored inspections that those of a backup replace. */
export function replacedWords(replaced: readonly StoredInspection[]): string {
  const names = replaced.map((stored) => {
    const isDated = !Number.isNaN(Date.parse(stored.savedAt));
    return `“${storedName(stored)}”${isDated ? ` as saved here ${momentOf(stored.savedAt)}` : ""}`;
  });
  return `Replaced by the backup’s: ${names.join("; ")}. This cannot be undone: they are then only in a file, if there is one.`;
}

/** The parts in which two inspections of a slide differ. */
export function differencesWords(one: StoredInspection, other: StoredInspection): string {
  const differing = PARTS.filter(([, of]) => JSON.stringify(of(one)) !== JSON.stringify(of(other)));
  return differing.length === 0 ? "other data" : differing.map(([words]) => words).join(", ");
}

const PARTS: readonly (readonly [string, (stored: StoredInspection) => unknown])[] = [
  ["the slide", ({ inspection }) => inspection?.slide],
  ["surveys", ({ inspection }) => inspection?.surveys],
  ["events", ({ inspection }) => inspection?.events],
  ["verdicts noted", ({ inspection }) => inspection?.verdicts],
  ["entries that cannot be read yet", ({ draft }) => [draft?.fields, draft?.rows, draft?.waiting]],
];
