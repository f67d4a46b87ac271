import { readdirSync, readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import type { ServedPage } from "./servedPage.ts";
import { beginSlide, dropFiles, EVEN, goHome, openSlide, typeReadings } from "./steps.ts";

/** A state of the page that a reader may come to, by name, and the way there. */
export type State = readonly [name: string, reach: (served: ServedPage) => Promise<Page>];

export const SAMPLES = readdirSync("sample-data").filter((name) => name.endsWith(".json"));

export const sample = (name: string): readonly [string, string] => [
  name,
  readFileSync(`sample-data/${name}`, "utf8"),
];

/** Unfolds all that can be, but for menus, which lie over what is behind them. */
export async function unfoldAll(page: Page): Promise<void> {
  const folded = page.locator("details:not([open]):not(tightspot-menu details) > summary:visible");
  for (let left = await folded.count(); left > 0; left = await folded.count()) await folded.first().click();
}

export async function described(served: ServedPage): Promise<Page> {
  const page = await served.open();
  await openSlide(page);
  return page;
}

export async function surveyed(served: ServedPage): Promise<Page> {
  const page = await described(served);
  await typeReadings(page, EVEN.slice(0, 7));
  return page;
}

export async function reading(page: Page): Promise<void> {
  await beginSlide(page);
  await page.getByRole("button", { name: "Next: end float" }).click();
  await page.getByRole("button", { name: "Go on without it" }).click();
  await page.getByLabel("Positions to read at").fill("0 25 50 75 100 125");
  await page.getByRole("button", { name: "Start reading" }).click();
  await page.getByRole("heading", { name: "0 mm", exact: true }).waitFor();
}

export async function enter(page: Page, ...figures: readonly string[]): Promise<void> {
  for (const figure of figures) {
    await page.keyboard.type(figure);
    await page.keyboard.press("Enter");
  }
}

export async function opened(served: ServedPage, name: string): Promise<Page> {
  const page = await served.open();
  await dropFiles(page, sample(name));
  await page.getByRole("button", { name: "Save a file" }).waitFor();
  await page.getByRole("region", { name: "Verdict", exact: true }).getByRole("heading").first().waitFor();
  return page;
}

export async function allKept(served: ServedPage): Promise<Page> {
  const page = await served.open();
  await dropFiles(page, ...SAMPLES.map(sample));
  await page.getByRole("button", { name: "Save a file" }).waitFor();
  await goHome(page);
  await page.getByLabel("Search by slide or machine").waitFor();
  return page;
}

export async function beside(page: Page, link: string): Promise<Page> {
  const [opened] = await Promise.all([
    page.context().waitForEvent("page"),
    page.getByRole("link", { name: link }).click(),
  ]);
  await opened.getByRole("heading").first().waitFor();
  return opened;
}

/** All unfolded, once surveys have been compared, too. */
export async function unfolded(page: Page): Promise<Page> {
  await unfoldAll(page);
  await page.getByRole("button", { name: "Add surveys from a file" }).waitFor();
  await page.getByText("Comparing the surveys …").waitFor({ state: "hidden" });
  await unfoldAll(page);
  return page;
}
