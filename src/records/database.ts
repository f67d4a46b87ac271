import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { KeptInspection } from "./record.ts";

interface Schema extends DBSchema {
  inspections: { key: string; value: KeptInspection };
}

export type Database = IDBPDatabase<Schema>;

const NAME = "tightspot";
/** A later layout of the database gets the next number, and a step in `upgrade` that brings the old one to it. */
const LAYOUT = 1;

let opened: Promise<Database> | undefined;

/** The browser's database, opened once. Throws what the browser throws when it cannot be had. */
export function database(): Promise<Database> {
  opened ??= openDB<Schema>(NAME, LAYOUT, {
    upgrade: (fresh) => {
      fresh.createObjectStore("inspections", { keyPath: "id" });
    },
    // Another tab with a newer program waits for this one to let go.
    blocking: (_current, _blocked, event) => {
      forget();
      (event.target as IDBDatabase).close();
    },
    terminated: forget,
  });
  opened.catch(forget);
  return opened;
}

function forget(): void {
  opened = undefined;
}
