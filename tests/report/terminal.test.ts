import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wrapped } from "../../src/report/plainText.ts";
import { terminalText } from "../../src/report/terminal.ts";
import { exampleAssessment } from "./exampleAssessment.ts";
import { exampleInspection } from "./exampleInspection.ts";

const text = terminalText("cross-slide.json", exampleAssessment(), exampleInspection());

describe("the assessment on a terminal", () => {
  it.each(["mm", "in"] as const)("keeps within 80 columns in %s", (units) => {
    const written = terminalText("cross-slide.json", exampleAssessment(), exampleInspection({ units }));
    for (const line of written.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  it("puts the verdict first, then numbers, chances, cautions and what was assumed", () => {
    const order = ["REMAKE THE SCREW", "limit 0.15 mm", "\nNumbers", "\nChances", "\nCautions", "\nAssumed"];
    const places = order.map((words) => text.indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it("tells checks with their weight, and what to read next", () => {
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
    expect(more).toContain("- No repeats.");
    expect(more).toContain("- Warning: A gap.");
    expect(more).toContain("- The end float. It decides.");
  });

  it("leaves out chances where there is no verdict", () => {
    const none = exampleAssessment({ verdict: "no-verdict", reasons: ["holds-load"], chances: null });
    expect(terminalText("x.json", none, exampleInspection())).not.toContain("\nChances");
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
