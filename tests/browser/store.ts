import type { Page } from "playwright-core";

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

/** Puts a record into the database past the page, damaged or not. */
export function putRecord(page: Page, record: Record<string, unknown>): Promise<void> {
  return page.evaluate(
    (put) =>
      new Promise<void>((done, fail) => {
        const opening = indexedDB.open("tightspot");
        opening.onerror = fail;
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("inspections", "readwrite");
          transaction.objectStore("inspections").put(put);
          transaction.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    record,
  );
}
