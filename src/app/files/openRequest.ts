import type { Backup } from "../../records/backup/backup.ts";

/** Files to open, and the id for the inspection if it is a sample. */
export interface OpenRequest {
  readonly files: readonly File[];
  readonly id?: string;
}

/** A backup and the name of its file. */
export interface BackupFile {
  readonly name: string;
  readonly backup: Backup;
}

declare global {
  interface HTMLElementEventMap {
    "tightspot-open": CustomEvent<OpenRequest>;
    /** The inspection just opened is shown. */
    "tightspot-shown": CustomEvent<null>;
    /** The log is imported, refused or cancelled. */
    "tightspot-log-done": CustomEvent<null>;
    /** The backup is restored or cancelled. */
    "tightspot-backup-done": CustomEvent<null>;
  }
}

/** Asks the page to open files. */
export function requestOpen(from: EventTarget, request: OpenRequest): void {
  from.dispatchEvent(new CustomEvent("tightspot-open", { detail: request, bubbles: true, composed: true }));
}

/** Tells the page that an opened file is dealt with. */
export function dispatchDone(
  from: EventTarget,
  what: "tightspot-shown" | "tightspot-log-done" | "tightspot-backup-done",
): void {
  from.dispatchEvent(new CustomEvent(what, { bubbles: true, composed: true }));
}
