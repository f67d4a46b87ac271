import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { LARGER, SMALL, withPhotographs } from "./photographs.ts";
import { useServedPage } from "./servedPage.ts";
import { backlash, dropFiles, EVEN, goHome, kept, openSlide } from "./steps.ts";
import { everythingIn, held, putRecord, recordsOf } from "./store.ts";

const served = useServedPage();

type File = readonly [name: string, content: string];

const sample = (name: string): File => [`${name}.json`, readFileSync(`sample-data/${name}.json`, "utf8")];
const LATHE = sample("measure-more-lathe-4-cross-slide");
const KNEE = sample("no-verdict-mill-knee");
const PHOTOGRAPHED: File = ["photographed.json", withPhotographs()];

const dialog = (page: Page) => page.getByRole("dialog", { name: /^Restore / });
const said = (page: Page, text: string | RegExp) => page.getByRole("status").filter({ hasText: text });
const entries = (page: Page) => page.getByRole("region", { name: "Saved in this browser" }).getByRole("link");
const conflict = (page: Page, slide: string | RegExp) => dialog(page).getByRole("group", { name: slide });

async function opened(page: Page, ...files: readonly File[]): Promise<void> {
  await dropFiles(page, ...files);
  await page.getByRole("button", { name: "Save a file" }).waitFor();
  await kept(page);
  await goHome(page);
  await entries(page)
    .nth(files.length - 1)
    .waitFor();
}

async function savedBackup(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save all as one backup" }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^tightspot-backup-\d{4}-\d{2}-\d{2}\.json$/);
  await said(page, /^\s*A backup of/).waitFor();
  await expect.poll(() => page.getByText("not in a file yet").count()).toBe(0);
  return readFileSync(await download.path(), "utf8");
}

test("a backup restored on an empty browser gives back every byte of every inspection and photograph", async () => {
  const page = await served.open();
  await opened(page, PHOTOGRAPHED, LATHE, KNEE);
  await openSlide(page, EVEN.slice(0, 4));
  // What cannot be read is in no inspection, and must not be lost either.
  await backlash(page, 2).fill("0.2x");
  await held(page, "0.2x");
  await kept(page);
  await goHome(page);
  await page.getByRole("link", { name: "New inspection" }).click();
  await page.getByLabel("Travel from").fill("12");
  await expect.poll(async () => (await recordsOf(page)).length).toBe(5);
  await goHome(page);
  await entries(page).nth(4).waitFor();
  await putRecord(page, { id: "wreck", inspection: {}, revision: 4 });

  const backup = await savedBackup(page);
  const before = await everythingIn(page);
  for (const part of ["0.2x", [...SMALL].join(",\n"), "of another program", "wreck"]) {
    expect(before.replace(/,\n +/g, ",\n")).toContain(part);
  }

  const empty = await served.open();
  await dropFiles(empty, ["backup.json", backup]);
  await dialog(empty).getByText("New here: 5").waitFor();
  await dialog(empty).getByRole("button", { name: "Restore 6 slides" }).click();
  await said(empty, "6 slides were restored.").waitFor();
  await entries(empty).nth(5).waitFor();
  expect(await everythingIn(empty)).toBe(before);
  expect(before.length).toBeGreaterThan(2 * (SMALL.length + LARGER.length));
  await empty.close();
});

test("restored where it came from, all is the same and nothing is left to restore", async () => {
  const page = await served.open();
  await opened(page, PHOTOGRAPHED, LATHE);
  const backup = await savedBackup(page);
  const before = await everythingIn(page);
  await dropFiles(page, ["backup.json", backup]);
  await dialog(page).getByText("The same here: 2").waitFor();
  expect(await dialog(page).getByRole("button", { name: "Nothing to restore" }).isDisabled()).toBe(true);
  await page.keyboard.press("Escape");
  await expect.poll(() => dialog(page).count()).toBe(0);
  expect(await everythingIn(page)).toBe(before);
});

/** A browser whose two slides have been changed since the backup. */
async function changedSince(): Promise<{ readonly page: Page; readonly backup: File }> {
  const page = await served.open();
  await opened(page, LATHE, KNEE);
  const backup = await savedBackup(page);
  for (const slide of [/^\s*Cross slide/, /^\s*Knee/]) {
    await entries(page).filter({ hasText: slide }).click();
    await backlash(page, 1).fill("0.777");
    await held(page, "0.777");
    await kept(page);
    await goHome(page);
    await entries(page).nth(1).waitFor();
  }
  return { page, backup: ["backup.json", backup] };
}

const firstBacklashes = async (page: Page): Promise<readonly number[]> =>
  (await recordsOf(page))
    .map((record) => (record.inspection as { surveys: { readings: { backlash: number }[] }[] }).surveys)
    .map(([survey]) => survey?.readings[0]?.backlash ?? Number.NaN)
    .sort();

