import { type DBSchema, type IDBPDatabase, type IDBPObjectStore, openDB } from "idb";
import { STORAGE_NAME } from "./edition.ts";
import type { StoredInspection } from "./editorState.ts";

/** The bytes of a picture. Inspections refer to it by its id, so that saving one at every key stays fast. */
export interface StoredPicture {
  readonly id: string;
  /** The media type: `image/jpeg`. */
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Since when nothing stored refers to it, ISO 8601; missing while something does. */
  readonly unusedSince?: string;
}

interface Schema extends DBSchema {
  inspections: { key: string; value: StoredInspection };
  pictures: { key: string; value: StoredPicture };
}

export type Database = IDBPDatabase<Schema>;

/** The store of pictures within a transaction that may write to it. */
export type PictureStore = IDBPObjectStore<
  Schema,
  ArrayLike<"inspections" | "pictures">,
  "pictures",
  "readwrite"
>;

/** A later schema gets the next number, and a step in `upgrade` that converts the one before. */
const SCHEMA_VERSION = 2;

/** The name of the error when another tab blocks the database. */
export const BLOCKED_BY_TAB = "BlockedByTabError";

/** Milliseconds; opening takes a fraction of a second, and the browser reports nothing while it waits for a tab. */
const OPEN_TIMEOUT = 4000;

let opened: Promise<Database> | undefined;

/**
 * The browser's database, opened once. A later call tries again after a failure.
 *
 * @throws the browser's error if it cannot be opened, or a `BLOCKED_BY_TAB` error if another tab blocks it
 */
export function database(): Promise<Database> {
  opened ??= open();
  opened.catch(forget);
  return opened;
}

function open(): Promise<Database> {
  return new Promise((resolve, reject) => {
    let isGivenUp = false;
    const giveUp = (): void => {
      isGivenUp = true;
      reject(new DOMException("", BLOCKED_BY_TAB));
    };
    const timer = setTimeout(giveUp, OPEN_TIMEOUT);
    openDB<Schema>(STORAGE_NAME, SCHEMA_VERSION, {
      upgrade: (fresh, before) => {
        if (before < 1) fresh.createObjectStore("inspections", { keyPath: "id" });
        if (before < 2) fresh.createObjectStore("pictures", { keyPath: "id" });
      },
      blocked: giveUp,
      // A tab with a newer program waits until this one closes the database.
      blocking: (_current, _blocked, event) => {
        forget();
        (event.target as IDBDatabase).close();
      },
      terminated: forget,
    })
      // If it opens after the timeout, close it: it would block other tabs.
      .then((database) => (isGivenUp ? database.close() : resolve(database)), reject)
      .finally(() => clearTimeout(timer));
  });
}

function forget(): void {
  opened = undefined;
}
