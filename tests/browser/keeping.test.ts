import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { backlash, describeSlide, kept, keptSurvey } from "./steps.ts";

const served = useServedPage();

test("another tab shows what is changed here", async () => {
  const page = await keptSurvey(served);
  const other = await served.openBeside(page);
  await backlash(other, 1).waitFor();
  await backlash(page, 1).fill("0.33");
  await other.waitForFunction(() => {
    const find = (root: ParentNode): boolean =>
      [...root.querySelectorAll("*")].some(
        (element) =>
          (element instanceof HTMLInputElement && element.value === "0.33") ||
          (element.shadowRoot !== null && find(element.shadowRoot)),
      );
    return find(document);
  });
});

test("a change made on an older state is not saved over a newer one; both can be kept", async () => {
  const page = await keptSurvey(served);
  const other = await served.openBeside(page);
  await backlash(other, 1).waitFor();
  // A tab that hears nothing of the others, as one that sleeps.
  await other.evaluate(() => {
    BroadcastChannel.prototype.postMessage = () => {};
  });
  await backlash(other, 1).fill("0.44");
  await kept(other);

  await page.bringToFront();
  await backlash(page, 1).fill("0.33");
  await page.getByRole("alert").filter({ hasText: "it was changed in another tab" }).waitFor();
  expect(await backlash(page, 1).inputValue()).toBe("0.33");
  await page.getByRole("button", { name: "Keep mine as a copy" }).click();
  await kept(page);

  await page.getByRole("link", { name: "Tightspot" }).click();
  const entries = page.getByRole("region", { name: "Saved in this browser" }).getByRole("link");
  await entries.nth(1).waitFor();
  const figures: string[] = [];
  for (const index of [0, 1]) {
    await entries.nth(index).click();
    figures.push(await backlash(page, 1).inputValue());
    await page.getByRole("link", { name: "Tightspot" }).click();
  }
  expect(figures.sort()).toEqual(["0.33", "0.44"]);
});

test("if the browser cannot store anything, the page gives the reason and offers the file", async () => {
  const page = await served.open();
  await page.evaluate(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("refused", "SecurityError");
    };
  });
  await page.reload();
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("refused", "SecurityError");
    };
  });
  await page.reload();
  await describeSlide(page);
  await page.getByRole("alert").filter({ hasText: "Not saved" }).waitFor();
  await page.getByText("does not let the page store anything (refused)").waitFor();
  await page.getByRole("button", { name: "Save a file" }).waitFor();
});

test("a deleted inspection can be brought back", async () => {
  const page = await keptSurvey(served);
  await page.getByRole("link", { name: "Tightspot" }).click();
  const entry = page.getByRole("link", { name: "Slide 0 to 300 mm" });
  await page.getByRole("button", { name: "Delete Slide 0 to 300 mm" }).click();
  await entry.waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Undo" }).click();
  await entry.click();
  expect(await backlash(page, 3).inputValue()).toBe("0.20");
});

test("an inspection kept by a newer program is refused and left alone", async () => {
  const page = await keptSurvey(served);
  const alter = () =>
    page.evaluate(
      () =>
        new Promise<unknown>((done, fail) => {
          const opening = indexedDB.open("tightspot");
          opening.onerror = fail;
          opening.onsuccess = () => {
            const store = opening.result.transaction("inspections", "readwrite").objectStore("inspections");
            const all = store.getAll();
            all.onsuccess = () => {
              const [record] = all.result;
              const newer = { ...record, inspection: { ...record.inspection, version: 2 } };
              store.put(newer).onsuccess = () => done(JSON.parse(JSON.stringify(newer)));
            };
          };
        }),
    );
  const newer = await alter();
  await page.reload();
  await page.getByText("newer than this program reads").waitFor();
  expect(await alter()).toEqual(newer);
});
