import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { dropFiles, EVEN, openSlide, takeLog } from "./steps.ts";

const served = useServedPage();

const dialog = (page: Page) => page.getByRole("dialog");
const cell = (page: Page, column: string, reading: number) =>
  page.getByLabel(`${column}, reading ${reading}`, { exact: true });
const role = (page: Page, column: string) => dialog(page).getByLabel(`${column}: what it holds`);
const unit = (page: Page, column: string) => dialog(page).getByLabel(`${column}: its unit`);

test("a log is shown before it is taken in: each column's use, unit and why, all of which can be changed", async () => {
  const page = await served.open();
  await openSlide(page);
  await dropFiles(page, ["log.csv", "Position (mm),Reading (mm),Second,Remark\n0,0.21,8,gib\n60,0.20,9,\n"]);
  await dialog(page).getByText("2 readings").waitFor();
  expect(await role(page, "Position (mm)").inputValue()).toBe("position");
  expect(await role(page, "Reading (mm)").inputValue()).toBe("backlash");
  expect(await unit(page, "Reading (mm)").inputValue()).toBe("mm");
  expect(await role(page, "Second").inputValue()).toBe("nothing");
  expect(await role(page, "Remark").inputValue()).toBe("note");
  await dialog(page).getByText("its heading says so; its heading gives the unit").first().waitFor();
  await dialog(page).getByText("its heading is none that is known").waitFor();
  expect(await cell(page, "Position", 1).count()).toBe(0);

  await role(page, "Reading (mm)").selectOption("nothing");
  await dialog(page).getByText("no column holds the readings").waitFor();
  await role(page, "Second").selectOption("backlash");
  await dialog(page).getByText("The lost motion is about 9 mm, on a travel of 300 mm.").waitFor();
  expect(await dialog(page).getByRole("button", { name: "Take the readings" }).count()).toBe(0);
  await unit(page, "Second").selectOption("thou");
  await takeLog(page);
  // 9 thousandths of an inch.
  expect(Number(await cell(page, "Backlash", 2).inputValue())).toBeCloseTo(0.2286, 9);
});

test("figures without headings are taken once the reader says what they are", async () => {
  const page = await served.open();
  await openSlide(page);
  await dropFiles(page, ["bare.csv", "0;0,21\n60;0,20\n"]);
  await dialog(page).getByText("there is no row of headings").waitFor();
  await role(page, "1").selectOption("position");
  await role(page, "2").selectOption("backlash");
  await dialog(page).getByRole("button", { name: "Millimetres" }).click();
  await takeLog(page);
  expect(await cell(page, "Backlash", 1).inputValue()).toBe("0.21");
});

test("a unit in which a log makes no sense on this slide is asked about, and the answer is taken", async () => {
  const page = await served.open();
  await openSlide(page, [], "0", "180");
  await dropFiles(page, ["log.csv", "Position (mm),Backlash (mm)\n0,12\n3,11\n7,12\n"]);
  await dialog(page).getByText("The positions go from 0 to 7 mm, on a travel of 180 mm.").waitFor();
  await dialog(page).getByRole("button", { name: "Inches" }).click();
  await dialog(page).getByText("The lost motion is about 0.4724 in, on a travel of 7.087 in.").waitFor();
  await dialog(page).getByRole("button", { name: "Thousandths of an inch" }).click();
  await takeLog(page);
  expect(await cell(page, "Position", 3).inputValue()).toBe("177.8");
  expect(Number(await cell(page, "Backlash", 1).inputValue())).toBeCloseTo(0.3048, 9);
});

test("where the travel is told after the log, the positions are asked about then", async () => {
  const page = await served.open();
  await dropFiles(page, ["log.csv", "Position (mm),Backlash (mm)\n0,0.2\n3,0.21\n7,0.2\n"]);
  await takeLog(page);
  await page.getByLabel("Travel from").fill("0");
  await page.getByLabel("Travel to").fill("180");
  await page.getByLabel("Lead of the screw").fill("4");
  await page.getByRole("button", { name: "Take the readings" }).click();
  await page.getByText("The positions go from 0 to 7 mm, on a travel of 180 mm.").waitFor();
  await page.getByRole("button", { name: "Inches" }).click();
  expect(await cell(page, "Position", 3).inputValue()).toBe("177.8");
});

