import type { StoredInspection } from "../../../records/editorState.ts";
import { entryOf } from "../../../records/inspectionList.ts";
import { listEntryName, listEntrySummary } from "../../editing/listEntryWords.ts";

export const MOMENT = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

export function storedName(kept: StoredInspection): string {
  return listEntryName(entryOf(kept));
}

/** Its machine, surveys, readings and when it was saved; that what is in a backup is in a file goes without saying. */
export function storedSummary(kept: StoredInspection): string {
  return listEntrySummary({ ...entryOf(kept), inFile: true });
}

export function counted(count: number, noun: string): string {
  return `${count === 1 ? "one" : count} ${noun}${count === 1 ? "" : "s"}`;
}

/** @param damaged how many that could not be opened came back with the others */
export function restoredWords(restored: readonly StoredInspection[], damaged: number): string {
  const [first] = restored;
  if (first !== undefined && restored.length === 1 && damaged === 0)
    return `“${storedName(first)}” was restored.`;
  return `${restored.length + damaged} slides were restored.`;
}

/** What is lost where a backup's take the place of some that are kept here. */
export function replacedWords(replaced: readonly StoredInspection[]): string {
  const named = replaced.map((kept) => {
    const at = new Date(kept.savedAt);
    return `“${storedName(kept)}”${Number.isNaN(at.getTime()) ? "" : ` as saved here ${MOMENT.format(at)}`}`;
  });
  return `Replaced by the backup’s: ${named.join("; ")}. That cannot be taken back: what is here is then only in a file, if there is one.`;
}

/** In what two inspections of a slide differ, for who has to choose between them. */
export function differencesWords(one: StoredInspection, other: StoredInspection): string {
  const differing = PARTS.filter(([, of]) => JSON.stringify(of(one)) !== JSON.stringify(of(other)));
  return differing.length === 0 ? "other data" : differing.map(([words]) => words).join(", ");
}

const PARTS: readonly (readonly [string, (kept: StoredInspection) => unknown])[] = [
  ["the slide", ({ inspection }) => inspection?.slide],
  ["surveys", ({ inspection }) => inspection?.surveys],
  ["events", ({ inspection }) => inspection?.events],
  ["verdicts noted", ({ inspection }) => inspection?.verdicts],
  ["entries that cannot be read yet", ({ draft }) => [draft?.fields, draft?.rows, draft?.waiting]],
];
