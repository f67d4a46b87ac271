import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { tightspotProcess, workshop } from "../cli/command.ts";
import { looseNut, wornScrew } from "../cli/inspections.ts";
import { useServedPage } from "./servedPage.ts";
import { dropFiles } from "./steps.ts";

const served = useServedPage();
const { file, path } = workshop();

const part = (page: Page) => page.locator("tightspot-comparison-section");
const before = (page: Page) => part(page).getByLabel("Before", { exact: true });
const after = (page: Page) => part(page).getByLabel("After", { exact: true });

/** What is read in the part, in one line, without what is folded away. */
async function shownText(page: Page): Promise<string> {
  const parts = await part(page)
    .locator(":is(p, h3, dt, dd, figcaption, caption):visible")
    .evaluateAll((all) => all.map((each) => each.textContent));
  return parts.join(" ").replace(/\s+/g, " ");
}

async function openPart(page: Page): Promise<void> {
  await page.getByText("Before and after", { exact: true }).click();
}

async function openSample(
  name: RegExp,
  size?: { readonly width: number; readonly height: number },
): Promise<Page> {
  const page = await served.open(size);
  await page.getByRole("button", { name }).click();
  await openPart(page);
  await part(page).getByRole("region", { name: "Acceptance" }).waitFor();
  return page;
}

test("what compares is loaded when it is first opened, and takes the surveys that the command takes", async () => {
  const page = await served.open();
  const loaded: string[] = [];
  page.on("request", (request) => loaded.push(request.url()));
  await page.getByRole("button", { name: /^Lathe 1/ }).click();
  await page.getByRole("heading", { name: "Leave it alone", level: 2 }).waitFor();
  const ofPart = () => loaded.filter((url) => url.includes("comparisonPanel"));
  expect(ofPart()).toEqual([]);
  await openPart(page);
  await part(page)
    .getByText(/^Taking up the nut removed 0\.19\d mm/)
    .waitFor();
  expect(ofPart()).toHaveLength(1);
  expect([await before(page).inputValue(), await after(page).inputValue()]).toEqual(["before", "after"]);
});

test("it says what changed, whether the limit is kept, by how much, draws it, and has the figures", async () => {
  const page = await openSample(/^Lathe 1/);
  const text = await shownText(page);
  const order = [
    "Taking up the nut removed",
    "Proven: lost motion is within the limit of 0.15 mm",
    "Uniform part 0.192 mm less give or take",
    "Uneven part none shown from",
    "Lost motion, before and after",
    "The figures, each with its 95 % interval",
    "How the surveys were made comparable",
    "Cautions",
  ].map((words) => text.indexOf(words));
  expect(order).not.toContain(-1);
  expect(order).toEqual([...order].sort((a, b) => a - b));
  const picture = part(page).getByRole("img");
  expect(await picture.count()).toBe(1);
  expect(await picture.locator("desc").textContent()).toMatch(/^Lost motion along the travel in two surveys/);
  await part(page)
    .getByRole("row", { name: /^End float 0\.016 mm/ })
    .waitFor();
});

test("any two surveys are compared, and choosing the other of the two turns them round", async () => {
  const page = await openSample(/^Boring mill 2/);
  await before(page).selectOption("150-hours");
  await part(page)
    .getByText(/^Lost motion has grown by 0\.02\d mm/)
    .waitFor();
  await after(page).selectOption("150-hours");
  await part(page)
    .getByText(/^Lost motion is less by 0\.02\d mm/)
    .waitFor();
  expect([await before(page).inputValue(), await after(page).inputValue()]).toEqual([
    "610-hours",
    "150-hours",
  ]);
  await part(page)
    .getByText(/the change is given backwards in time/)
    .waitFor();
});

test("from three surveys on it tells how the slide runs in, in words, as a picture and in figures", async () => {
  const page = await openSample(/^Boring mill 2/);
  await part(page)
    .getByText(/^Over 6 surveys since the last repair, from 4 h of use to 610 h of use/)
    .waitFor();
  await part(page)
    .getByRole("img", { name: /^Running in: the uniform part over 6 surveys/ })
    .waitFor();
  await part(page).getByText("Running in, as a table").click();
  await part(page)
    .getByRole("row", { name: /^330 h of use 330-hours 0\.079 mm/ })
    .waitFor();
});

