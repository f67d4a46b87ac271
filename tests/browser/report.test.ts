import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { assessSurvey } from "../../src/analysis/assess.ts";
import { openInspection } from "../../src/inspection/open.ts";
import { inOneLine, type Outcome } from "../../src/inspection/problem.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { assessmentReport } from "../../src/report/assessment/assessmentReport.ts";
import { cutOff, inOneLineOf, PAPERS, printed } from "./paper.ts";
import { blankPage } from "./servedPage.ts";

const SAMPLES = new URL("../../sample-data/", import.meta.url);

function valueIn<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(inOneLine(outcome.problem));
  return outcome.value;
}

const sample = (name: string): Inspection =>
  valueIn(openInspection(readFileSync(new URL(`${name}.json`, SAMPLES), "utf8")));

function reportOn(inspection: Inspection): string {
  const [survey] = inspection.surveys;
  return assessmentReport(inspection, valueIn(assessSurvey(inspection, survey?.id ?? "")));
}

/** A report with all that people write, at its longest. */
function wordy(): Inspection {
  const { slide, surveys, ...rest } = sample("remake-screw-worn-at-one-end-planer-head");
  return {
    ...rest,
    slide: {
      ...slide,
      name: "Unbrokenname".repeat(12),
      machine: "A long way of saying which machine it is and where it stands ".repeat(4),
    },
    surveys: surveys.map((survey) => ({
      ...survey,
      note: "Unbrokennote".repeat(30),
      conditions: { temperature: 21, ["Unbrokencondition".repeat(8)]: "Unbrokenwords".repeat(20) },
      readings: survey.readings.map((reading, index) =>
        index % 4 === 0
          ? { ...reading, time: "2026-03-11T09:30:00Z", note: "Unbrokenremark".repeat(9) }
          : index % 7 === 0
            ? { ...reading, excluded: "The stand was bumped, and ".repeat(5) }
            : reading,
      ),
    })),
  };
}

const NAMES = [
  "remake-screw-worn-middle-boring-mill-table",
  "adjust-nut-lathe-2-cross-slide",
  "measure-more-lathe-4-cross-slide",
  "no-verdict-mill-knee",
  "positioning-pattern-mill-table",
  "before-and-after-mill-saddle",
] as const;

describe.each(PAPERS)("on $format the report", ({ format, width, height, between }) => {
  test("has the verdict on its first page, with the profile under it, and a number on every page", async () => {
    const inspection = sample("remake-screw-worn-middle-boring-mill-table");
    const pages = await printed(reportOn(inspection), format);
    expect(pages.length).toBeGreaterThanOrEqual(4);
    expect(pages.length).toBeLessThanOrEqual(6);
    pages.forEach((page, index) => {
      expect(Math.abs(page.width - width)).toBeLessThan(2);
      expect(Math.abs(page.height - height)).toBeLessThan(2);
      expect(page.text).not.toContain("\ufffd");
      expect(inOneLineOf(page.text)).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(inOneLineOf(page.text)).toContain("Table, cross travel, survey complaint, 9 March 2026");
    });
    const first = inOneLineOf(pages[0]?.text ?? "");
    for (const part of ["Table, cross travel", "Verdict", "Greatest lost motion", "Take care"])
      expect(first).toContain(part);
    // The shorter paper has room for the picture, too, unless a system's type is wide.
    if (format === "A4") expect(first).toContain("Position along the travel");
    const all = inOneLineOf(pages.map(({ text }) => text).join(" "));
    for (const part of [
      "The screw along its travel",
      "The numbers",
      "Slide and machine",
      "How it was measured",
      "Uncertainty, and the limit",
      "Checks on the readings",
      "All readings",
      "Assumed",
      "Method",
      "Signature",
    ])
      expect(all).toContain(part);
  });

  test("repeats the headings of the readings on every page that they reach, and cuts no row in two", async () => {
    const inspection = sample("positioning-pattern-mill-table");
    const pages = await printed(reportOn(inspection), format);
    const lines = pages.map(({ text }) => text.split("\n"));
    const readings = inspection.surveys[0]?.readings ?? [];
    const withReadings = lines.filter((page) => page.includes("advancing") || page.includes("retracting"));
    expect(withReadings.length).toBeGreaterThan(2);
    for (const page of withReadings) expect(inOneLineOf(page.join(" "))).toMatch(/No\. ?Target, mm/);
    const directions = lines.flat().filter((line) => line === "advancing" || line === "retracting");
    expect(directions.length).toBe(readings.length);
  });

  test.each([...NAMES, "wordy"])("cuts off nothing of %s", async (name) => {
    const page = await blankPage({ width: Math.floor(between), height: 900 });
    await page.emulateMedia({ media: "print" });
    await page.setContent(reportOn(name === "wordy" ? wordy() : sample(name)));
    expect(await cutOff(page)).toEqual([]);
    await page.close();
  });

  test("shows every letter of what people wrote, as letters", async () => {
    const evil = '<img src=x onerror="document.title=1">';
    const inspection = wordy();
    const [survey] = inspection.surveys;
    if (survey === undefined) throw new Error("The sample has a survey.");
    const written = { ...inspection, surveys: [{ ...survey, note: evil }] };
    const pages = await printed(reportOn(written), format);
    expect(inOneLineOf(pages.map(({ text }) => text).join(" "))).toContain(evil);
  });
});

test("on a phone the report is no wider than the screen", async () => {
  const page = await blankPage({ width: 360, height: 740 });
  await page.setContent(reportOn(sample("remake-screw-worn-middle-boring-mill-table")));
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
  await page.close();
});
