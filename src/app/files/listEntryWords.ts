import type { ListEntry } from "../../records/inspectionList.ts";
import { dayOf, momentOf } from "../editing/localTime.ts";

export function listEntryName({ name, isDamaged }: ListEntry): string {
  if (isDamaged) return "Damaged inspection";
  return name ?? "New inspection, slide not described yet";
}

/** The line under an inspection's name in the list. */
export function listEntrySummary(entry: ListEntry): string {
  const { machine, surveys, lastTaken, readings, savedAt, inFile, isDamaged } = entry;
  if (isDamaged) return "It cannot be opened; its data can be saved.";
  const parts = [
    machine,
    lastTaken === null
      ? null
      : surveys > 1
        ? `${surveys} surveys, the last of ${dayOf(lastTaken)}`
        : `survey of ${dayOf(lastTaken)}`,
    `${readings} ${readings === 1 ? "reading" : "readings"}`,
    `saved ${momentOf(savedAt)}`,
    inFile ? null : "not in a file yet",
  ];
  return parts.filter((part) => part !== null).join(" · ");
}
