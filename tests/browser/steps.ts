import type { Page } from "playwright-core";
import type { ServedPage } from "./servedPage.ts";

/** A station and the lost motion read there, as typed. */
export type Typed = readonly [position: string, backlash: string];

/** Describes a slide with a 4 mm lead, by keyboard, and goes to the table of readings. */
export async function describeSlide(page: Page, from = "0", to = "300"): Promise<void> {
  await beginSlide(page, from, to);
  await page.getByRole("button", { name: "Table", exact: true }).click();
}

/** Describes a slide with a 4 mm lead, by keyboard. */
export async function beginSlide(page: Page, from = "0", to = "300"): Promise<void> {
  await page.getByRole("link", { name: "New inspection" }).click();
  const first = page.getByLabel("Travel from");
  await first.fill(from);
  await first.press("Enter");
  await page.keyboard.type(to);
  await page.keyboard.press("Enter");
  await page.keyboard.type("4");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Readings", exact: true }).waitFor();
}

/** Types readings into the table, Enter after each figure. */
export async function typeReadings(page: Page, readings: readonly Typed[]): Promise<void> {
  await page.getByLabel("Position, next reading").focus();
  for (const figure of readings.flat()) {
    await page.keyboard.type(figure);
    await page.keyboard.press("Enter");
  }
}

/** Waits until everything that was entered is kept. */
export async function kept(page: Page): Promise<void> {
  await page.getByText(/^Saved in this browser, /).waitFor();
}

/** Drops files on the page, all at once. */
export async function dropFiles(
  page: Page,
  ...files: readonly (readonly [name: string, content: string])[]
): Promise<void> {
  const transfer = await page.evaluateHandle((carriedFiles) => {
    const carried = new DataTransfer();
    for (const [name, content] of carriedFiles) carried.items.add(new File([content], name));
    return carried;
  }, files);
  await page.dispatchEvent("tightspot-app", "drop", { dataTransfer: transfer });
}

/** Takes in the log that is shown, as it was understood. */
export async function takeLog(page: Page, how = "Take the readings"): Promise<void> {
  await page.getByRole("dialog").getByRole("button", { name: how }).click();
}

/** To the first screen. */
export async function goHome(page: Page): Promise<void> {
  await page.getByRole("link", { name: "Tightspot" }).click();
}

/** Readings of a slide whose lost motion is the same everywhere. */
export const EVEN: readonly Typed[] = EVERY_25().map((position, index) => [
  String(position),
  ["0.20", "0.21", "0.20", "0.20", "0.21"][index % 5] ?? "0.20",
]);

/** Readings of a screw that has worn in the middle by 0.2 mm. */
export const WORN: readonly Typed[] = EVERY_25().map((position) => [
  String(position),
  (0.11 + 0.2 * Math.exp(-(((position - 150) / 45) ** 2))).toFixed(2),
]);

function EVERY_25(): readonly number[] {
  return Array.from({ length: 13 }, (_, index) => index * 25);
}

export const backlash = (page: Page, reading: number) =>
  page.getByLabel(`Backlash, reading ${reading}`, { exact: true });

/** A page with a slide and three readings that are kept. */
export async function keptSurvey(served: ServedPage): Promise<Page> {
  const page = await served.open();
  await describeSlide(page);
  await typeReadings(page, EVEN.slice(0, 3));
  await kept(page);
  return page;
}
