import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { dropFiles, goHome } from "./steps.ts";

const served = useServedPage();

const PHONE = { width: 360, height: 740 };

const FILES = [
  "leave-alone-drilling-table",
  "adjust-nut-lathe-2-cross-slide",
  "measure-more-lathe-4-cross-slide",
  "replace-nuts-mill-table",
  "no-verdict-mill-knee",
].map((name) => [`${name}.json`, readFileSync(`sample-data/${name}.json`, "utf8")] as const);

const list = (page: Page) => page.getByRole("region", { name: "Saved in this browser" });
const links = (page: Page) => list(page).getByRole("link");
const said = (page: Page, text: string | RegExp) => page.getByRole("status").filter({ hasText: text });

/** The name of what has the focus, through all shadows. */
const focused = (page: Page) =>
  page.evaluate(() => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at?.getAttribute("aria-label") ?? at?.textContent?.trim().replace(/\s+/g, " ") ?? "";
  });

async function fiveKept(size?: { width: number; height: number }): Promise<Page> {
  const page = await served.open(size);
  await dropFiles(page, ...FILES);
  await page.getByRole("button", { name: "Save a file" }).waitFor();
  await goHome(page);
  await links(page).nth(4).waitFor();
  return page;
}

test("a long list is searched by slide and machine, and tells how many are found", async () => {
  const page = await fiveKept();
  const field = page.getByLabel("Search by slide or machine");
  await field.fill("LATHE cross");
  await said(page, "2 of 5 found").waitFor();
  expect(await links(page).count()).toBe(2);
  await field.fill("no such slide");
  await said(page, "0 of 5 found").waitFor();
  expect(await links(page).count()).toBe(0);
  await field.fill("");
  expect(await links(page).count()).toBe(5);
});

test("an inspection is renamed by keyboard, and takes its old name back; other tabs hear of it", async () => {
  const page = await fiveKept();
  const other = await served.openBeside(page);
  await links(other).nth(4).waitFor();
  await page.bringToFront();
  const rename = page.getByRole("button", { name: /^Rename Knee/ });
  const before = (await rename.getAttribute("aria-label")) ?? "";
  await rename.press("Enter");
  await page.keyboard.type("Knee, after new nuts");
  await page.keyboard.press("Enter");
  await said(page, "is now called “Knee, after new nuts”").waitFor();
  await links(other).filter({ hasText: "Knee, after new nuts" }).waitFor();
  expect(await focused(page)).toBe("Rename Knee, after new nuts");
  await page.getByRole("button", { name: "Undo" }).press("Enter");
  await page.getByRole("button", { name: before, exact: true }).waitFor();

  await rename.press("Enter");
  await page.keyboard.type("thought better of");
  await page.keyboard.press("Escape");
  expect(await focused(page)).toBe(before);
  expect(await page.getByText("thought better of").count()).toBe(0);
});

test("a duplicate has the readings of its original, and is changed without it", async () => {
  const page = await fiveKept();
  await page.getByRole("button", { name: /^Duplicate Knee/ }).click();
  await said(page, "was duplicated").waitFor();
  await expect.poll(() => links(page).count()).toBe(6);
  expect(await focused(page)).toMatch(/^Knee, copy/);
  await page.keyboard.press("Enter");
  const cell = page.getByLabel("Backlash, reading 1", { exact: true });
  const original = await cell.inputValue();
  await cell.fill("0.77");
  await page.getByText("Saving …").waitFor();
  await page.getByText(/^Saved in this browser, /).waitFor();
  await goHome(page);
  await links(page)
    .filter({ hasText: /^\s*Knee\s/ })
    .filter({ hasNotText: "copy" })
    .click();
  expect(await cell.inputValue()).toBe(original);
});

test("deleted by keyboard, the next one has the focus; undone, the one that is back", async () => {
  const page = await fiveKept();
  const names = await links(page).locator(".name").allInnerTexts();
  await page
    .getByRole("button", { name: `Delete ${names[1]}`, exact: true })
    .first()
    .press("Enter");
  await said(page, `“${names[1]}” was deleted.`).waitFor();
  await expect.poll(() => focused(page)).toContain(names[2]);
  await page.getByRole("button", { name: "Undo" }).press("Enter");
  await expect.poll(() => links(page).count()).toBe(5);
  await expect.poll(() => focused(page)).toContain(names[1]);
});

test("on a phone the list fits, and all in it is 48 pixels high", async () => {
  const page = await fiveKept(PHONE);
  await page.getByRole("button", { name: /^Rename Knee/ }).click();
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(wide).toBe(0);
  const targets = list(page).locator("a, button, input");
  const heights = await targets.evaluateAll((found) =>
    found.map((element) => element.getBoundingClientRect().height),
  );
  expect(heights.length).toBeGreaterThan(15);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
});
