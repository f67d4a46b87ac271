import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { tightspotProcess, workshop } from "../cli/command.ts";
import { useServedPage } from "./servedPage.ts";
import { openSlide } from "./steps.ts";

const served = useServedPage();
const { path } = workshop();

async function openSample(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
}

test("the report is loaded when it is first asked for, and opens by itself", async () => {
  const page = await served.open();
  const loaded: string[] = [];
  page.on("request", (request) => loaded.push(request.url()));
  await openSample(page);
  const ofReport = () => loaded.filter((url) => url.includes("reportChoices"));
  expect(ofReport()).toEqual([]);
  await page.getByText("Report", { exact: true }).click();
  const link = page.getByRole("link", { name: "Open to print" });
  expect((await link.boundingBox())?.height).toBeGreaterThanOrEqual(48);
  const [report] = await Promise.all([page.context().waitForEvent("page"), link.click()]);
  await report.getByRole("heading", { name: "Table, cross travel" }).waitFor();
  expect(await report.getByRole("img").count()).toBe(3);
  expect(ofReport().length).toBe(1);
});

test("the report that is saved is the one that the command writes", async () => {
  const page = await served.open();
  await openSample(page);
  await page.getByText("Report", { exact: true }).click();
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Save as a file" }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe("Table-cross-travel-complaint-report.html");
  const file = "sample-data/remake-screw-worn-middle-boring-mill-table.json";
  const { code } = await tightspotProcess(["assess", "--report", path("report.html"), file]);
  expect(code).toBe(0);
  expect(readFileSync(await saved.path(), "utf8")).toBe(readFileSync(path("report.html"), "utf8"));
});

test("without readings there is no report, and the page says so; Escape leaves the menu", async () => {
  const page = await served.open({ width: 360, height: 740 });
  await openSlide(page);
  await page.getByText("Report", { exact: true }).click();
  const words = page.getByText("There is a report once the readings of this survey are assessed.");
  await words.waitFor();
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
  await page.keyboard.press("Escape");
  await words.waitFor({ state: "detached" });
});
