import type { ListEntry } from "../../records/editorState.ts";
import { dayOf } from "./localTime.ts";

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

export function listEntryName({ name, isDamaged }: ListEntry): string {
  if (isDamaged) return "Damaged inspection";
  return name ?? "New inspection, slide not described yet";
}

/** What the list tells of an inspection under its name. */
export function listEntrySummary(entry: ListEntry): string {
  const { machine, surveys, lastTaken, readings, savedAt, inFile, isDamaged } = entry;
  if (isDamaged) return "It cannot be opened; what is there can be saved.";
  const parts = [
    machine,
    lastTaken === null
      ? null
      : surveys > 1
        ? `${surveys} surveys, the last of ${dayOf(lastTaken)}`
        : `survey of ${dayOf(lastTaken)}`,
    `${readings} ${readings === 1 ? "reading" : "readings"}`,
    `saved ${WHEN.format(new Date(savedAt))}`,
    inFile ? null : "not in a file yet",
  ];
  return parts.filter((part) => part !== null).join(" · ");
}