test("rows that cannot be read can be saved as a list", async () => {
  const page = await served.open();
  await dropFiles(page, ["shop.csv", "Position (mm),Backlash (mm)\n0,0.2\n25,=1+2\n50,0.21\n"]);
  await dialog(page).getByText("One row or cell cannot be read").waitFor();
  expect(await saved(page, "Save this list as CSV")).toEqual([
    "shop-not-read.csv",
    'line,reason,cure,text\r\n3,"""Backlash (mm)"" is ""=1+2"", which is not a number","Correct the cell, or leave it empty.","25,=1+2"\r\n',
  ]);
});

test("marks that may set off thousands are asked about", async () => {
  const page = await served.open();
  await dropFiles(page, ["log.csv", "Position (mm);Backlash (µm)\n0;200\n1,250;210\n"]);
  await dialog(page).getByRole("button", { name: "A comma: 1,25" }).click();
  await dialog(page).getByText("2 readings").waitFor();
  expect(await dialog(page).getByText("cannot be read").count()).toBe(0);
});

test("a table pasted anywhere on the page is shown as a log is, and so is one pasted into the field for it", async () => {
  const page = await served.open();
  await page.getByRole("heading", { name: "Look at a sample" }).waitFor();
  await page.evaluate(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", "Position\tBacklash\n0 mm\t0,21 mm\n50 mm\t0,2 mm\n");
    document.body.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }),
    );
  });
  await page.getByRole("dialog", { name: "What was pasted" }).getByText("2 readings").waitFor();
  await page.getByRole("button", { name: "Cancel" }).click();

  await page.getByRole("link", { name: "Tightspot" }).click();
  await page.getByRole("button", { name: "Paste readings" }).click();
  await page.getByRole("textbox").fill("position,advancing,retracting\n0,5.00,4.80\n");
  await page.getByRole("button", { name: "Read it" }).click();
  await page.getByRole("dialog", { name: "What was pasted" }).getByText("One reading").waitFor();
  const method = dialog(page).getByLabel("Way of measuring");
  expect(await method.inputValue()).toBe("indicator-pair");
  await method.selectOption("dial-pair");
  await dialog(page).getByText("a dial is read in divisions").first().waitFor();
});

test("a million rows are read with their progress shown, and can be given up at any time", async () => {
  const page = await served.open();
  await openSlide(page);
  await dropMillionRows(page);
  const progress = dialog(page).getByRole("progressbar");
  const seen = new Set<number>();
  await expect
    .poll(
      async () => {
        const value = await progress.getAttribute("value", { timeout: 5000 });
        seen.add(Number(value));
        return [...seen].filter((each) => each > 0 && each < 1).length;
      },
      { interval: 10, timeout: 30_000 },
    )
    .toBeGreaterThanOrEqual(2);
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect.poll(() => dialog(page).count()).toBe(0);
  expect(await cell(page, "Position", 1).count()).toBe(0);

  await dropMillionRows(page);
  await dialog(page).getByText("1,000,000 readings", { exact: true }).waitFor();
  expect(await progress.count()).toBe(0);
  // A table of a million rows would stop the page.
  await dialog(page).getByText("1,000 of the 1,000,000 readings of the log").waitFor();
  await takeLog(page);
  await cell(page, "Position", 1000).waitFor();
  const [, file] = await saved(page, "Save a file");
  expect(JSON.parse(file).surveys[0].note).toContain("1,000 of the 1,000,000 readings of the log");
  await page.getByRole("region", { name: "Verdict" }).getByRole("heading").first().waitFor();
});

