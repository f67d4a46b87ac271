import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";

const served = useServedPage();

async function opened(sample: RegExp, verdict: string): Promise<Page> {
  const page = await served.open();
  await page.getByRole("button", { name: sample }).click();
  await page.getByRole("heading", { name: verdict }).waitFor();
  await page.getByText("The same as a table").click();
  return page;
}

test("for a nut that cannot be adjusted, the page tells what new nuts would leave", async () => {
  const page = await opened(/^Mill, table/, "Fit new nuts");
  await page
    .getByRole("term")
    .filter({ hasText: /^Left with new nuts$/ })
    .waitFor();
  await page.getByRole("columnheader", { name: "Left with new nuts" }).waitFor();
  await page.getByRole("img", { name: /New nuts on this screw would leave/ }).waitFor();
  expect(await page.getByText("Left after adjusting").count()).toBe(0);
});

test("for a nut that can be adjusted, the page tells what adjusting would leave", async () => {
  const page = await opened(/^Lathe 2/, "Adjust the nut");
  await page
    .getByRole("term")
    .filter({ hasText: /^Left after adjusting$/ })
    .waitFor();
  await page.getByRole("columnheader", { name: "Left after adjusting" }).waitFor();
  await page.getByRole("img", { name: /Adjusting the nut would leave/ }).waitFor();
});

test("readings of positions are told in the quantities of ISO 230-2", async () => {
  const page = await opened(/^Pattern mill/, "Adjust the nut");
  await page.getByRole("heading", { name: "Positioning, after ISO 230-2, at 20 °C" }).waitFor();
  for (const name of ["Reversal value B", "Repeatability R", "Systematic deviation E", "Accuracy A"]) {
    await page.getByRole("term").filter({ hasText: name }).waitFor();
  }
});
