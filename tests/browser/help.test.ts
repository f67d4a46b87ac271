import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { TOPICS } from "../../src/app/help/topics.ts";
import { useServedPage } from "./servedPage.ts";
import { dropFiles } from "./steps.ts";

const served = useServedPage();

const PHONE = { width: 360, height: 740 };

const heading = (page: Page, name: string) => page.getByRole("heading", { name, exact: true });

test("the first screen leads to help on every topic, which is loaded only then", async () => {
  const page = await served.open(PHONE);
  const loaded = () =>
    page.evaluate(() => performance.getEntriesByType("resource").some(({ name }) => /help/.test(name)));
  expect(await loaded()).toBe(false);
  await page.getByRole("link", { name: "Help" }).click();
  await heading(page, "Help").waitFor();
  expect(await loaded()).toBe(true);
  expect(await page.title()).toBe("Help · Tightspot");
  for (const [, question] of TOPICS) await heading(page, question).waitFor();
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
});

test("an address leads to a topic, which is then in sight and has the focus", async () => {
  const page = await served.open(PHONE);
  for (const [topic, question] of TOPICS) {
    await page.goto(`${served.address}#/help/${topic}`);
    await page.waitForFunction((asked) => {
      let active = document.activeElement;
      while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
      return active?.textContent === asked;
    }, question);
    const top = await heading(page, question).evaluate((element) => element.getBoundingClientRect().top);
    expect(top).toBeGreaterThanOrEqual(0);
    expect(top).toBeLessThan(740);
  }
});

test("every drawing is described, and formulas are set as such", async () => {
  const page = await served.open();
  await page.goto(`${served.address}#/help`);
  await heading(page, "Help").waitFor();
  const names = await page
    .locator("tightspot-help svg")
    .evaluateAll((drawings) => drawings.map((drawing) => drawing.getAttribute("aria-label") ?? ""));
  expect(names.length).toBeGreaterThanOrEqual(9);
  for (const name of names) expect(name.length).toBeGreaterThan(30);
  const formulas = await page.locator("tightspot-help .formula").allTextContents();
  expect(formulas.map((text) => text.replace(/\s+/g, ""))).toContain("B(x)=c+minEw1+minEw2+e");
  const kinds = await page
    .locator("tightspot-help math *")
    .evaluateAll((signs) => [...new Set(signs.map(({ namespaceURI }) => namespaceURI))]);
  expect(kinds).toEqual(["http://www.w3.org/1998/Math/MathML"]);
});

test("no formula is cut off on a phone", async () => {
  const page = await served.open(PHONE);
  await page.goto(`${served.address}#/help/method`);
  await heading(page, "How is the verdict worked out?").waitFor();
  const ends = await page.locator("tightspot-help math").evaluateAll((formulas) =>
    formulas.map((formula) => ({
      text: formula.textContent ?? "",
      beyond:
        formula.getBoundingClientRect().right -
        (formula.parentElement?.getBoundingClientRect().right ?? Number.NaN),
    })),
  );
  expect(ends.length).toBeGreaterThan(8);
  for (const { text, beyond } of ends) expect(beyond, text).toBeLessThanOrEqual(0.5);
});

test("a term beside a figure is explained in place, and what was being done is there again after", async () => {
  const page = await served.open(PHONE);
  await page.getByRole("button", { name: /^Lathe 2/ }).click();
  await page.getByRole("heading", { name: "Adjust the nut", level: 2 }).waitFor();
  const asking = page.getByRole("button", { name: "What is take-up?" }).first();
  await asking.click();
  const dialog = page.getByRole("dialog", { name: "What is take-up?" });
  await dialog.getByText(/How much adjusting can close the nut/).waitFor();
  expect(await dialog.getByRole("link", { name: "All help, in another tab" }).getAttribute("target")).toBe(
    "_blank",
  );
  await page.keyboard.press("Escape");
  await dialog.waitFor({ state: "detached" });
  expect(
    await asking.evaluate((button) => (button.getRootNode() as ShadowRoot).activeElement === button),
  ).toBe(true);
});

test("while a slide is described, how to choose its limit is told without losing what was typed", async () => {
  const page = await served.open(PHONE);
  await page.getByRole("link", { name: "New inspection" }).click();
  await page.getByLabel("Travel from").fill("12");
  await page.getByRole("button", { name: "How is a limit chosen?" }).click();
  await page.getByRole("dialog").getByText("The maker’s figure comes first").waitFor();
  await page.getByRole("button", { name: "Close" }).click();
  expect(await page.getByLabel("Travel from").inputValue()).toBe("12");
  const help = page.getByRole("link", { name: "Help, in another tab" });
  expect(await help.getAttribute("target")).toBe("_blank");
});

test("a log that is dropped on help is taken to a new inspection", async () => {
  const page = await served.open();
  await page.goto(`${served.address}#/help`);
  await heading(page, "Help").waitFor();
  await dropFiles(page, ["log.csv", "Position (mm),Backlash (mm)\n0,0.20\n50,0.21\n"]);
  await heading(page, "Which slide is it?").waitFor();
});

test("help works in the page in one file, too", async () => {
  const page = await served.open();
  await page.goto(`${pathToFileURL("dist/page/tightspot.html").href}#/help/method`);
  await heading(page, "How is the verdict worked out?").waitFor();
  expect(await page.locator("tightspot-help math").count()).toBeGreaterThan(5);
});

test("help is printed without its list of topics, on paper white", async () => {
  const page = await served.open();
  await page.goto(`${served.address}#/help`);
  await heading(page, "Help").waitFor();
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  expect(await page.getByRole("navigation", { name: "Topics" }).isVisible()).toBe(false);
  const ground = await page
    .locator("tightspot-help .sheet")
    .first()
    .evaluate((sheet) => getComputedStyle(sheet).backgroundColor);
  expect(ground).toBe("rgb(255, 255, 255)");
});
