import { describe, expect, test } from "vitest";
import type { PlannableSlide } from "../../src/inspection/plannableSlide.ts";
import { measuringPlan, type PlanOptions } from "../../src/intake/plan/measuringPlan.ts";
import { logSheet } from "../../src/report/plan/logSheet.ts";
import type { LostMotionMethod } from "../../src/report/plan/method.ts";
import { printed } from "./paper.ts";
import { blankPage } from "./servedPage.ts";

/** Paper in points, and in the pixels between margins of 12 mm. */
const PAPERS = [
  { format: "A4", width: 595, height: 842, between: ((210 - 24) / 25.4) * 96 },
  { format: "Letter", width: 612, height: 792, between: ((8.5 * 25.4 - 24) / 25.4) * 96 },
] as const;

const SLIDE: PlannableSlide = {
  units: "mm",
  name: "Cross slide",
  machine: "Lathe no. 2, Ochre Workshop",
  travel: { from: 0, to: 160 },
  screw: { lead: 4 },
};

function sheetOf(slide: PlannableSlide, method: LostMotionMethod, options?: PlanOptions) {
  const plan = measuringPlan(slide, options);
  if (!plan.ok) throw new Error(plan.problem.what);
  return { plan: plan.value, sheet: logSheet(slide, plan.value, method) };
}

describe.each(PAPERS)("on $format, in portrait, the log sheet", ({ format, width, height, between }) => {
  test.each(["push-pull", "indicator-pair", "dial-pair"] as const)(
    "has what to do first on its first page and all the stations on its second, by %s",
    async (method) => {
      const { plan, sheet } = sheetOf(SLIDE, method);
      const pages = await printed(sheet, format);
      expect(pages.length).toBe(2);
      for (const page of pages) {
        expect(Math.abs(page.width - width)).toBeLessThan(2);
        expect(Math.abs(page.height - height)).toBeLessThan(2);
        expect(page.text).not.toContain("\ufffd");
      }
      const [first, second] = pages.map(({ text }) => text.replace(/\s+/g, " "));
      for (const part of ["Cross slide", "1. Set up", "2. End float", "3. Instruments", "Hysteresis"])
        expect(first).toContain(part);
      expect(second).toContain("4. Readings");
      const shown = plan.stations.map(({ position }) => position.toFixed(1));
      for (const position of shown) expect(pages[1].text.split("\n")).toContain(position);
      expect(pages[1].text.split("\n")).toContain(String(plan.readings.length));
    },
  );

  test("goes on to further pages, each under the headings, and cuts no row in two", async () => {
    const slide = { ...SLIDE, travel: { from: 0, to: 800 } };
    const { plan, sheet } = sheetOf(slide, "indicator-pair");
    const [, ...tables] = await printed(sheet, format);
    expect(tables.length).toBeGreaterThan(2);
    for (const { text } of tables) expect(text.replace(/\s+/g, " ")).toMatch(/Out ↓.*advancing.*retracting/);
    // A row that a page's end cuts in two would be missing there, or be painted on both pages.
    const lines = tables.flatMap(({ text }) => text.split("\n"));
    // The first station is there twice: it is read once more at the end of the second round.
    for (const { position } of plan.stations.slice(1))
      expect(lines.filter((line) => line === position.toFixed(1))).toEqual([position.toFixed(1)]);
  });

  test("is no wider than the paper, however long the words", async () => {
    const slide: PlannableSlide = {
      ...SLIDE,
      name: "Unbrokenname".repeat(12),
      machine: "A long way of saying which machine it is and where it stands ".repeat(3),
      travel: { from: -123.456, to: 876.543 },
      holdsLoad: true,
      nut: { kind: "spring-loaded" },
    };
    const page = await blankPage({ width: Math.floor(between), height: 900 });
    await page.emulateMedia({ media: "print" });
    await page.setContent(sheetOf(slide, "dial-pair").sheet);
    const widest = await page.evaluate(() =>
      Math.max(...[...document.querySelectorAll("body *")].map((part) => part.getBoundingClientRect().right)),
    );
    expect(widest).toBeLessThanOrEqual(between);
    const cells = await page.evaluate(() =>
      [...document.querySelectorAll("td, th, .line")]
        .filter((part) => part.scrollWidth > part.clientWidth + 1)
        .map((part) => part.textContent),
    );
    expect(cells).toEqual([]);
    await page.close();
  });

  test("leaves boxes large enough to write in by hand", async () => {
    const page = await blankPage({ width: Math.floor(between), height: 900 });
    await page.emulateMedia({ media: "print" });
    await page.setContent(sheetOf(SLIDE, "dial-pair").sheet);
    const boxes = await page
      .locator("td:has(.order)")
      .evaluateAll((cells) =>
        cells.map((cell) => cell.getBoundingClientRect()).map(({ width, height }) => [width, height]),
      );
    const millimetres = 96 / 25.4;
    expect(boxes.length).toBeGreaterThan(40);
    expect(Math.min(...boxes.map(([wide]) => wide))).toBeGreaterThan(20 * millimetres);
    expect(Math.min(...boxes.map(([, high]) => high))).toBeGreaterThan(8 * millimetres);
    await page.close();
  });
});
