import { type DBSchema, type IDBPDatabase, type IDBPObjectStore, openDB } from "idb";
import { STORAGE_NAME } from "./edition.ts";
import type { StoredInspection } from "./editorState.ts";
import type { StoredPicture } from "./storedPicture.ts";

interface Schema extends DBSchema {
  inspections: { key: string; value: StoredInspection };
  pictures: { key: string; value: StoredPicture };
}

export type Database = IDBPDatabase<Schema>;

/** Where pictures are kept, as a transaction that may change them has it. */
export type PictureTransactionStore = IDBPObjectStore<
  Schema,
  ArrayLike<"inspections" | "pictures">,
  "pictures",
  "readwrite"
>;

/** A later layout of the database gets the next number, and a step in `upgrade` that brings the old one to it. */
const LAYOUT = 2;

/** The name of the error when another tab does not let go of the database. */
export const BLOCKED_BY_TAB = "HeldElsewhereError";

/** Opening takes a fraction of a second, in milliseconds; a browser says nothing where it waits for another tab. */
const PATIENCE = 4000;

let opened: Promise<Database> | undefined;

/**
 * The browser's database, opened once. Throws what the browser throws when it cannot be had, and an error of its own
 * when another tab does not let go of it; asked again later, it may then be had.
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
    const timer = setTimeout(giveUp, PATIENCE);
    openDB<Schema>(STORAGE_NAME, LAYOUT, {
      upgrade: (fresh, before) => {
        if (before < 1) fresh.createObjectStore("inspections", { keyPath: "id" });
        if (before < 2) fresh.createObjectStore("pictures", { keyPath: "id" });
      },
      blocked: giveUp,
      // Another tab with a newer program waits for this one to let go.
      blocking: (_current, _blocked, event) => {
        forget();
        (event.target as IDBDatabase).close();
      },
      terminated: forget,
    })
      // Had too late, it must not stand in the way of others.
      .then((database) => (isGivenUp ? database.close() : resolve(database)), reject)
      .finally(() => clearTimeout(timer));
  });
}

function forget(): void {
  opened = undefined;
}
