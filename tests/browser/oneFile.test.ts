import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, onTestFinished, test } from "vitest";
import { sharedBrowser, useServedPage } from "./servedPage.ts";
import { describeSlide, dropFiles, EVEN, goHome, kept, takeLog, typeReadings, WORN } from "./steps.ts";

/** As it lies on a stick: nothing beside it. */
const stick = mkdtempSync(join(tmpdir(), "stick-"));
const file = join(stick, "tightspot.html");
const served = useServedPage();

beforeAll(() => copyFileSync("dist/page/tightspot.html", file));

afterAll(() => rmSync(stick, { recursive: true }));

interface Opened {
  readonly page: Page;
  /** Every address that was asked for but the file's own, and everything that went wrong. */
  readonly asked: string[];
  readonly wrong: string[];
}

async function openFile(): Promise<Opened> {
  const browser = await sharedBrowser();
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en-GB" });
  onTestFinished(() => context.close());
  const asked: string[] = [];
  const wrong: string[] = [];
  context.on("request", (request) => asked.push(request.url()));
  context.on("weberror", (error) => wrong.push(String(error.error())));
  const page = await context.newPage();
  page.on("console", (message) => {
    if (message.type() === "error") wrong.push(message.text());
  });
  await page.goto(pathToFileURL(file).href);
  return { page, asked, wrong };
}

const elsewhere = (asked: readonly string[]) =>
  asked.filter((url) => !/^(blob:|data:)/.test(url) && url.split("#")[0] !== pathToFileURL(file).href);

test("opened from a file, an inspection is typed to its verdict, kept, and asks nothing of anyone", async () => {
  const { page, asked, wrong } = await openFile();
  await page.getByText("This Tightspot is one file and needs no network.").waitFor();
  await describeSlide(page);
  await typeReadings(page, WORN);
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
  await kept(page);
  await page.reload();
  expect(await page.getByLabel("Backlash, reading 13", { exact: true }).inputValue()).toBe(WORN[12]?.[1]);
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
  expect(elsewhere(asked)).toEqual([]);
  expect(wrong).toEqual([]);
});

test("opened from a file, samples and logs open, and what was entered is saved to a file by one press", async () => {
  const { page, asked, wrong } = await openFile();
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
  await goHome(page);
  await dropFiles(page, ["log.csv", "Position (mm);Backlash (mm)\n0;0,21\n60;0,20\n120;0,22"]);
  await takeLog(page);
  await page.getByLabel("Travel from").fill("0");
  await page.getByLabel("Travel to").fill("120");
  await page.getByLabel("Lead of the screw").fill("4");
  await page.getByRole("button", { name: "Take the readings" }).click();
  await page.getByText(/^Saved in this browser, .* not in a file yet$/).waitFor();
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a file" }).click(),
  ]);
  const held = JSON.parse(readFileSync(await saved.path(), "utf8"));
  expect(held.surveys[0].readings.map(({ backlash }: { backlash: number }) => backlash)).toEqual([
    0.21, 0.2, 0.22,
  ]);
  await page.getByText(/^Saved in this browser, .* in a file$/).waitFor();
  expect(elsewhere(asked)).toEqual([]);
  expect(wrong).toEqual([]);
});

test("two tabs of the file know of each other", async () => {
  const { page } = await openFile();
  await describeSlide(page);
  await typeReadings(page, EVEN.slice(0, 2));
  await kept(page);
  const other = await page.context().newPage();
  await other.goto(page.url());
  const backlash = (tab: Page) => tab.getByLabel("Backlash, reading 1", { exact: true });
  await backlash(other).waitFor();
  await backlash(page).fill("0.33");
  await expect.poll(() => backlash(other).inputValue()).toBe("0.33");
});

test("what is kept for the file is apart from what is kept for a served page", async () => {
  const page = await served.open();
  await describeSlide(page);
  await typeReadings(page, EVEN.slice(0, 2));
  await kept(page);
  await page.goto(`${served.address}tightspot.html`);
  await page.getByText("This Tightspot is one file").waitFor();
  expect(await page.getByRole("region", { name: "Saved in this browser" }).count()).toBe(0);
  await describeSlide(page);
  await kept(page);
  const names = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
  expect(names.sort()).toEqual(["tightspot", "tightspot-file"]);
});

test("the notices of the libraries that it holds go with it", () => {
  const [, notices] =
    /<script type="text\/plain" id="licences">([\s\S]*?)<\/script>/.exec(readFileSync(file, "utf8")) ?? [];
  for (const library of ["chart.js", "lit", "zod", "simple-statistics"])
    expect(notices).toMatch(new RegExp(`^## ${library} - \\d.*\\n\\n[\\s\\S]{400}`, "m"));
});
