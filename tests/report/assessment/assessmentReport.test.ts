import { describe, expect, it } from "vitest";
import packageFile from "../../../package.json" with { type: "json" };
import type { Assessment } from "../../../src/analysis/assessment.ts";
import type { Inspection, Survey } from "../../../src/inspection/schema.ts";
import { profilePicture } from "../../../src/picture/profilePicture.ts";
import { assessmentReport } from "../../../src/report/assessment/assessmentReport.ts";
import { EVEN, exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";

/** The example inspection with its survey changed. */
function inspectionWith(survey: Partial<Survey> = {}, slide: Partial<Inspection["slide"]> = {}): Inspection {
  const inspection = exampleInspection(slide);
  return { ...inspection, surveys: inspection.surveys.map((each) => ({ ...each, ...survey })) };
}

const reportOf = (inspection = inspectionWith(), changes: Partial<Assessment> = {}): string =>
  assessmentReport(inspection, exampleAssessment(changes));

/** What a reader reads of it, without markup, in one line. */
function textOf(report: string): string {
  return report
    .replace(/<style>[\s\S]*?<\/style>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&quot;", '"')
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&amp;", "&")
    .replace(/\s+/g, " ");
}

const headings = (report: string): readonly string[] =>
  [...report.matchAll(/<h2>(.*?)<\/h2>/g)].map(([, title]) => title ?? "");

describe("the report", () => {
  it("is one document without scripts and without anything from elsewhere", () => {
    const report = reportOf();
    expect(report.startsWith("<!doctype html>")).toBe(true);
    const outside = /<script|<link|<img|<iframe|@import|@font-face|\ssrc=|\shref=|\son\w+=/i;
    expect(report).not.toMatch(outside);
    for (const [, address] of report.matchAll(/url\((.*?)\)/g)) expect(address).toMatch(/^#/);
  });

  it("closes what it opens", () => {
    const open: string[] = [];
    const alone = new Set(["meta", "!doctype"]);
    for (const [, closing, name = "", end] of reportOf().matchAll(
      /<(\/?)([a-z!][a-zA-Z0-9]*)[^>]*?(\/?)>/g,
    )) {
      if (alone.has(name) || end === "/") continue;
      if (closing === "/") expect(open.pop()).toBe(name);
      else open.push(name);
    }
    expect(open).toEqual([]);
  });

  it("names slide, machine, survey, date and stage, and who made it with which version", () => {
    const text = textOf(reportOf(inspectionWith({}, { machine: "Lathe no. 2" })));
    for (const part of ["Cross slide", "Lathe no. 2", "Survey of 14 March 2026, before repair"])
      expect(text).toContain(part);
    expect(text).toContain(`Tightspot, version ${packageFile.version}`);
  });

  it("begins with the verdict, its chances and the cautions", () => {
    const text = textOf(reportOf());
    const order = [
      "Remake the screw, with nuts to match",
      "Greatest lost motion",
      "very likely (99 in 100)",
      "Isolate the machine",
      "Lost motion: 0.11 mm at the tight spot",
      "The screw along its travel",
    ].map((part) => text.indexOf(part));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it("has every part of a survey's record", () => {
    expect(headings(reportOf())).toEqual([
      "Remake the screw, with nuts to match",
      "Take care",
      "What else could be done",
      "The numbers",
      "Slide and machine",
      "How it was measured",
      "Uncertainty, and the limit",
      "Checks on the readings",
      "All readings",
      "Assumed",
      "Method",
    ]);
    const text = textOf(reportOf());
    for (const part of [
      "Uniform part of it 0.11 mm, give or take 0.01",
      "Uneven part of it 0.20 mm, give or take 0.02",
      "Tight spot 0.11 mm at about 300 mm",
      "Loosest spot 0.31 mm at about 110 mm",
      "by at least 0.15 mm from about 75 mm to 145 mm",
      "Expanded, U = 2 u",
      "The nut is adjustable.",
      "Name Signature Date",
    ])
      expect(text).toContain(part);
  });

  it("draws the profile from the description that the page draws", () => {
    const { description } = profilePicture(exampleAssessment(), "mm");
    expect(reportOf()).toContain(`<desc>${description}</desc>`);
    expect(reportOf().match(/<svg/g)).toHaveLength(2);
  });

  it("gives no chances and no spots where there are none to give", () => {
    const report = reportOf(inspectionWith(), {
      ...EVEN,
      verdict: "no-verdict",
      reasons: ["holds-load"],
      chances: null,
      likeliest: null,
    });
    expect(report).not.toContain('class="bars"');
    expect(reportOf()).toContain('class="bars"');
    expect(textOf(report)).toContain("the readings do not show that lost motion differs along the travel");
    expect(textOf(report)).toContain("nowhere that these readings show");
  });

  it("tells of struck readings why, and what counts in their place", () => {
    const readings = [
      { position: 0, backlash: 0.1 },
      { position: 0, backlash: 0.5, excluded: "bumped the stand" },
      { position: 25, backlash: 0.2, excluded: "" },
    ];
    const report = reportOf(inspectionWith({ readings }));
    const text = textOf(report);
    expect(text).toContain("3 readings at 13 stations, 2 of them struck");
    expect(text).toContain(
      "Reading 2 at 0 mm was struck: bumped the stand. One other reading of this station counts in its place.",
    );
    expect(text).toContain(
      "Reading 3 at 25 mm was struck: no reason given. No other reading of this station counts in its place.",
    );
    expect(report.match(/<tr class="struck">/g)).toHaveLength(2);
    expect(text).toContain("Struck: bumped the stand");
  });

  it("tells of each check how it stands", () => {
    const finding = (check: string, severity: Assessment["checks"][number]["severity"]) => ({
      check,
      severity,
      message: `About ${check}.`,
      readings: [0],
    });
    const checks = [finding("slip", "stop"), finding("drift", "warning"), finding("no repeats", "note")];
    const text = textOf(reportOf(inspectionWith(), { checks }));
    expect(text).toContain("Stops the verdict: slip. About slip.");
    expect(text).toContain("Warning: drift. About drift.");
    expect(text).toContain("Note: no repeats. About no repeats.");
    expect(text).toContain("A warning is open, and every reading still counts");
    expect(textOf(reportOf())).toContain("Nothing was found.");
  });

  it("says what it was measured with, and what was not said", () => {
    const told = textOf(
      reportOf(
        inspectionWith({
          indicator: { name: "No. 4", resolution: 0.01, error: 0.02, hysteresis: 0.003, angleToTravel: 10 },
          endFloat: [0.01, 0.02],
          conditions: { temperature: 21, oil: "fresh" },
          hoursOfUse: 1200,
          note: "Gib snug.",
        }),
      ),
    );
    for (const part of [
      "No. 4, resolution 0.01 mm, limit of error 0.02 mm either way, hysteresis 0.003 mm, at 10° to the travel, corrected",
      "measured on its own: 0.01 mm, 0.02 mm",
      "21 °C, oil: fresh",
      "1200 h",
      "Gib snug.",
      "Lost motion worked out, mm",
    ])
      expect(told).toContain(part);
    const untold = textOf(reportOf(inspectionWith({ indicator: undefined })));
    for (const part of ["not described", "End float not measured", "none noted"])
      expect(untold).toContain(part);
  });

  it("lists pairs as they were read, in divisions of the dial, with the lost motion that they come to", () => {
    const text = textOf(
      reportOf(
        inspectionWith({
          method: "dial-pair",
          dial: { travelPerDivision: 0.04, divisions: 100 },
          readings: [
            { position: 0, advancing: 3, retracting: 98 },
            { position: 25.5, advancing: 40, retracting: 34.5 },
          ],
        }),
      ),
    );
    expect(text).toContain("No. Position, mm Advancing, div. Retracting, div. Lost motion worked out, mm");
    // Five divisions across the dial's zero and five and a half, of 0.04 mm each.
    expect(text).toContain("1 0.0 3 98.0 0.20");
    expect(text).toContain("2 25.5 40 34.5 0.22");
  });

  it("lists positions at targets with direction and run", () => {
    const text = textOf(
      reportOf(
        inspectionWith({
          method: "positioning",
          readings: [
            { target: 10, direction: "advancing", reading: 10.05, run: 1 },
            { target: 10, direction: "retracting", reading: 9.9, run: 1 },
          ],
        }),
      ),
    );
    expect(text).toContain("1 10 advancing 1 10.05 0.15 2 10 retracting 1 9.90 0.15");
  });

  it("names the other surveys of the slide, and which one this is", () => {
    const { surveys, ...rest } = exampleInspection();
    const [first] = surveys;
    if (first === undefined) throw new Error("The example has a survey.");
    const inspection = {
      ...rest,
      surveys: [first, { ...first, id: "after", taken: "2026-04-01", stage: "after-repair" as const }],
    };
    expect(textOf(reportOf(inspection))).toContain(
      "before 14 March 2026 before repair this report after 1 April 2026 after repair",
    );
  });

  it("takes nothing that was written for markup or style", () => {
    const evil = '</style></title><script>alert("x")</script><img src=x onerror=alert(1)> & \\"; } body { }';
    const report = reportOf(
      {
        ...inspectionWith(
          {
            note: evil,
            conditions: { [evil]: evil },
            readings: [
              { position: 0, backlash: 0.1, note: evil, time: evil },
              { position: 0, backlash: 0.1, excluded: evil },
            ],
          },
          { name: evil, machine: evil, screw: { lead: 4, form: evil } },
        ),
      },
      {
        assumed: [evil],
        checks: [{ check: evil, severity: "note", message: evil, readings: [] }],
      },
    );
    expect(report).not.toMatch(/<script|<img/);
    expect(report.match(/<\/style>/g)).toHaveLength(1);
    expect(report.match(/<\/title>/g)).toHaveLength(3);
    expect(textOf(report)).toContain(evil);
    const [, style = ""] = /<style>([\s\S]*?)<\/style>/.exec(report) ?? [];
    expect(style).not.toContain("body { }");
  });

  it("is the same twice, and of the survey that it is about", () => {
    expect(reportOf()).toBe(reportOf());
    expect(() => reportOf(inspectionWith({ id: "another" }))).toThrow('no survey "before"');
  });

  it("writes lengths in inches for a slide kept in inches", () => {
    const inches = inspectionWith(
      { readings: [{ position: 1, backlash: 0.0125 }] },
      { units: "in", travel: { from: 0, to: 12 }, screw: { lead: 0.2 }, backlashLimit: 0.006 },
    );
    const text = textOf(assessmentReport(inches, exampleAssessment()));
    expect(text).toContain("Position, in Lost motion, in 1 1 0.0125");
    expect(text).not.toMatch(/\d mm\b/);
  });
});