test("readings and profile are saved as CSV, and the readings open again as they were", async () => {
  const page = await served.open();
  await page.getByRole("button", { name: /^Lathe 2/ }).click();
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  await page.getByText("Save as CSV").click();
  const [name, text] = await saved(page, "Readings of this survey");
  expect(name).toMatch(/^Cross-slide-.*\.csv$/);
  await page.getByText("Save as CSV").click();
  const [profileName, profile] = await saved(page, "Profile");
  expect(profileName).toBe(name.replace(".csv", "-profile.csv"));
  expect(profile.split("\r\n")[0]).toBe('position (mm),profile (mm),"from, 95 % (mm)","to, 95 % (mm)"');

  const original = JSON.parse(readFileSync("sample-data/adjust-nut-lathe-2-cross-slide.json", "utf8"));
  await page.getByRole("link", { name: "Tightspot" }).click();
  await dropFiles(page, ["again.csv", text]);
  await takeLog(page);
  await page.getByRole("button", { name: "Take the readings" }).click();
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  const [, file] = await saved(page, "Save a file");
  const { slide, surveys } = JSON.parse(file);
  expect({ ...slide, id: original.slide.id }).toEqual(original.slide);
  expect({ ...surveys[0], id: original.surveys[0].id }).toEqual(original.surveys[0]);
});

test("where the slide is described in other units than its log, readings and what the log says are converted", async () => {
  const page = await served.open();
  const log =
    "slide.travel.from: 0\nslide.travel.to: 254\nslide.screw.lead: 5.08\nPosition (mm),Backlash (mm)\n0,0.254\n254,0.508\n";
  await dropFiles(page, ["log.csv", log]);
  await takeLog(page);
  await page.getByText("Inches").click();
  expect(await page.getByLabel("Travel to").inputValue()).toBe("10");
  expect(await page.getByLabel("Lead of the screw").inputValue()).toBe("0.2");
  await page.getByRole("button", { name: "Take the readings" }).click();
  expect(await cell(page, "Position", 2).inputValue()).toBe("10");
  expect(await cell(page, "Backlash", 2).inputValue()).toBe("0.02");
});

test("an inspection without travel, lead and limit asks for them", async () => {
  const page = await served.open();
  const readings = EVEN.map(([position, backlash]) => ({
    position: Number(position),
    backlash: Number(backlash),
  }));
  const partly = {
    format: "tightspot-inspection",
    version: 1,
    slide: { id: "s", name: "Saddle", units: "mm" },
    surveys: [{ id: "first", taken: "2026-03-14", stage: "routine", method: "push-pull", readings }],
  };
  await dropFiles(page, ["partly.json", JSON.stringify(partly)]);
  await takeLog(page);
  await page.getByText("13 readings are waiting for this.").waitFor();
  await page.getByLabel("Travel from").fill("0");
  await page.getByLabel("Travel to").fill("300");
  await page.getByLabel("Lead of the screw").fill("4");
  await page.getByRole("button", { name: "Take the readings" }).click();
  await page.getByRole("heading", { name: "Saddle" }).waitFor();
});

test("on a phone the log's columns and questions are no wider than the screen, and large enough to press", async () => {
  const page = await served.open({ width: 360, height: 740 });
  await openSlide(page, EVEN.slice(0, 2));
  await dropFiles(page, [
    "a-long-name-of-a-log-from-the-shop.csv",
    "Position (mm);Backlash (mm);Remarks of the fitter\n0;12;x\n25;13;\n50;oops;\n",
  ]);
  await dialog(page).getByText("cannot be read").waitFor();
  const sizes = await dialog(page).evaluate((shown) => ({
    excess: shown.scrollWidth - shown.clientWidth,
    low: [...shown.querySelectorAll("button, select")].filter(
      (each) => each.getBoundingClientRect().height < 48,
    ).length,
  }));
  expect(sizes).toEqual({ excess: 0, low: 0 });
});

async function saved(page: Page, button: string): Promise<readonly [name: string, text: string]> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  return [download.suggestedFilename(), readFileSync(await download.path(), "utf8")];
}

/** Drops a log of a million rows, made in the page. */
async function dropMillionRows(page: Page): Promise<void> {
  const transfer = await page.evaluateHandle(() => {
    const rows = Array.from(
      { length: 1_000_000 },
      (_, index) => `${(index * 0.0003).toFixed(4)},0.${200 + (index % 100)}`,
    );
    const carried = new DataTransfer();
    carried.items.add(new File([`position (mm),backlash (mm)\n${rows.join("\n")}\n`], "cable.csv"));
    return carried;
  });
  await page.dispatchEvent("tightspot-app", "drop", { dataTransfer: transfer });
}
