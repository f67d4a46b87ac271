import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import {
  backlash,
  beginSlide,
  describeSlide,
  EVEN,
  goHome,
  kept,
  keptSurvey,
  typeReadings,
} from "./steps.ts";
import { putRecord, recordsOf } from "./store.ts";

const served = useServedPage();

const alert = (page: Page, text: string) => page.getByRole("alert").filter({ hasText: text });

/** Whether the database holds a text within a second from now. */
async function isHeldInASecond(page: Page, text: string): Promise<boolean> {
  const end = Date.now() + 1000;
  while (Date.now() < end) {
    if (JSON.stringify(await recordsOf(page)).includes(text)) return true;
  }
  return false;
}

test("whatever field is typed in, what was typed is in the database within a second", async () => {
  const page = await served.open();
  await page.getByRole("link", { name: "New inspection" }).click();
  await page.getByLabel("Travel from").pressSequentially("1.2x", { delay: 20 });
  expect(await isHeldInASecond(page, '"1.2x"')).toBe(true);

  const described = await keptSurvey(served);
  await described.getByLabel("Position, next reading").pressSequentially("17.5", { delay: 20 });
  expect(await isHeldInASecond(described, '"17.5"')).toBe(true);
  await described.getByText("Details", { exact: true }).click();
  await described.getByLabel("Machine").pressSequentially("Planer by the door", { delay: 20 });
  expect(await isHeldInASecond(described, "Planer by the door")).toBe(true);
});

test("a full browser is told as not saved; with room made, all of it is saved", async () => {
  const page = await served.openApart();
  const devtools = await page.context().newCDPSession(page);
  const origin = new URL(served.address).origin;
  await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  await describeSlide(page);
  await alert(page, "this browser has no storage space left").waitFor();
  await typeReadings(page, EVEN.slice(0, 3));
  expect(await page.getByText(/^Saved in this browser/).count()).toBe(0);
  await alert(page, "this browser has no storage space left").waitFor();

  await devtools.send("Storage.overrideQuotaForOrigin", { origin });
  await page.getByRole("button", { name: "Try again" }).click();
  await kept(page);
  await page.reload();
  expect(await backlash(page, 3).inputValue()).toBe("0.20");
});

test("where nothing can be kept, that is told while the slide is being described, too", async () => {
  const page = await served.open();
  await page.addInitScript(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("refused", "InvalidStateError");
    };
  });
  await page.reload();
  await page.getByRole("link", { name: "New inspection" }).click();
  await page.getByLabel("Travel from").fill("0");
  await alert(page, "Not saved").waitFor();
});

test("a database that another tab holds on to is told, and had once that tab lets go", async () => {
  const page = await keptSurvey(served);
  const other = await page.context().newPage();
  await other.goto(`${served.address}icon.svg`);
  // Holds its connection whatever comes, and asks for a deletion, which every later opening has to wait for.
  await other.evaluate(
    () =>
      new Promise<void>((done) => {
        const opening = indexedDB.open("tightspot");
        opening.onsuccess = () => {
          const deleting = indexedDB.deleteDatabase("tightspot");
          deleting.onblocked = () => done();
        };
      }),
  );
  await backlash(page, 1).fill("0.35");
  await alert(page, "another tab blocks the storage of this browser").waitFor();
  await other.close();
  // The deletion is done now: what is on the page is all there is, and it is not lost.
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByRole("button", { name: "Keep mine as a copy" }).click();
  await kept(page);
  expect(JSON.stringify(await recordsOf(page))).toContain("0.35");
});

test("a tab of an older program makes way for a newer one, and tells that it saves no more", async () => {
  const page = await keptSurvey(served);
  const newer = await page.context().newPage();
  await newer.goto(`${served.address}icon.svg`);
  const layout = await newer.evaluate(
    () =>
      new Promise<number>((done, fail) => {
        const opening = indexedDB.open("tightspot", 3);
        opening.onblocked = fail;
        opening.onsuccess = () => done(opening.result.version);
      }),
  );
  expect(layout).toBe(3);
  await page.bringToFront();
  await backlash(page, 1).fill("0.35");
  await alert(
    page,
    "a newer Tightspot saved the inspections in this browser; they were left alone",
  ).waitFor();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a file" }).click(),
  ]);
  expect(JSON.parse(readFileSync(await file.path(), "utf8")).surveys[0].readings[0].backlash).toBe(0.35);
});

