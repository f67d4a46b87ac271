import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { kept, openSlide, type Typed, typeReadings } from "./steps.ts";

const served = useServedPage();

const THREE: readonly Typed[] = [
  ["0", "0.21"],
  ["25", "0.20"],
  ["50", "0.22"],
];

const cell = (page: Page, column: string, reading: number) =>
  page.getByLabel(`${column}, reading ${reading}`, { exact: true });

async function table(readings: readonly Typed[] = THREE): Promise<Page> {
  const page = await served.open();
  await openSlide(page, readings);
  return page;
}

/** What the cells of a column hold, from the top. */
async function column(page: Page, name: string): Promise<readonly string[]> {
  const cells = page.getByRole("textbox", { name: new RegExp(`^${name}, reading \\d`) });
  return cells.evaluateAll((all) => all.map((each) => (each as HTMLInputElement).value));
}

const isAt = (page: Page, label: string) =>
  page.getByLabel(label, { exact: true }).and(page.locator("*:focus")).waitFor();

test("the arrows go from cell to cell, to the row's number and back, and within what is typed", async () => {
  const page = await table();
  await cell(page, "Backlash", 2).focus();
  await page.keyboard.press("ArrowUp");
  await isAt(page, "Backlash, reading 1");
  await page.keyboard.press("ArrowLeft");
  await isAt(page, "Position, reading 1");
  await page.keyboard.press("ArrowLeft");
  await isAt(page, "Strike or delete reading 1");
  await page.keyboard.press("ArrowDown");
  await isAt(page, "Strike or delete reading 2");
  await page.keyboard.press("ArrowRight");
  await isAt(page, "Position, reading 2");
  await page.keyboard.press("F2");
  await page.keyboard.press("ArrowLeft");
  await isAt(page, "Position, reading 2");
  await page.keyboard.press("ControlOrMeta+End");
  await isAt(page, "Backlash, next reading");
  await page.keyboard.press("ControlOrMeta+Home");
  await isAt(page, "Position, reading 1");
});

test.each(["Lathe 2", "Boring mill, table"])(
  "on a phone no cell that the cursor comes to lies under the verdict's bar: %s",
  async (sample) => {
    const page = await served.open({ width: 360, height: 740 });
    await page.getByRole("button", { name: new RegExp(`^${sample}`) }).click();
    await page.getByRole("heading", { level: 2 }).first().waitFor();
    const bar = page.locator("tightspot-verdict-bar button");
    await cell(page, "Backlash", 24).focus();
    await bar.waitFor();
    for (let reading = 23; reading > 0; reading--) {
      await page.keyboard.press("ArrowUp");
      await isAt(page, `Backlash, reading ${reading}`);
      const top = (await cell(page, "Backlash", reading).boundingBox())?.y ?? Number.NaN;
      const foot = (await bar.isVisible()) ? ((await bar.boundingBox())?.height ?? Number.NaN) : 0;
      expect(top).toBeGreaterThanOrEqual(foot - 1);
    }
  },
);

test("typing over a cell, emptying it, Escape, and Ctrl+Z and Ctrl+Y over all of it", async () => {
  const page = await table();
  await cell(page, "Position", 2).focus();
  await page.keyboard.press("ArrowRight");
  await isAt(page, "Backlash, reading 2");
  await page.keyboard.type("0.25");
  await page.keyboard.press("Enter");
  await expect.poll(() => column(page, "Backlash")).toEqual(["0.21", "0.25", "0.22"]);
  await isAt(page, "Position, reading 3");

  await page.keyboard.press("ArrowRight");
  await isAt(page, "Backlash, reading 3");
  await page.keyboard.type("9");
  await page.keyboard.press("Escape");
  expect(await column(page, "Backlash")).toEqual(["0.21", "0.25", "0.22"]);

  await page.keyboard.press("Delete");
  await page.keyboard.press("ArrowUp");
  await page.getByText("Backlash is missing.").waitFor();
  await page.keyboard.press("ControlOrMeta+z");
  await expect.poll(() => column(page, "Backlash")).toEqual(["0.21", "0.25", "0.22"]);
  await page.keyboard.press("ControlOrMeta+z");
  await expect.poll(() => column(page, "Backlash")).toEqual(["0.21", "0.20", "0.22"]);
  await page.keyboard.press("ControlOrMeta+y");
  await expect.poll(() => column(page, "Backlash")).toEqual(["0.21", "0.25", "0.22"]);
  await isAt(page, "Backlash, reading 2");
});