test("with two surveys nothing is said of running in", async () => {
  const page = await openSample(/^Lathe 1/);
  expect(await shownText(page)).not.toMatch(/Running in|A trend takes/);
});

test("the comparison follows what is typed", async () => {
  const page = await openSample(/^Lathe 1/);
  await page.getByText("Details", { exact: true }).click();
  await page
    .getByRole("textbox", { name: /^Limit/ })
    .first()
    .fill("0.1");
  await part(page)
    .getByRole("heading", { name: "Proven: lost motion is over the limit of 0.1 mm" })
    .waitFor();
});

test("the report on the comparison that is saved is the one that the command writes", async () => {
  const page = await openSample(/^Boring mill 2/);
  await page.getByText("Report", { exact: true }).click();
  const link = page.getByRole("link", { name: "Save the comparison as a file" }).first();
  expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  const [saved] = await Promise.all([page.waitForEvent("download"), link.click()]);
  expect(saved.suggestedFilename()).toBe("Saddle-cross-travel-4-hours-and-610-hours-report.html");
  const sample = "sample-data/running-in-boring-mill-saddle.json";
  const { code } = await tightspotProcess(["compare", sample, "--report", path("report.html")]);
  expect(code).toBe(0);
  expect(readFileSync(await saved.path(), "utf8")).toBe(readFileSync(path("report.html"), "utf8"));
});

test("surveys of another file of the slide are added, and can be taken away again", async () => {
  const page = await served.open();
  await dropFiles(page, ["worn.json", JSON.stringify(wornScrew())]);
  await openPart(page);
  await part(page)
    .getByText(/^Comparing takes two surveys with readings/)
    .waitFor();
  const input = part(page).getByLabel("File with surveys of this slide");
  await input.setInputFiles(file("loose.json", JSON.stringify(looseNut())));
  await page.getByText("One survey was added from loose.json.").waitFor();
  await part(page).getByRole("region", { name: "Acceptance" }).waitFor();
  expect(await before(page).locator("option").count()).toBe(2);
  await page.getByRole("button", { name: "Undo", exact: true }).last().click();
  await part(page)
    .getByText(/^Comparing takes two surveys with readings/)
    .waitFor();
});

test("a survey of another slide is refused with the reason, and nothing is changed", async () => {
  const page = await served.open();
  await dropFiles(page, ["worn.json", JSON.stringify(wornScrew())]);
  await openPart(page);
  const other = looseNut({ id: "saddle", name: "Saddle" });
  const input = part(page).getByLabel("File with surveys of this slide");
  await input.setInputFiles(file("saddle.json", JSON.stringify(other)));
  await page
    .getByText(/^saddle\.json: "Saddle" \(saddle\) is another slide than "Cross slide" \(cross-slide\)/)
    .waitFor();
  await part(page)
    .getByText(/^Comparing takes two surveys with readings/)
    .waitFor();
  await input.setInputFiles(file("log.csv", "position (mm),backlash (mm)\n0,0.2\n"));
  await page.getByText(/^log\.csv: this is a log of readings/).waitFor();
});

test("on a phone nothing is wider than the screen, targets are large, and the picture has large letters", async () => {
  const page = await openSample(/^Mill, saddle/, { width: 360, height: 740 });
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
  const heights = await part(page)
    .locator("button:visible, a:visible, summary:visible, select:visible")
    .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(6);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
  const letters = await part(page)
    .getByRole("img")
    .locator("text")
    .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
  expect(Math.min(...letters)).toBeGreaterThan(10);
});

test("the pictures take the colours of a dark screen", async () => {
  const page = await openSample(/^Lathe 1/);
  const paper = () =>
    part(page)
      .getByRole("img")
      .locator("rect")
      .first()
      .evaluate((rect) => getComputedStyle(rect).fill);
  const light = await paper();
  await page.emulateMedia({ colorScheme: "dark" });
  const dark = await paper();
  expect([light, dark]).toEqual(["rgb(255, 255, 255)", "rgb(16, 21, 28)"]);
});
