import type { Page } from "playwright-core";
import { SETUP_FIELDS } from "../../src/app/editing/fieldList.ts";
import { timeNow } from "../../src/app/editing/localTime.ts";
import { blankRow, withRows } from "../../src/app/editing/rows.ts";
import { describedSlide, newPendingInput, withSetupText } from "../../src/app/editing/slideSetup.ts";
import type { EditorState, StoredInspection } from "../../src/records/editorState.ts";
import type { ServedPage } from "./servedPage.ts";
import { putRecord } from "./store.ts";

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

/** What is kept of a slide with a 4 mm lead and its first survey, once they were entered into the table. */
export function keptSlide(readings: readonly Typed[] = [], from = "0", to = "300"): StoredInspection {
  const texts = { from, to, lead: "4" } as const;
  const typed = (Object.keys(texts) as (keyof typeof texts)[]).reduce(
    (draft, name) => withSetupText(draft, SETUP_FIELDS[name].path, texts[name]),
    newPendingInput("mm"),
  );
  const described = describedSlide(typed);
  if (!described.ok) throw new Error([...described.problems.values()].join(" "));
  const [survey] = described.state.inspection?.surveys ?? [];
  if (survey === undefined) throw new Error("A described slide has a survey.");
  const rows = readings.map(([position, backlash]) => ({
    ...blankRow(),
    cells: { position, backlash },
    // The table notes when a reading was typed.
    marks: { time: timeNow() },
  }));
  const { inspection, draft }: EditorState = withRows(described.state, survey.id, rows);
  const guide = { survey: survey.id, isOpen: false, at: "way", stations: [], typing: {} } as const;
  return {
    id: "slide",
    revision: 1,
    savedAt: new Date().toISOString(),
    inspection,
    draft: { ...draft, guides: [guide] },
  };
}

/** Opens a slide with a 4 mm lead at the table of readings, with what was read, from what the browser keeps. */
export async function openSlide(
  page: Page,
  readings: readonly Typed[] = [],
  from?: string,
  to?: string,
): Promise<void> {
  const kept = keptSlide(readings, from, to);
  await putRecord(page, kept);
  await page.evaluate((id) => {
    location.hash = `#/inspection/${id}`;
  }, kept.id);
  await page.getByRole("heading", { name: "Readings", exact: true }).waitFor();
  if (readings.length > 0) await cellOf(page, "Position", readings.length).waitFor();
}

/** The cell of a reading in the table, readable or not. */
const cellOf = (page: Page, column: string, reading: number) =>
  page.getByRole("textbox", { name: new RegExp(`^${column}, reading (${reading}$|that cannot)`) }).first();

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
  await openSlide(page, EVEN.slice(0, 3));
  await kept(page);
  return page;
}
