import { readdirSync, readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { dropFiles, EVEN, kept, openSlide, takeLog } from "./steps.ts";

const served = useServedPage();

const LOG = ["Position (mm);Backlash (mm)", "0;0,21", "60;0,20", "120;0,22"].join("\n");
const position = (page: Page, reading: number) =>
  page.getByLabel(`Position, reading ${reading}`, { exact: true });

test("a dropped log waits for the slide to be described, and its readings are then there", async () => {
  const page = await served.open();
  await dropFiles(page, ["log.csv", LOG]);
  await takeLog(page);
  await page.getByText("3 readings are waiting for this.").waitFor();
  await page.getByLabel("Travel from").fill("0");
  await page.getByLabel("Travel to").fill("120");
  await page.getByLabel("Lead of the screw").fill("4");
  await page.getByRole("button", { name: "Take the readings" }).click();
  expect(await position(page, 3).inputValue()).toBe("120");
  expect(await page.getByLabel("Backlash, reading 3", { exact: true }).inputValue()).toBe("0.22");
});

test("a log dropped on readings that are there asks whether to add them, replace them or start a survey", async () => {
  const page = await served.open();
  await openSlide(page, EVEN.slice(0, 2));

  await dropFiles(page, ["log.csv", LOG]);
  await page.getByRole("button", { name: "Add to this survey" }).click();
  expect(await position(page, 5).inputValue()).toBe("120");
  await page.getByRole("button", { name: "Undo" }).click();
  expect(await position(page, 2).inputValue()).toBe("25");
  expect(await position(page, 3).count()).toBe(0);

  await dropFiles(page, ["log.csv", LOG]);
  await page.getByRole("button", { name: "As a new survey" }).click();
  expect(await position(page, 3).inputValue()).toBe("120");
  await page.getByLabel("Survey", { exact: true }).selectOption({ index: 0 });
  expect(await position(page, 2).inputValue()).toBe("25");

  await dropFiles(page, ["log.csv", LOG]);
  await page.getByRole("button", { name: "Replace this survey’s readings" }).click();
  expect(await position(page, 3).inputValue()).toBe("120");
});

test("a log without units asks for them, and tells of each row that it cannot read", async () => {
  const page = await served.open();
  await openSlide(page);
  await dropFiles(page, ["log.csv", "Position,Backlash\n0,0.008\n2,oops\n4,0.009\n"]);
  await page.getByRole("button", { name: "Inches" }).click();
  await page.getByText("Line 3").waitFor();
  await page.getByText('"Backlash" is "oops", which is not a number').waitFor();
  await page.getByRole("button", { name: "Take the readings" }).click();
  // Two inches on a slide that is kept in millimetres: 4 in is 101.6 mm.
  expect(await position(page, 2).inputValue()).toBe("101.6");
});

test("a table pasted into a cell is taken in the units of the table", async () => {
  const page = await served.open();
  await openSlide(page);
  await page.getByLabel("Position, next reading").focus();
  await page.evaluate(() => navigator.clipboard === undefined);
  await page.getByLabel("Position, next reading").evaluate((input) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "0\t0,21\n50\t0,20");
    input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, composed: true }));
  });
  expect(await position(page, 2).inputValue()).toBe("50");
  expect(await page.getByLabel("Backlash, reading 1", { exact: true }).inputValue()).toBe("0.21");
});

test("a saved file holds what was entered, and keys that this program does not know", async () => {
  const page = await served.open();
  const sample = JSON.parse(readFileSync("sample-data/adjust-nut-lathe-2-cross-slide.json", "utf8"));
  const original = { ...sample, workshop: { bay: 7 }, slide: { ...sample.slide, colour: "grey" } };
  await dropFiles(page, ["original.json", JSON.stringify(original)]);
  await page.getByRole("heading", { name: original.slide.name }).waitFor();
  expect(await savedFile(page)).toEqual(original);
});

test("a reading in a file beyond ten metres is shown as unreadable, and not lost", async () => {
  const page = await served.open();
  const original = JSON.parse(readFileSync("sample-data/adjust-nut-lathe-2-cross-slide.json", "utf8"));
  original.surveys[0].readings[3].backlash = 54321;
  await dropFiles(page, ["slip.json", JSON.stringify(original)]);
  await page.getByText("Backlash is too large. No slide is longer than 10 m.").waitFor();
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  await page.reload();
  const figure = page.getByLabel("Backlash, reading that cannot be read yet");
  expect(Number(await figure.inputValue())).toBe(54321);
  await figure.fill("0.24");
  original.surveys[0].readings[3].backlash = 0.24;
  expect(await savedFile(page)).toEqual(original);
});

test("readings of positions are shown as they are in the file, and saved unaltered", async () => {
  const page = await served.open();
  const original = JSON.parse(readFileSync("sample-data/positioning-pattern-mill-table.json", "utf8"));
  // What a table of three decimals does not show in full.
  original.surveys[0].readings[2].reading = 50.92 + 1e-13;
  original.surveys[0].readings[3].reading = 1e-300;
  await dropFiles(page, ["positions.json", JSON.stringify(original)]);
  const cell = (column: string, reading: number) =>
    page.getByLabel(`${column}, reading ${reading}`, { exact: true });
  await cell("Target", 2).waitFor();
  const row = ["Target", "Direction", "Reading", "Run"];
  const shown = await Promise.all(row.map((column) => cell(column, 2).inputValue()));
  expect(shown).toEqual(["24", "adv", "23.922", "1"]);

  // Every row is read anew when one is changed.
  await cell("Run", 1).fill("1.5");
  await cell("Target", 1).focus();
  await page.getByText("Run is “1.5”, which is no count. Count the runs from 1.").waitFor();
  await page.getByLabel("Run, reading that cannot be read yet").fill("1");
  expect(await savedFile(page)).toEqual(original);
});

test("every sample opens in one click and is kept", async () => {
  const page = await served.open();
  const files = readdirSync("sample-data").filter((name) => name.endsWith(".json"));
  const samples = page.getByRole("region", { name: "Look at a sample" }).getByRole("button");
  expect(await samples.count()).toBe(files.length);
  for (let index = 0; index < files.length; index++) {
    await samples.nth(index).click();
    await page.getByRole("region", { name: "Verdict" }).getByRole("heading").first().waitFor();
    await kept(page);
    await page.getByRole("link", { name: "Tightspot" }).click();
  }
  const keptLinks = page.getByRole("region", { name: "Saved in this browser" }).getByRole("link");
  await expect.poll(() => keptLinks.count()).toBe(files.length);
});

async function savedFile(page: Page): Promise<unknown> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a file" }).click(),
  ]);
  return JSON.parse(readFileSync(await download.path(), "utf8"));
}
