import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { beforeAndAfter } from "../../src/analysis/beforeAndAfter.ts";
import { openInspection } from "../../src/inspection/open.ts";
import { inOneLine, type Outcome } from "../../src/inspection/problem.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { comparedOf } from "../../src/report/comparison/compared.ts";
import { comparisonReport } from "../../src/report/comparison/comparisonReport.ts";
import { cutOff, inOneLineOf, PAPERS, printed } from "./paper.ts";
import { blankPage } from "./servedPage.ts";

function valueIn<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(inOneLine(outcome.problem));
  return outcome.value;
}

function sample(name: string): Inspection {
  const file = new URL(`../../sample-data/${name}.json`, import.meta.url);
  return valueIn(openInspection(readFileSync(file, "utf8")));
}

function reportOn(inspection: Inspection): string {
  return comparisonReport(comparedOf(inspection, valueIn(beforeAndAfter(inspection))));
}

const LATHE = "before-and-after-lathe-1-cross-slide";
const RUNNING_IN = "running-in-boring-mill-saddle";
const INCHES = "before-and-after-mill-saddle";

/** A report with all that people write, at its longest. */
function wordy(): Inspection {
  const { slide, surveys, ...rest } = sample(LATHE);
  return {
    ...rest,
    slide: {
      ...slide,
      name: "Unbrokenname".repeat(12),
      machine: "A long way of saying where it stands ".repeat(6),
    },
    surveys: surveys.map((survey) => ({
      ...survey,
      id: `${survey.id}-${"unbrokenid".repeat(12)}`,
      note: "Unbrokennote".repeat(30),
      conditions: { ["Unbrokencondition".repeat(8)]: "Unbrokenwords".repeat(20) },
    })),
  };
}

describe.each(PAPERS)("on $format the report on two surveys", ({ format, width, height, between }) => {
  test("has the answer on its first page, the picture with it, and a number on every page", async () => {
    const pages = await printed(reportOn(sample(LATHE)), format);
    expect(pages.length).toBeLessThanOrEqual(4);
    pages.forEach((page, index) => {
      expect(Math.abs(page.width - width)).toBeLessThan(2);
      expect(Math.abs(page.height - height)).toBeLessThan(2);
      expect(page.text).not.toContain("\ufffd");
      expect(inOneLineOf(page.text)).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(inOneLineOf(page.text)).toContain("Cross slide, surveys before and after, 4 March 2026");
    });
    const first = inOneLineOf(pages[0]?.text ?? "");
    for (const part of [
      "Before and after",
      "Taking up the nut removed",
      "Proven: lost motion is within",
      "Take care",
    ])
      expect(first).toContain(part);
    if (format === "A4") expect(first).toContain("Change of lost motion (mm)");
    const all = inOneLineOf(pages.map(({ text }) => text).join(" "));
    for (const part of [
      "The figures, each with its 95 % interval",
      "Lost motion along the travel (mm)",
      "How the surveys were made comparable",
      "Slide and machine",
      "How it was measured",
      "Assumed",
      "Method",
      "Signature",
    ])
      expect(all).toContain(part);
  });

  test("tells how a slide runs in, with the trend drawn", async () => {
    const pages = await printed(reportOn(sample(RUNNING_IN)), format);
    const all = inOneLineOf(pages.map(({ text }) => text).join(" "));
    for (const part of [
      "Over 6 surveys since the last repair",
      "Hours of use",
      "look again, 1216 h",
      "330-hours",
    ])
      expect(all).toContain(part);
  });

  test.each([LATHE, RUNNING_IN, INCHES, "wordy"])("cuts off nothing of %s", async (name) => {
    const page = await blankPage({ width: Math.floor(between), height: 900 });
    await page.emulateMedia({ media: "print" });
    await page.setContent(reportOn(name === "wordy" ? wordy() : sample(name)));
    expect(await cutOff(page)).toEqual([]);
    await page.close();
  });
});

test("on a phone the report on two surveys is no wider than the screen", async () => {
  const page = await blankPage({ width: 360, height: 740 });
  await page.setContent(reportOn(sample(RUNNING_IN)));
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBe(0);
  await page.close();
});