const ORIGINAL = [LATHE, KNEE]
  .map(([, text]) => JSON.parse(text).surveys[0].readings[0].backlash as number)
  .sort();

test("what differs stays as it is here unless the reader chooses otherwise", async () => {
  const { page, backup } = await changedSince();
  await dropFiles(page, backup);
  await dialog(page).getByText("Not the same here as in the backup: 2").waitFor();
  await conflict(page, /^Cross slide/)
    .getByText(/survey of .* saved /)
    .nth(1)
    .waitFor();
  expect(await dialog(page).getByRole("button", { name: "Nothing to restore" }).isDisabled()).toBe(true);
  await dialog(page).getByRole("button", { name: "Cancel" }).click();
  expect(await firstBacklashes(page)).toEqual([0.777, 0.777]);
});

test("of what differs the backup’s is taken, or both are kept, by keyboard", async () => {
  const { page, backup } = await changedSince();
  await dropFiles(page, backup);
  await conflict(page, /^Cross slide/)
    .getByRole("radio", { name: "Keep what is here" })
    .focus();
  await page.keyboard.press("ArrowDown");
  await conflict(page, /^Knee/).getByRole("radio", { name: "Keep both" }).check();
  await dialog(page).getByRole("button", { name: "Restore 2 slides" }).press("Enter");
  await said(page, "2 slides were restored.").waitFor();
  await entries(page).nth(2).waitFor();
  expect(await firstBacklashes(page)).toEqual([...ORIGINAL, 0.777].sort());
  expect(await entries(page).filter({ hasText: ", from the backup" }).count()).toBe(1);
});

test("what would be replaced is named, and can be saved to a file first, from which it comes back", async () => {
  const { page, backup } = await changedSince();
  await dropFiles(page, backup);
  const replacing = dialog(page).getByText(/^Replaced by the backup’s: /);
  await conflict(page, /^Knee/).getByRole("radio", { name: "Keep both" }).check();
  expect(await replacing.count()).toBe(0);
  await conflict(page, /^Knee/).getByRole("radio", { name: "Take the backup’s" }).check();
  expect(await replacing.textContent()).toMatch(/“Knee” as saved here .* cannot be undone/);
  expect(await replacing.textContent()).not.toContain("Cross slide");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    dialog(page).getByRole("button", { name: "Save all that is here as one backup" }).click(),
  ]);
  await dialog(page).getByText("A backup of 2 slides was saved.").waitFor();
  const saved = readFileSync(await download.path(), "utf8");
  await dialog(page).getByRole("button", { name: "Restore one slide" }).click();
  await said(page, "was restored").waitFor();
  expect(await firstBacklashes(page)).not.toEqual([0.777, 0.777]);

  await dropFiles(page, ["before.json", saved]);
  await conflict(page, /^Knee/).getByRole("radio", { name: "Take the backup’s" }).check();
  await dialog(page).getByRole("button", { name: "Restore one slide" }).click();
  await said(page, "was restored").waitFor();
  expect(await firstBacklashes(page)).toEqual([0.777, 0.777]);
});

test("a tab that shows what a backup has replaced shows it as it now is", async () => {
  const page = await served.open();
  await opened(page, LATHE);
  const backup = await savedBackup(page);
  await entries(page).first().click();
  const was = await backlash(page, 1).inputValue();
  await backlash(page, 1).fill("0.777");
  await held(page, "0.777");
  await kept(page);
  await dropFiles(page, ["backup.json", backup]);
  await dialog(page).getByRole("radio", { name: "Take the backup’s" }).check();
  await dialog(page).getByRole("button", { name: "Restore one slide" }).click();
  await expect.poll(() => backlash(page, 1).inputValue()).toBe(was);
});

test("a slide that was moved here by its own file is the same, or in conflict, not new", async () => {
  const page = await served.open();
  await opened(page, PHOTOGRAPHED, LATHE);
  const backup = await savedBackup(page);
  const other = await served.open();
  const changed = JSON.parse(LATHE[1]);
  changed.surveys[0].readings[0].backlash = 0.777;
  await opened(other, PHOTOGRAPHED, ["lathe.json", JSON.stringify(changed)]);
  await dropFiles(other, ["backup.json", backup]);
  await dialog(other).getByText("Not the same here as in the backup: 1").waitFor();
  await dialog(other).getByText("The same here: 1").waitFor();
  expect(
    await dialog(other)
      .getByText(/^New here/)
      .count(),
  ).toBe(0);
});

