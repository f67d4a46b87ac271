import { describe, expect, it } from "vitest";
import packageFile from "../../../package.json" with { type: "json" };
import type { Comparison } from "../../../src/analysis/comparison/comparison.ts";
import type { Inspection } from "../../../src/inspection/schema.ts";
import { comparisonPicture } from "../../../src/picture/comparison/comparisonPicture.ts";
import { runningInPicture } from "../../../src/picture/runningIn/runningInPicture.ts";
import { type Compared, comparedOf } from "../../../src/report/comparison/compared.ts";
import { comparisonReport } from "../../../src/report/comparison/comparisonReport.ts";
import { exampleInspection } from "../exampleInspection.ts";
import { exampleComparison, exampleRunningIn } from "./exampleComparison.ts";

/** The example inspection with both surveys. */
function bothSurveys(slide: Partial<Inspection["slide"]> = {}): Inspection {
  const { surveys, ...rest } = exampleInspection(slide);
  const [before] = surveys;
  if (before === undefined) throw new Error("The example has a survey.");
  return {
    ...rest,
    surveys: [
      { ...before, taken: "2026-03-02" },
      {
        ...before,
        id: "after",
        taken: "2026-03-04",
        stage: "after-adjusting",
        indicator: { name: "No. 4", resolution: 0.002 },
        note: "Nut taken up.",
      },
    ],
  };
}

const NO_HISTORY: Compared["history"] = { surveys: 1, why: "surveys" };

const reportOf = (
  changes: Partial<Comparison> = {},
  history: Compared["history"] = exampleRunningIn(),
  inspection = bothSurveys(),
): string => comparisonReport(comparedOf(inspection, { comparison: exampleComparison(changes), history }));

/** What a reader reads of it, without markup, in one line. */
function textOf(report: string): string {
  return report
    .replace(/<style>[\s\S]*?<\/style>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("\u00a0", " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");
}

const headings = (report: string): readonly string[] =>
  [...report.matchAll(/<h2>(.*?)<\/h2>/g)].map(([, title]) => title ?? "");

describe("the report on two surveys", () => {
  it("is one document without scripts and without anything from elsewhere", () => {
    const report = reportOf();
    expect(report.startsWith("<!doctype html>")).toBe(true);
    expect(report).not.toMatch(
      /<script|<link|<img|<iframe|@import|@font-face|\ssrc=|\shref=|\son\w+=|url\(/i,
    );
  });

  it("begins with what has changed, whether the limit is kept, and the cautions", () => {
    const text = textOf(reportOf());
    const order = [
      "Before and after Cross slide",
      "Survey of 2 March 2026, before repair against 4 March 2026, after adjusting",
      "Taking up the nut removed 0.08 mm, give or take 0.01, everywhere; the uneven 0.20 mm is still there.",
      "Proven: lost motion is over the limit of 0.15 mm",
      "That is over the limit of 0.15 mm, proven.",
      "Uniform part 0.08 mm less give or take 0.01",
      "Take care",
      "Isolate the machine",
      "Lost motion, before and after: uniform part less by 0.08 mm",
    ].map((part) => text.indexOf(part));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it.each([
    ["proven", "good", "Proven: lost motion is within the limit of 0.15 mm"],
    ["not proven", "open", "Not proven: lost motion may be within or over the limit of 0.15 mm"],
  ] as const)("says in words that the limit is %s", (conformance, tone, title) => {
    const { acceptance } = exampleComparison();
    const report = reportOf({ acceptance: { ...acceptance, conformance } });
    expect(textOf(report)).toContain(title);
    expect(report).toContain(`class="verdict ${tone}"`);
  });

  it("has every part of the record of a repair", () => {
    const report = reportOf();
    expect(headings(report)).toEqual([
      "Proven: lost motion is over the limit of 0.15\u00a0mm",
      "Take care",
      "The figures, each with its 95 % interval",
      "Lost motion along the travel (mm)",
      "Running in",
      "How the surveys were made comparable",
      "Slide and machine",
      "How it was measured",
      "Assumed",
      "Method",
    ]);
    const text = textOf(report);
    for (const part of [
      "Uniform part 0.11 mm give or take 0.01 0.03 mm give or take 0.01 0.08 mm less give or take 0.01",
      "Position Before After Change 95 % 0 mm 0.11 0.03 -0.08 -0.09 to -0.07",
      "Both surveys name the same indicator.",
      "Before Survey before, 2 March 2026, before repair",
      "After Survey after, 4 March 2026, after adjusting",
      "No. 4, resolution 0.002 mm",
      "Nut taken up.",
      "Verdict on it by itself: Remake the screw, with nuts to match.",
      "before 2 March 2026 before repair before after 4 March 2026 after adjusting after",
      "The nut is adjustable.",
      "Name Signature Date",
      `Tightspot, version ${packageFile.version}`,
    ])
      expect(text).toContain(part);
  });

  it("draws both profiles and the trend from the descriptions that the page draws", () => {
    const report = reportOf();
    expect(report).toContain(`<desc>${comparisonPicture(exampleComparison(), "mm").description}</desc>`);
    expect(report).toContain(`<desc>${runningInPicture(exampleRunningIn(), "mm").description}</desc>`);
    expect(textOf(report)).toContain("2026-05-31 survey-4");
    expect(textOf(report)).toContain("five courses of the uniform part");
  });

  it("says that there is too little for a trend, and nothing where nobody looked for one", () => {
    const few = reportOf({}, { surveys: 2, why: "surveys" });
    expect(textOf(few)).toContain("A trend takes three surveys since the last repair; there are 2.");
    expect(few.match(/<svg/g)).toHaveLength(1);
    const none = reportOf({}, NO_HISTORY);
    expect(headings(none)).not.toContain("Running in");
    expect(textOf(none)).not.toContain("five courses");
  });

  it("takes nothing that was written for markup or style", () => {
    const evil = '</style></title><script>alert("x")</script><img src=x onerror=alert(1)> & \\"; } body { }';
    const { surveys, ...rest } = bothSurveys({ name: evil, machine: evil });
    const report = reportOf({ notes: [evil] }, exampleRunningIn(), {
      ...rest,
      surveys: surveys.map((survey) => ({ ...survey, note: evil })),
    });
    expect(report).not.toMatch(/<script|<img/);
    expect(report.match(/<\/style>/g)).toHaveLength(1);
    expect(report.match(/<\/title>/g)).toHaveLength(3);
    expect(textOf(report)).toContain(evil);
  });

  it("is the same twice, and of surveys of its inspection", () => {
    expect(reportOf()).toBe(reportOf());
    const { surveys, ...rest } = bothSurveys();
    expect(() => reportOf({}, NO_HISTORY, { ...rest, surveys: surveys.slice(0, 1) })).toThrow(
      'no survey "after"',
    );
  });

  it("writes lengths in inches for a slide kept in inches", () => {
    const text = textOf(reportOf({}, exampleRunningIn(), bothSurveys({ units: "in", backlashLimit: 0.006 })));
    expect(text).toContain("removed 0.0031 in");
    expect(text).not.toMatch(/\d mm\b/);
  });
});

describe("what is taken for granted of two surveys", () => {
  it("is told once, what came from elsewhere first", () => {
    const found = { comparison: exampleComparison(), history: NO_HISTORY };
    expect(comparedOf(bothSurveys(), found, ["--limit 0.2 stands before the file."]).assumed).toEqual([
      "--limit 0.2 stands before the file.",
      "The nut is adjustable.",
    ]);
  });
});
