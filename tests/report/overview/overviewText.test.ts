import { describe, expect, it } from "vitest";
import type { Assessment } from "../../../src/analysis/assessment.ts";
import { overviewText } from "../../../src/report/overview/overviewText.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";

const textOf = (changes: Partial<Assessment>): string =>
  overviewText(
    [
      {
        file: "mill.json",
        inspection: exampleInspection({ machine: "Mill" }),
        assessment: exampleAssessment(changes),
      },
    ],
    [],
  );

describe("the line of a slide", () => {
  it("tells slide, what to do, lost motion with its interval, limit, day and file", () => {
    expect(textOf({}).split("\n")[2]).toBe(
      "Mill: Cross slide  Remake the screw, with nuts to match  lost motion 0.31 mm, give or take 0.01; limit 0.15 mm  2026-03-14  mill.json",
    );
  });

  it("says what it looks like so far where more is to be measured", () => {
    const more = { verdict: "measure-more", likeliest: "adjust-nut" } as const;
    expect(textOf({ ...more, reasons: ["chances"] })).toContain("Measure more (likeliest: adjust the nut)");
    expect(textOf({ ...more, reasons: ["at-the-limit"] })).toContain(
      "Too close to the limit to call (likeliest: adjust the nut)",
    );
  });

  it.each([
    ["holds-load", "it holds up a load, have it inspected"],
    ["spring-loaded", "a spring hides the nut's wear"],
    ["limit-not-attainable", "the limit is beyond parts in perfect order"],
  ] as const)("says why there is no verdict: %s", (reason, words) => {
    const none = { verdict: "no-verdict", likeliest: null, chances: null, reasons: [reason] } as const;
    expect(textOf(none)).toContain(`No verdict: ${words}`);
  });

  it("brings the caution on screws that hold up a load with it", () => {
    const { settings } = exampleAssessment();
    expect(textOf({ settings: { ...settings, holdsLoad: true } })).toContain(
      "holds up a load is a safety part",
    );
    expect(textOf({})).not.toContain("safety part");
  });
});
