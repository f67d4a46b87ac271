import { entryOf } from "../../records/list.ts";
import type { KeptInspection } from "../../records/record.ts";
import { aboutEntry, nameInList } from "../start/entryWords.ts";

export const MOMENT = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

export function nameOfKept(kept: KeptInspection): string {
  return nameInList(entryOf(kept));
}

/** Its machine, surveys, readings and when it was saved; that what is in a backup is in a file goes without saying. */
export function aboutKept(kept: KeptInspection): string {
  return aboutEntry({ ...entryOf(kept), inFile: true });
}

export function counted(count: number, noun: string): string {
  return `${count === 1 ? "one" : count} ${noun}${count === 1 ? "" : "s"}`;
}

/** @param damaged how many that could not be opened came back with the others */
export function restoredWords(restored: readonly KeptInspection[], damaged: number): string {
  const [first] = restored;
  if (first !== undefined && restored.length === 1 && damaged === 0)
    return `“${nameOfKept(first)}” was restored.`;
  return `${restored.length + damaged} slides were restored.`;
}