test.each([
  [
    "cut off",
    (text: string) => text.slice(0, -200),
    /broken\.json: line \d+, column \d+: the JSON breaks off/,
  ],
  [
    "of a newer program",
    (text: string) => text.replace('"version": 1', '"version": 2'),
    "broken.json: version: the file is of version 2, newer than this program reads (1)",
  ],
  [
    "with a reading that is none",
    (text: string) => text.replace(/"backlash": [\d.]+/, '"backlash": "much"'),
    /broken\.json: inspections\[\d\]\.inspection\.surveys\[0\]\.readings\[0\]\.backlash: is "much"; it must be a number/,
  ],
  [
    "with a photograph that is none",
    (text: string) => text.replace(/"data":"..../, '"data":"%%%%'),
    "broken.json: pictures[0].data: is not base64",
  ],
])("a backup %s is refused with place and reason, and nothing is changed", async (_how, spoil, reason) => {
  const page = await served.open();
  await opened(page, PHOTOGRAPHED, LATHE);
  const backup = await savedBackup(page);
  await entries(page).first().click();
  await backlash(page, 1).fill("0.777");
  await held(page, "0.777");
  await kept(page);
  const before = await everythingIn(page);
  await dropFiles(page, ["broken.json", spoil(backup)]);
  await page.getByRole("alert").filter({ hasText: reason }).waitFor();
  expect(await dialog(page).count()).toBe(0);
  expect(await everythingIn(page)).toBe(before);
});

test("a page that dies in the middle of restoring leaves what was", async () => {
  const page = await served.open();
  await opened(page, PHOTOGRAPHED, LATHE, KNEE);
  const backup = await savedBackup(page);

  const other = await served.open();
  await opened(other, KNEE);
  const before = await everythingIn(other);
  const dying = await served.openBeside(other);
  await dying.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    let done = 0;
    IDBObjectStore.prototype.put = function (...what) {
      done += 1;
      const asked = put.apply(this, what);
      if (done < 4) return asked;
      // Two photographs and an inspection are written; now nothing goes on, and nothing ends the transaction.
      document.title = "dying";
      for (;;);
    };
  });
  await dropFiles(dying, ["backup.json", backup]);
  const crash = await dying.context().newCDPSession(dying);
  await dialog(dying).getByRole("button", { name: "Restore 2 slides" }).click({ noWaitAfter: true });
  const crashed = dying.waitForEvent("crash");
  crash.send("Page.crash").catch(() => {});
  await crashed;
  expect(await everythingIn(other)).toBe(before);
});

test("a restore that fails half-way says so, and leaves what was", async () => {
  const page = await served.open();
  await opened(page, PHOTOGRAPHED, LATHE, KNEE);
  const backup = await savedBackup(page);
  const other = await served.open();
  await opened(other, KNEE);
  const before = await everythingIn(other);
  await other.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    let done = 0;
    IDBObjectStore.prototype.put = function (...what) {
      done += 1;
      if (done > 3) throw new DOMException("", "QuotaExceededError");
      return put.apply(this, what);
    };
  });
  await dropFiles(other, ["backup.json", backup]);
  await dialog(other).getByRole("button", { name: "Restore 2 slides" }).click();
  await dialog(other).getByText("Not restored: this browser has no storage space left").waitFor();
  expect(await everythingIn(other)).toBe(before);
});

test("what another tab changed while the choice was made is not written over", async () => {
  const { page, backup } = await changedSince();
  await dropFiles(page, backup);
  await conflict(page, /^Cross slide/)
    .getByRole("radio", { name: "Take the backup’s" })
    .check();
  const other = await served.openBeside(page);
  await entries(other)
    .filter({ hasText: /^\s*Cross slide/ })
    .click();
  await backlash(other, 1).fill("0.888");
  await held(other, "0.888");
  await kept(other);
  const before = await everythingIn(other);
  await page.bringToFront();
  await dialog(page).getByRole("button", { name: "Restore one slide" }).click();
  await dialog(page).getByText("Not restored: something was changed in another tab").waitFor();
  expect(await everythingIn(page)).toBe(before);
});

test("backups, inspections and logs are taken at once, each in its own way", async () => {
  const page = await served.open();
  await opened(page, LATHE);
  const backup = await savedBackup(page);
  const other = await served.open();
  await dropFiles(
    other,
    ["backup.json", backup],
    KNEE,
    ["again.json", backup],
    ["log.csv", "Position (mm),Backlash (mm)\n0,0.21\n60,0.20\n"],
  );
  await other.getByRole("dialog", { name: "Restore backup.json" }).getByText("New here: 1").waitFor();
  await dialog(other).getByRole("button", { name: "Restore one slide" }).click();
  await other.getByRole("dialog", { name: "Restore again.json" }).getByText("The same here: 1").waitFor();
  await dialog(other).getByRole("button", { name: "Cancel" }).click();
  await other.getByRole("dialog", { name: "log.csv" }).getByRole("button", { name: "Cancel" }).click();
  await goHome(other);
  await entries(other).nth(1).waitFor();
});