test("figures typed into the middle of one already there stay in the order in which they are typed", async () => {
  const page = await table();
  const backlash = cell(page, "Backlash", 2);
  await backlash.focus();
  await page.keyboard.press("Home");
  for (const key of ["ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
  for (const key of ["1", "5", "7"]) {
    await page.keyboard.press(key);
    await page.waitForTimeout(50);
  }
  expect(await column(page, "Backlash")).toEqual(["0.21", "0.15720", "0.22"]);
});

test("what was deleted is taken back after the page was loaded again", async () => {
  const page = await table();
  await page.getByRole("button", { name: "Strike or delete reading 2" }).press("Delete");
  await expect.poll(() => column(page, "Position")).toEqual(["0", "50"]);
  await kept(page);
  await page.reload();
  await cell(page, "Position", 2).focus();
  await page.keyboard.press("ControlOrMeta+z");
  await expect.poll(() => column(page, "Position")).toEqual(["0", "25", "50"]);
});

test("a row that was emptied is gone once it is left", async () => {
  const page = await table();
  await cell(page, "Position", 2).fill("");
  await page.getByLabel("Backlash, reading that cannot be read yet").fill("");
  await cell(page, "Position", 1).focus();
  await expect.poll(() => column(page, "Position")).toEqual(["0", "50"]);
  expect(await page.getByText("is missing").count()).toBe(0);
});

async function paste(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).focus();
  await page.getByLabel(label, { exact: true }).evaluate((input, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", pasted);
    input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, composed: true }));
  }, text);
}

test("a block from a spreadsheet goes over the cells from there on, in one step that can be taken back", async () => {
  const page = await table();
  await paste(page, "Backlash, reading 2", "0,25\n0,26");
  await expect.poll(() => column(page, "Backlash")).toEqual(["0.21", "0.25", "0.26"]);
  await paste(page, "Position, reading 3", "60\t0.30\n75\t0.31\n100\t0.3x");
  await expect.poll(() => column(page, "Position")).toEqual(["0", "25", "60", "75"]);
  await page.getByText('Backlash is "0.3x"').waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  await cell(page, "Position", 1).focus();
  await page.keyboard.press("ControlOrMeta+z");
  await expect.poll(() => column(page, "Backlash")).toEqual(["0.21", "0.20", "0.22"]);
});

test("a pasted table with headings is read as a log", async () => {
  const page = await table([]);
  await paste(page, "Position, next reading", "Backlash (mm)\tPosition\n0.21\t0\n0.20\t150");
  await expect.poll(() => column(page, "Position")).toEqual(["0", "150"]);
});

test("sorting changes what is looked at, and not the order of reading", async () => {
  const page = await table([
    ["50", "0.22"],
    ["0", "0.21"],
    ["25", "0.20"],
  ]);
  const heading = page.getByRole("columnheader", { name: /^Position/ });
  await heading.getByRole("button").press("Enter");
  expect(await heading.getAttribute("aria-sort")).toBe("ascending");
  expect(await column(page, "Position")).toEqual(["0", "25", "50"]);
  expect(await cell(page, "Position", 1).inputValue()).toBe("50");
  await heading.getByRole("button").press("Enter");
  expect(await column(page, "Position")).toEqual(["50", "25", "0"]);
  await typeReadings(page, [["75", "0.2"]]);
  expect(await column(page, "Position")).toEqual(["50", "25", "0", "75"]);
  await page.getByRole("button", { name: "Order of reading" }).click();
  expect(await column(page, "Position")).toEqual(["50", "0", "25", "75"]);
});

test("a reading that looks like a slip is marked as soon as its cell is left", async () => {
  const page = await table();
  await typeReadings(page, [["75", "2.1"]]);
  await page.getByText("2.10 mm is ten times what the readings around it say").waitFor();
  await cell(page, "Backlash", 4).fill("0.21");
  await cell(page, "Backlash", 1).focus();
  await page.getByText("ten times").waitFor({ state: "detached" });
});
