import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { dropFiles, EVEN, goHome, kept, openSlide, takeLog } from "./steps.ts";

const served = useServedPage();

const LOG = ["Position (mm);Backlash (mm)", "0;0,21", "60;0,20", "120;0,22"].join("\n");
const NO_LOG = "no table in here";

const sample = (name: string): readonly [string, string] => [
  `${name}.json`,
  readFileSync(`sample-data/${name}.json`, "utf8"),
];
const LATHE = sample("measure-more-lathe-4-cross-slide");
const DRILL = sample("leave-alone-drilling-table");

const position = (page: Page, reading: number) =>
  page.getByLabel(`Position, reading ${reading}`, { exact: true });
const messages = (page: Page) => page.getByRole("alert").getByRole("paragraph");
const keptLinks = (page: Page) =>
  page.getByRole("region", { name: "Saved in this browser" }).getByRole("link");

test("a log that was dropped for one new inspection is not in the next", async () => {
  const page = await served.open();
  await dropFiles(page, ["log.csv", LOG]);
  await takeLog(page);
  await page.getByText("3 readings are waiting for this.").waitFor();
  await goHome(page);
  await page.getByRole("link", { name: "New inspection", exact: true }).click();
  await page.getByRole("heading", { name: "Which slide is it?" }).waitFor();
  await page.getByRole("button", { name: "Start reading" }).waitFor();
  expect(await page.getByText(/waiting for this/).count()).toBe(0);
  await describeFromHere(page);
  expect(await position(page, 1).count()).toBe(0);
});

test("a log that was taken, cancelled or left unanswered is not offered to the next inspection", async () => {
  const page = await served.open();
  await openSlide(page, EVEN.slice(0, 2));
  await kept(page);
  const address = page.url();

  await dropFiles(page, ["taken.csv", LOG]);
  await page.getByRole("button", { name: "Add to this survey" }).click();
  await dropFiles(page, ["cancelled.csv", LOG]);
  await page.getByRole("button", { name: "Cancel" }).click();
  await dropFiles(page, ["unanswered.csv", LOG]);
  await page.getByRole("dialog").waitFor();
  await page.goBack();
  await messages(page).filter({ hasText: "Not imported: unanswered.csv." }).waitFor();
  await page.getByRole("button", { name: /^Lathe 4/ }).click();
  await position(page, 4).waitFor();
  expect(await page.getByRole("dialog").count()).toBe(0);
  await page.goto(address);
  await position(page, 5).waitFor();
  expect(await page.getByRole("dialog").count()).toBe(0);
  expect(await position(page, 6).count()).toBe(0);
});

test("a log that cannot be read is refused once, where it was dropped", async () => {
  const page = await served.open();
  await dropFiles(page, ["notes.csv", NO_LOG]);
  await messages(page).filter({ hasText: "notes.csv: there is no row of headings" }).waitFor();
  await page.getByRole("heading", { name: "Look at a sample" }).waitFor();
  await page.getByRole("button", { name: /^Lathe 4/ }).click();
  await position(page, 4).waitFor();
  await kept(page);
  expect(await messages(page).count()).toBe(0);
});

test("of several files each is tried: what cannot be read is told beside what is opened", async () => {
  const page = await served.open();
  await dropFiles(page, ["broken.json", "{"], LATHE, ["notes.csv", NO_LOG], DRILL);
  await page.getByRole("heading", { name: "Cross slide" }).waitFor();
  await messages(page).nth(1).waitFor();
  expect(await messages(page).allInnerTexts()).toEqual([
    expect.stringContaining("broken.json: "),
    expect.stringContaining("notes.csv: "),
  ]);
  await page.getByRole("status").filter({ hasText: "leave-alone-drilling-table.json" }).waitFor();
  await page.getByRole("button", { name: "Show all" }).click();
  await expect.poll(() => keptLinks(page).count()).toBe(2);
});

test("of several logs each is taken in or asked about, one after the other", async () => {
  const page = await served.open();
  await dropFiles(page, ["first.csv", LOG], ["second.csv", LOG]);
  await takeLog(page);
  await page.getByText("3 readings are waiting for this, then second.csv.").waitFor();
  await describeFromHere(page, "Take the readings");
  await page.getByRole("dialog", { name: "second.csv" }).waitFor();
  await page.getByRole("button", { name: "Add to this survey" }).click();
  await position(page, 6).waitFor();
});

