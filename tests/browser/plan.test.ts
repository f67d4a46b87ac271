import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { kept, openSlide } from "./steps.ts";

const served = useServedPage();

async function openPlan(page: Page): Promise<void> {
  await page.getByText("Measuring plan", { exact: true }).click();
  await page.getByRole("list", { name: "Stations" }).first().waitFor();
}

const planned = async (page: Page): Promise<readonly string[]> =>
  (await page.getByRole("list", { name: "Stations" }).locator("strong").allInnerTexts()).map((text) =>
    text.replace(" mm", ""),
  );

/** What stands in a column of the readings, without the empty row at the end. */
const column = (page: Page, name: "Position" | "Backlash"): Promise<readonly string[]> =>
  page
    .getByRole("table", { name: /^Readings/ })
    .getByLabel(new RegExp(`^${name}, reading`))
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));

const backlash = (page: Page, at: string, which = 0) =>
  page.getByLabel(`Backlash, reading to take at ${at}`, { exact: true }).nth(which);

test("the plan is loaded when it is opened, and not before", async () => {
  const page = await served.open();
  const loaded: string[] = [];
  page.on("request", (request) => loaded.push(request.url()));
  await openSlide(page);
  expect(loaded.filter((url) => url.includes("planPanel"))).toEqual([]);
  await openPlan(page);
  expect(loaded.filter((url) => url.includes("planPanel")).length).toBe(1);
});

test("the table is prepared in the order of the plan, and nothing that is there is touched", async () => {
  const page = await served.open();
  await openSlide(
    page,
    [
      ["160", "0.20"],
      ["33", "0.25"],
    ],
    "0",
    "160",
  );
  await openPlan(page);
  const stations = await planned(page);
  await page.getByRole("button", { name: "Prepare the readings" }).click();
  await page.getByText(`${stations.length * 2 - 1} readings wait in the table`).waitFor();
  // The first reading planned at 160 mm is there already.
  const out = stations.slice(0, -1);
  const expected = [...out, ...stations.toReversed()];
  expect(await column(page, "Position")).toEqual(["160", "33", ...expected]);
  expect((await column(page, "Backlash")).slice(0, 3)).toEqual(["0.20", "0.25", ""]);
  expect(await page.getByText("is missing").count()).toBe(0);

  await page.getByRole("button", { name: "Prepare the readings" }).click();
  await page.getByText("Every reading of the plan is in the table already.").waitFor();
  expect((await column(page, "Position")).length).toBe(expected.length + 2);
});

test("prepared readings are kept, filled in and become readings; undo leaves them", async () => {
  const page = await served.open();
  await openSlide(page, [], "0", "160");
  await openPlan(page);
  const [first = "", second = ""] = await planned(page);
  await page.getByRole("button", { name: "Prepare the readings" }).click();
  await kept(page);
  await page.reload();
  await backlash(page, first).fill("0.21");
  await page.getByLabel("Backlash, reading 1", { exact: true }).waitFor();
  await backlash(page, second).waitFor();
  await kept(page);

  await openPlan(page);
  await page.getByRole("button", { name: "Prepare the readings" }).click();
  await page.getByText("Every reading of the plan is in the table already.").waitFor();

  const before = await column(page, "Position");
  await page.getByLabel("How many stations").fill("5");
  await page.getByRole("button", { name: "Prepare the readings" }).click();
  await page.getByText(/wait in the table/).waitFor();
  expect((await column(page, "Position")).length).toBeGreaterThan(before.length);
  await page.getByRole("button", { name: "Undo" }).click();
  expect(await column(page, "Position")).toEqual(before);
  expect(await page.getByLabel("Backlash, reading 1", { exact: true }).inputValue()).toBe("0.21");
});

test("the log sheet opens by itself, with the same positions and the columns of the survey's method", async () => {
  const page = await served.open();
  await openSlide(page, [], "0", "160");
  await page.getByLabel("Way of measuring").selectOption("indicator-pair");
  await openPlan(page);
  const stations = await planned(page);
  const [sheet] = await Promise.all([
    page.context().waitForEvent("page"),
    page.getByRole("link", { name: "Log sheet to print" }).click(),
  ]);
  await sheet.getByRole("heading", { name: "Log sheet: lost motion along a slide" }).waitFor();
  expect(await sheet.locator("tbody th.position").allInnerTexts()).toEqual(stations);
  expect(await sheet.getByText("retracting", { exact: true }).count()).toBe(2);
});

test("a long travel is read in two rounds, of which the first is prepared by itself", async () => {
  const page = await served.open();
  await openSlide(page);
  await openPlan(page);
  const first = await page
    .getByRole("list", { name: "Stations, first round" })
    .locator("strong")
    .allInnerTexts();
  const all = await planned(page);
  expect(first.length).toBeLessThanOrEqual(15);
  expect(all.length).toBeGreaterThan(20);
  await page.getByRole("button", { name: "Prepare the first round" }).click();
  await page.getByText(`${first.length * 2} readings wait in the table`).waitFor();
  await page.getByRole("button", { name: "Prepare both rounds" }).click();
  // The first station is read once more at the end.
  await page.getByText(`${(all.length - first.length) * 2 + 1} readings wait in the table`).waitFor();
  expect((await column(page, "Position")).length).toBe(all.length * 2 + 1);
  await page.getByRole("button", { name: "Prepare both rounds" }).click();
  await page.getByText("Every reading of the plan is in the table already.").waitFor();
});

test("so many stations as are typed are planned, with what that costs; what is no number is said", async () => {
  const page = await served.open();
  await openSlide(page);
  await openPlan(page);
  const field = page.getByLabel("How many stations");
  await field.fill("4");
  await page.getByText("No verdict is given with fewer than 5 stations.").waitFor();
  expect((await planned(page)).length).toBe(4);
  await field.fill("a few");
  await page.getByText("“a few” is not a whole number").waitFor();
  expect(await page.getByRole("button", { name: "Prepare the readings" }).count()).toBe(0);
});

test("on a phone the plan is no wider than the screen and what is pressed is large enough", async () => {
  const page = await served.open({ width: 360, height: 740 });
  await openSlide(page);
  await openPlan(page);
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
  for (const target of [
    page.getByRole("link", { name: "Log sheet to print" }),
    page.getByRole("button", { name: "Prepare the first round" }),
    page.getByRole("button", { name: "Prepare both rounds" }),
    page.getByLabel("How many stations"),
  ])
    expect((await target.boundingBox())?.height).toBeGreaterThanOrEqual(48);
});