/** A tab that has opened the database as the first program laid it out, with one inspection in it. */
async function withFirstLayout(isPolite: boolean): Promise<Page> {
  const page = await (await served.open()).context().newPage();
  await page.goto(`${served.address}icon.svg`);
  await page.evaluate(
    (lets) =>
      new Promise<void>((done, fail) => {
        const deleting = indexedDB.deleteDatabase("tightspot");
        deleting.onsuccess = () => {
          const opening = indexedDB.open("tightspot", 1);
          opening.onupgradeneeded = () => {
            const inspections = opening.result.createObjectStore("inspections", { keyPath: "id" });
            const fields = [{ survey: null, path: "name", text: "Old slide" }];
            const draft = { fields, rows: [] };
            inspections.put({
              id: "old",
              revision: 1,
              savedAt: "2026-01-05T10:00:00Z",
              inspection: null,
              draft,
            });
          };
          opening.onerror = fail;
          opening.onsuccess = () => {
            if (lets) opening.result.onversionchange = () => opening.result.close();
            done();
          };
        };
      }),
    isPolite,
  );
  return page;
}

test("what an older program kept is there in the newer one, whose older tab makes way", async () => {
  const older = await withFirstLayout(true);
  const page = await older.context().newPage();
  await page.goto(served.address);
  await page.getByRole("link", { name: /^Old slide/ }).waitFor();
  expect((await recordsOf(page)).map(({ id }) => id)).toEqual(["old"]);
});

test("an older tab that does not make way is told of, and nothing it keeps is lost", async () => {
  const older = await withFirstLayout(false);
  const page = await older.context().newPage();
  await page.goto(served.address);
  await alert(page, "another tab blocks the storage of this browser").waitFor();
  await older.close();
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByRole("link", { name: /^Old slide/ }).waitFor();
});

test("the browser is asked to let stay what is kept, once there is something, and its answer is shown", async () => {
  const page = await served.openApart();
  const devtools = await page.context().newCDPSession(page);
  const { targetInfo } = await devtools.send("Target.getTargetInfo");
  await devtools.send("Browser.grantPermissions", {
    ...(targetInfo.browserContextId !== undefined && { browserContextId: targetInfo.browserContextId }),
    permissions: ["durableStorage"],
    origin: new URL(served.address).origin,
  });
  await page.getByText("It may clear it when space runs short").waitFor();
  await beginSlide(page);
  await kept(page);
  await goHome(page);
  await page.getByText("has agreed to keep it until you delete it").waitFor();
  expect(await page.evaluate(() => navigator.storage.persisted())).toBe(true);
});

test("where the browser promises nothing, that is shown, and it can be asked again", async () => {
  // A browser comes to promise it to a page that is used a lot, as that of the other tests.
  const page = await served.openApart();
  await beginSlide(page);
  await kept(page);
  await goHome(page);
  await page.getByRole("button", { name: "Ask the browser to keep it" }).click();
  await page.getByText("The browser does not promise to keep what you enter").waitFor();
});

test("what is in no file is told until it is saved to one, and again once it is changed", async () => {
  const page = await keptSurvey(served);
  await page.getByText(/^Saved in this browser, .* not in a file yet$/).waitFor();
  await goHome(page);
  await page.getByText("It is only in this browser").waitFor();
  await page.getByRole("link", { name: /^Slide 0 to 300 mm/ }).click();
  await page.getByRole("button", { name: "Save a file" }).click();
  await page.getByText(/^Saved in this browser, .*, and in a file$/).waitFor();
  await goHome(page);
  await page.getByRole("link", { name: /^Slide 0 to 300 mm/ }).waitFor();
  expect(await page.getByText("only in this browser: to be safe").count()).toBe(0);
  await page.getByRole("link", { name: /^Slide 0 to 300 mm/ }).click();
  await page.getByText(/, and in a file$/).waitFor();
  await backlash(page, 1).fill("0.35");
  await page.getByText(/^Saved in this browser, .* not in a file yet$/).waitFor();
});

test("damaged inspections are listed beside the sound ones, open to their rescue, and make no copies", async () => {
  const page = await keptSurvey(served);
  await putRecord(page, { id: "wreck", inspection: {}, revision: 4 });
  await putRecord(page, {
    id: "sample-leave-alone-drilling-table",
    inspection: null,
    revision: 2,
    savedAt: "",
  });
  await goHome(page);
  const list = page.getByRole("region", { name: "Saved in this browser" });
  const links = list.getByRole("link");
  await links.nth(2).waitFor();
  expect(await list.getByRole("link", { name: /^Damaged inspection/ }).count()).toBe(2);

  for (let time = 0; time < 2; time++) {
    await page.getByRole("button", { name: /^Drilling table/ }).click();
    await kept(page);
    await goHome(page);
  }
  await links.nth(3).waitFor();
  expect(await links.count()).toBe(4);

  await page.goto(`${served.address}#/inspection/wreck`);
  await alert(page, "This inspection cannot be opened").waitFor();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save what is there as a file" }).click(),
  ]);
  expect(JSON.parse(readFileSync(await file.path(), "utf8"))).toEqual({
    id: "wreck",
    inspection: {},
    revision: 4,
  });
  expect((await recordsOf(page)).find(({ id }) => id === "wreck")).toEqual({
    id: "wreck",
    inspection: {},
    revision: 4,
  });
});