test("a file opened again is the inspection that is kept, unless that was changed", async () => {
  const page = await served.open();
  await dropFiles(page, LATHE);
  await kept(page);
  await goHome(page);
  await dropFiles(page, LATHE, LATHE);
  await kept(page);
  await goHome(page);
  await expect.poll(() => keptLinks(page).count()).toBe(1);

  await keptLinks(page).click();
  await page.getByLabel("Backlash, reading 1", { exact: true }).fill("0.99");
  await page.getByText("Saving …").waitFor();
  await kept(page);
  await dropFiles(page, LATHE);
  await expect
    .poll(() => page.getByLabel("Backlash, reading 1", { exact: true }).inputValue())
    .not.toBe("0.99");
  await goHome(page);
  await expect.poll(() => keptLinks(page).count()).toBe(2);
});

test("the list of what is kept tells when the last survey was taken", async () => {
  const page = await served.open();
  await dropFiles(page, sample("before-and-after-mill-saddle"));
  await kept(page);
  await goHome(page);
  await keptLinks(page).filter({ hasText: "2 surveys, the last of 20 Feb 2026" }).waitFor();
});

/** A page that the system opened with files, as the browser hands them to an installed page. */
async function launchedWith(...files: readonly (readonly [string, string | null])[]): Promise<Page> {
  const page = await served.open();
  await page.addInitScript((handed) => {
    const handles = handed.map(([name, content]) => ({
      getFile: async () => {
        if (content === null) throw new DOMException("gone", "NotFoundError");
        return new File([content], name);
      },
    }));
    const launchQueue = { setConsumer: (take: (launch: unknown) => void) => take({ files: handles }) };
    Object.defineProperty(window, "launchQueue", { value: launchQueue });
  }, files);
  await page.reload();
  return page;
}

test("files that the system opens with the installed page are opened as those that are dropped", async () => {
  const page = await launchedWith(DRILL, LATHE, ["notes.csv", NO_LOG]);
  await page.getByRole("heading", { name: "Compound table, long travel" }).waitFor();
  await page.getByRole("status").filter({ hasText: "measure-more-lathe-4-cross-slide.json" }).waitFor();
  await messages(page).filter({ hasText: "notes.csv: there is no row of headings" }).waitFor();
});

test("a file that is gone by the time it is opened is told of", async () => {
  const page = await launchedWith(["gone.json", null]);
  await messages(page).filter({ hasText: "The file cannot be read: it may have been moved" }).waitFor();
});

test("the installed page asks for inspections and logs, within its own folder", () => {
  const { file_handlers } = JSON.parse(readFileSync("dist/page/manifest.webmanifest", "utf8"));
  expect(file_handlers).toEqual([
    {
      action: "./",
      accept: {
        "application/json": [".json"],
        "text/csv": [".csv"],
        "text/tab-separated-values": [".tsv"],
      },
    },
  ]);
});

/** Describes the slide on the page as it stands. */
async function describeFromHere(page: Page, then = "Start reading"): Promise<void> {
  await page.getByLabel("Travel from").fill("0");
  await page.getByLabel("Travel to").fill("120");
  await page.getByLabel("Lead of the screw").fill("4");
  await page.getByRole("button", { name: then }).click();
  await page.getByRole("heading", { name: "Readings", exact: true }).waitFor();
}

test("a sample that cannot be had is told of, and opens once it can", async () => {
  const page = await served.open();
  const isSample = /leave-alone-drilling-table.*\.json$/;
  await page.route(isSample, (route) => route.fulfill({ status: 404 }));
  await page.getByRole("button", { name: /^Drilling table/ }).click();
  await page.getByText(/^The sample could not be loaded\./).waitFor();
  await page.unroute(isSample);
  await page.getByRole("button", { name: /^Drilling table/ }).click();
  await page.getByRole("heading", { name: "Leave it alone", level: 2 }).waitFor();
});
