import type { Page } from "playwright-core";
import { expect } from "vitest";

/** What the browser's database holds of the page, just as it is there. */
export function recordsOf(page: Page): Promise<readonly Record<string, unknown>[]> {
  return page.evaluate(
    () =>
      new Promise<readonly Record<string, unknown>[]>((done, fail) => {
        const opening = indexedDB.open("tightspot");
        opening.onerror = fail;
        opening.onsuccess = () => {
          const all = opening.result.transaction("inspections").objectStore("inspections").getAll();
          all.onsuccess = () => {
            opening.result.close();
            done(all.result);
          };
        };
      }),
  );
}

/** The layout of src/records/database.ts. */
const LAYOUT = 2;
const STORES = ["inspections", "pictures"] as const;

/** Puts a record into the database past the page, damaged or not. */
export function putRecord(page: Page, record: object): Promise<void> {
  return page.evaluate(
    ({ put, layout, stores }) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open("tightspot", layout);
        opening.onerror = fail;
        // The page may not have got as far as to open it.
        opening.onupgradeneeded = () => {
          for (const name of stores) opening.result.createObjectStore(name, { keyPath: "id" });
        };
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("inspections", "readwrite");
          transaction.objectStore("inspections").put(put);
          transaction.onabort = fail;
          transaction.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    { put: record, layout: LAYOUT, stores: STORES },
  );
}

/** Everything that the browser's database holds, byte for byte, as text. */
export function everythingIn(page: Page): Promise<string> {
  return page.evaluate(
    () =>
      new Promise<string>((done, fail) => {
        const opening = indexedDB.open("tightspot");
        opening.onerror = fail;
        opening.onsuccess = () => {
          const stores = [...opening.result.objectStoreNames];
          const transaction = opening.result.transaction(stores);
          const all = stores.map((name) => [name, transaction.objectStore(name).getAll()] as const);
          transaction.oncomplete = () => {
            opening.result.close();
            const asList = (_key: string, value: unknown) =>
              value instanceof Uint8Array ? Array.from(value) : value;
            done(
              JSON.stringify(
                all.map(([name, { result }]) => [name, result]),
                asList,
                1,
              ),
            );
          };
        };
      }),
  );
}

/** Waits until the browser's database holds a text. */
export async function held(page: Page, text: string): Promise<void> {
  await expect.poll(async () => JSON.stringify(await recordsOf(page))).toContain(text);
}
