import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { pdfPages } from "./pdfText.ts";
import { useServedPage } from "./servedPage.ts";
import { describeSlide, EVEN, kept, type Typed, typeReadings } from "./steps.ts";

const served = useServedPage();

/** The same slide with the nut taken up by 0.15 mm. */
const TAKEN_UP: readonly Typed[] = EVEN.map(([position, backlash]) => [
  position,
  (Number(backlash) - 0.15).toFixed(2),
]);

async function sayOfSurvey(page: Page, date: string, stage: string): Promise<void> {
  await page.getByText("Details", { exact: true }).click();
  await page.getByLabel("Date", { exact: true }).fill(date);
  await page.getByLabel("Stage", { exact: true }).selectOption({ label: stage });
  await page.getByText("Details", { exact: true }).click();
}

/** The readings of a survey, the first station once more at the end, and end float. */
async function survey(page: Page, readings: readonly Typed[]): Promise<void> {
  await typeReadings(page, [...readings, ...readings.slice(0, 1)]);
  await page.getByLabel("End float of the screw").fill("0.01 0.01");
}

test("a slide's record: surveyed, adjusted, surveyed again, compared, and the report on it printed", async () => {
  const page = await served.open();
  await describeSlide(page);
  await sayOfSurvey(page, "2026-03-02", "Before repair");
  await survey(page, EVEN);
  await page.getByRole("heading", { name: "Adjust the nut", level: 2 }).waitFor();

  await page.getByText("Before and after", { exact: true }).click();
  await page.getByText(/^Comparing takes two surveys with readings/).waitFor();

  await page.getByRole("button", { name: "New survey" }).click();
  await page.getByRole("button", { name: "Table", exact: true }).click();
  await sayOfSurvey(page, "2026-03-04", "After adjusting");
  await survey(page, TAKEN_UP);
  await page.getByRole("heading", { name: "Leave it alone", level: 2 }).waitFor();

  const part = page.locator("tightspot-comparison-section");
  await part
    .getByText(/^Taking up the nut removed 0\.15 mm, give or take (less than )?0\.0\d, everywhere/)
    .waitFor();
  await part.getByRole("heading", { name: "Proven: lost motion is within the limit of 0.15 mm" }).waitFor();
  await part.getByRole("img", { name: /^Lost motion, survey-1 and survey-2/ }).waitFor();
  await kept(page);
  await page.reload();

  await page.getByText("Report", { exact: true }).click();
  const link = page.getByRole("link", { name: "Open the comparison to print" });
  const [report] = await Promise.all([page.context().waitForEvent("page"), link.click()]);
  await report.getByRole("heading", { name: "Slide 0 to 300 mm" }).waitFor();
  const pages = pdfPages(await report.pdf({ format: "A4" }));
  const text = pages
    .map((each) => each.text)
    .join(" ")
    .replace(/\s+/g, " ");
  for (const part of [
    "Survey of 2 March 2026, before repair against 4 March 2026, after adjusting",
    "Taking up the nut removed 0.15 mm",
    "Proven: lost motion is within the limit of 0.15 mm",
    "Verdict on it by itself: Adjust the nut.",
    "Verdict on it by itself: Leave it alone.",
    "survey-1 2 March 2026 before repair before",
    "survey-2 4 March 2026 after adjusting after",
    "Name Signature Date",
    `Page 1 of ${pages.length}`,
  ])
    expect(text).toContain(part);
});
