import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrapped } from "../../src/report/plainText.ts";
import { terminalText } from "../../src/report/terminal.ts";
import { EVEN, exampleAssessment } from "./exampleAssessment.ts";
import { exampleInspection } from "./exampleInspection.ts";

const text = terminalText("cross-slide.json", exampleAssessment(), exampleInspection());

describe("the assessment on a terminal", () => {
  it.each(["mm", "in"] as const)("keeps within 80 columns in %s", (units) => {
    const written = terminalText("cross-slide.json", exampleAssessment(), exampleInspection({ units }));
    for (const line of written.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("puts the verdict first, then cautions, chances, numbers and what was assumed", () => {
    const order = [
      "REMAKE THE SCREW",
      "limit of 0.15 mm",
      "\nCautions",
      "\nHow sure each step is",
      "\nThe numbers",
      "\nUncertainty, and the limit",
      "\nAssumed",
    ];
    const places = order.map((words) => text.indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it("shows checks with their weight, and what to read next", () => {
    const more = terminalText(
      "x.json",
      exampleAssessment({
        checks: [
          { check: "repeats", severity: "note", message: "No repeats.", readings: [] },
          { check: "gap", severity: "warning", message: "A gap.", readings: [] },
        ],
        nextReadings: [{ endFloat: true, why: "It decides." }],
      }),
      exampleInspection(),
    );
    expect(more).toContain("- Note: repeats. No repeats.");
    expect(more).toContain("- Warning: gap. A gap.");
    expect(more).toContain("- The end float. It decides.");
  });

  it("says of a nut that cannot be adjusted what clearance it has, not what it can take up", () => {
    const { settings } = exampleAssessment();
    const rigid = terminalText(
      "x.json",
      exampleAssessment({ settings: { ...settings, adjustable: false } }),
      exampleInspection(),
    );
    // 0.075 mm could be taken up were it not for 0.025 mm of running clearance.
    expect(rigid).toMatch(/Clearance in the nut +0\.10 mm, give or take 0\.01\n/);
    expect(rigid).toMatch(/Left with new nuts, at worst/);
    expect(rigid).not.toMatch(/can take up|after adjusting/);
    expect(text).toMatch(/Nut can take up +0\.08 mm, give or take 0\.01\n/);
  });

  it("says of a nut that has little left to take up how much that is", () => {
    const { settings } = exampleAssessment();
    const left = (takeUpLeft: number) =>
      terminalText(
        "x.json",
        exampleAssessment({ settings: { ...settings, takeUpLeft } }),
        exampleInspection(),
      );
    expect(left(0.05)).toMatch(/Nut can take up +0\.05 mm, all that it has left\n/);
    expect(left(0.1)).toMatch(/Nut can take up +0\.08 mm, give or take 0\.01\n/);
  });

  it("tells what new nuts would leave beside adjusting where it is another matter", () => {
    const afterNewNuts = { worst: { value: 0.14, low: 0.13, high: 0.15 }, position: 110 };
    const both = terminalText("x.json", exampleAssessment({ afterNewNuts }), exampleInspection());
    expect(both).toMatch(/Left after adjusting, at worst +0\.24 mm/);
    expect(both).toMatch(/Left with new nuts, at worst +0\.14 mm/);
    expect(text).not.toContain("Left with new nuts");
  });

  it("names no place where the readings do not show that lost motion differs", () => {
    const even = terminalText(
      "x.json",
      exampleAssessment({ ...EVEN, verdict: "adjust-nut" }),
      exampleInspection(),
    );
    expect(even).toMatch(/Left after adjusting, at worst +0\.24 mm, give or take 0\.02\n/);
    expect(even).not.toContain("at about");
  });

  it("lays the uncertainty out line by line, and says what was not stated", () => {
    const lines = [
      { source: "repeatability", standard: 0.004, stated: true },
      { source: "indicator's stated error", standard: 0, stated: false },
      { source: "indicator's hysteresis", standard: 0, stated: true },
      { source: "interpolation between stations", standard: 0, stated: true },
    ];
    const budget = terminalText(
      "x.json",
      exampleAssessment({ uncertainty: { lines, expanded: 0.008 } }),
      exampleInspection(),
    );
    expect(budget).toMatch(/Repeatability +0\.004 mm\n/);
    expect(budget).toMatch(/Indicator's stated error +not stated\n/);
    expect(budget).toMatch(/Indicator's hysteresis +0\.000 mm\n/);
    expect(budget).toMatch(/Interpolation between stations +0\.000 mm\n/);
    expect(budget).toMatch(/Expanded, U = 2 u +0\.008 mm\n/);
  });

  it("leaves out chances where there is no verdict", () => {
    const none = exampleAssessment({ verdict: "no-verdict", reasons: ["holds-load"], chances: null });
    expect(terminalText("x.json", none, exampleInspection())).not.toContain("How sure each step is");
  });
});

describe("wrapping", () => {
  it("keeps every word, in lines within the width", () => {
    const words = fc.array(fc.stringMatching(/^[a-z.,]{1,12}$/), { maxLength: 60 });
    fc.assert(
      fc.property(words, fc.integer({ min: 12, max: 40 }), (list, width) => {
        const lines = wrapped(list.join(" "), width);
        expect(lines.join(" ")).toBe(list.join(" "));
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
      }),
    );
  });

  it("keeps a figure and its unit together", () => {
    expect(wrapped("leaves 0.24 mm there", 11)).toEqual(["leaves", "0.24 mm", "there"]);
  });
});
