import type { Backup } from "../../records/bundle/bundle.ts";

/** Files to open, and the name to keep one under that has a name already: a sample. */
export interface OpenRequest {
  readonly files: readonly File[];
  readonly id?: string;
}

/** A backup that was opened, and the name of its file. */
export interface BackupFile {
  readonly name: string;
  readonly bundle: Backup;
}

declare global {
  interface HTMLElementEventMap {
    "tightspot-open": CustomEvent<OpenRequest>;
    /** The inspection that was handed over to be shown is shown. */
    "tightspot-shown": CustomEvent<null>;
    /** The log that was handed over is taken in, refused or given up. */
    "tightspot-log-done": CustomEvent<null>;
    /** The backup that was shown is restored or given up. */
    "tightspot-backup-done": CustomEvent<null>;
  }
}

/** Asks the page to open files. */
export function requestOpen(from: EventTarget, opening: OpenRequest): void {
  from.dispatchEvent(new CustomEvent("tightspot-open", { detail: opening, bubbles: true, composed: true }));
}

/** Says that what was handed over is dealt with, so that it is not taken for something else later. */
export function dispatchDone(
  from: EventTarget,
  what: "tightspot-shown" | "tightspot-log-done" | "tightspot-backup-done",
): void {
  from.dispatchEvent(new CustomEvent(what, { bubbles: true, composed: true }));
}
