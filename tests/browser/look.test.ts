import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { DARK_PALETTE, LIGHT_PALETTE } from "../../src/picture/palette.ts";
import { useServedPage } from "./servedPage.ts";
import { dropFiles, EVEN, openSlide, typeReadings } from "./steps.ts";

const served = useServedPage();

const PHONE = { width: 360, height: 740 };

const tooWide = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

test("on a phone nothing is wider than the screen", async () => {
  const page = await served.open(PHONE);
  expect(await tooWide(page)).toBe(0);
  await page.getByRole("link", { name: "New inspection" }).click();
  await page.getByRole("heading", { name: "Which slide is it?" }).waitFor();
  expect(await tooWide(page)).toBe(0);
  await page.getByRole("link", { name: "Tightspot" }).click();
  for (const sample of [/^Boring mill, table/, /^Planer/]) {
    await page.getByRole("button", { name: sample }).click();
    await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
    await page.getByText("Details", { exact: true }).click();
    expect(await tooWide(page)).toBe(0);
    await page.getByRole("link", { name: "Tightspot" }).click();
  }
});

test("on a phone the verdict stays in sight while readings are typed", async () => {
  const page = await served.open(PHONE);
  await openSlide(page, EVEN.slice(0, 3));
  await typeReadings(page, EVEN.slice(3, 4));
  await page.getByRole("button", { name: /^1 more station to a first verdict/ }).click();
  await page.getByRole("heading", { name: "1 more station to a first verdict" }).waitFor();
});

test("on a phone messages leave two thirds of the screen free, however long and many they are", async () => {
  const page = await served.open(PHONE);
  const headings = Array.from({ length: 40 }, (_, column) => `column ${column}`).join(",");
  const log = `${headings}\n${headings.replaceAll("column", "nothing")}\n`;
  await dropFiles(page, ["a.csv", log], ["b.csv", log], ["c.csv", log]);
  await page.getByRole("button", { name: "Dismiss" }).nth(2).waitFor({ state: "attached" });
  const top = await page
    .locator(".notices")
    .evaluate((notices) => notices.getBoundingClientRect().top / window.innerHeight);
  expect(top).toBeGreaterThan(2 / 3);
  await page.getByText(/^c.csv: /).scrollIntoViewIfNeeded();
  await page.getByRole("button", { name: "Dismiss" }).last().click();
  expect(await page.getByRole("button", { name: "Dismiss" }).count()).toBe(2);
});

test("what can be pressed is at least 48 pixels high", async () => {
  const page = await served.open(PHONE);
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
  const heights = await page
    .locator("button:visible, a:visible, summary:visible, input:visible, select:visible")
    .evaluateAll((elements) => elements.map((element) => element.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(50);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
});

test("nothing is asked of any other host, from the first screen to the verdict", async () => {
  const page = await served.open();
  const hosts = new Set<string>();
  page.on("request", (request) => {
    const { protocol, host } = new URL(request.url());
    if (protocol !== "data:" && protocol !== "blob:") hosts.add(host);
  });
  await page.reload();
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
  await page.locator("canvas").waitFor();
  expect([...hosts]).toEqual([new URL(served.address).host]);
});

test.each(["light", "dark"] as const)(
  "the page has the colours of the pictures when it is %s",
  async (scheme) => {
    const palette = scheme === "light" ? LIGHT_PALETTE : DARK_PALETTE;
    const page = await served.open();
    await page.emulateMedia({ colorScheme: scheme });
    const tokens = {
      "--sheet": palette.paper,
      "--ink": palette.ink,
      "--ink-pale": palette.paleInk,
      "--grid": palette.grid,
      "--band": palette.band,
      "--outside": palette.outside,
      "--brass": palette.nut,
      "--steel": palette.screw,
      "--steel-body": palette.screwBody,
      "--limit": palette.limit,
    };
    const painted = (colours: readonly string[]) =>
      page.evaluate(
        (all) =>
          all.map((colour) => {
            document.body.style.color = colour;
            return getComputedStyle(document.body).color;
          }),
        colours,
      );
    expect(await painted(Object.keys(tokens).map((name) => `var(${name})`))).toEqual(
      await painted(Object.values(tokens)),
    );
  },
);
