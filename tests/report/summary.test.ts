import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { summaryOf } from "../../src/report/summary.ts";
import { exampleAssessment } from "./exampleAssessment.ts";

const lengths = lengthsIn("mm", 0.01);
const { settings } = exampleAssessment();
const OPEN = {
  "leave-alone": 0,
  "correct-end-float": 0,
  "adjust-nut": 0.72,
  "replace-nuts": 0.01,
  "remake-screw": 0.27,
};

const summary = (changes: Parameters<typeof exampleAssessment>[0]): string =>
  summaryOf(exampleAssessment(changes), lengths);

describe("the summary of a verdict", () => {
  it("says of a worn screw how uneven it is and what nothing but another screw removes", () => {
    expect(summary({})).toBe(
      "Lost motion at about 110 mm exceeds that at the tight spot, at about 300 mm, by 0.20 mm, give or take 0.02: " +
        "the screw has worn unevenly. Neither adjusting nor new nuts remove this; they would leave 0.24 mm, give or " +
        "take 0.02, at about 110 mm, over the limit of 0.15 mm. Remake the screw, with nuts to match.",
    );
  });

  it("says how far to take up the nut, where it stops and what is left", () => {
    const text = summary({ verdict: "adjust-nut" });
    expect(text).toContain(
      "Take up the nut by 0.08 mm, give or take 0.01, if it still has as much to take up",
    );
    expect(text).toContain("binds first at the tight spot, at about 300 mm");
    expect(text).toContain("will leave 0.24 mm, give or take 0.02, where it is worst, at about 110 mm");
  });

  it("takes up no more than the nut has left", () => {
    const text = summary({ verdict: "adjust-nut", settings: { ...settings, takeUpLeft: 0.05 } });
    expect(text).toContain("Take up the nut by the 0.05 mm that it has left");
  });

  it("does not doubt a take-up that is known to be left", () => {
    const text = summary({ verdict: "adjust-nut", settings: { ...settings, takeUpLeft: 2 } });
    expect(text).not.toContain("if it still has");
  });

  it.each([
    ["is not adjustable", { adjustable: false }, "cannot be adjusted"],
    // 0.075 taken up + 0.025 of running clearance is 0.1 mm of clearance.
    ["is worn out", { wearLimit: 0.08 }, "has worn by about 0.10 mm, more than the 0.08 mm that it may"],
    ["has too little left", { takeUpLeft: 0.02 }, "has only 0.02 mm left to take up"],
  ])("says why new nuts are needed where the nut %s", (_, changes, reason) => {
    const text = summary({ verdict: "replace-nuts", settings: { ...settings, ...changes } });
    expect(text).toContain(reason);
    expect(text).toContain("Stock nuts add their own clearance");
  });

  it("says that a slide within its limit needs nothing", () => {
    expect(summary({ verdict: "leave-alone", loosestSpot: { position: 110, backlash: 0.12 } })).toBe(
      "At about 110 mm, where it is greatest, lost motion is 0.12 mm, give or take 0.01: within the limit of " +
        "0.15 mm. Nut and screw need nothing done.",
    );
  });

  it("names the end float first where it is more than a bearing in order has", () => {
    const endFloat = { value: 0.04, low: 0.03, high: 0.05 };
    const first = "First bring the end float of 0.04 mm, give or take 0.01, down to 0.01 mm";
    for (const verdict of ["leave-alone", "adjust-nut", "replace-nuts", "remake-screw"] as const) {
      expect(summary({ verdict, endFloat }).startsWith(first)).toBe(true);
    }
    expect(summary({ verdict: "measure-more", reasons: ["coverage"], endFloat }).startsWith(first)).toBe(
      true,
    );
    expect(summary({ verdict: "correct-end-float", endFloat })).toContain(
      "Of that, 0.04 mm, give or take 0.01, is end float",
    );
  });

  it("writes in inches for those who read inches", () => {
    expect(summaryOf(exampleAssessment(), lengthsIn("in", 0.0254))).toContain(
      "by 0.008 in, give or take 0.001",
    );
  });
});

describe("the summary of a measure-more", () => {
  const open = { verdict: "measure-more", chances: OPEN, likeliest: "adjust-nut" } as const;

  it("tells what is likeliest, what else it may be, and what to read", () => {
    const text = summary({
      ...open,
      reasons: ["chances"],
      nextReadings: [
        { position: 137.2, why: "The tight spot may be here." },
        { endFloat: true, why: "It decides." },
      ],
    });
    expect(text).toContain("Likeliest so far: adjust the nut (chance 72 in 100)");
    expect(text).toContain("it could also be remake the screw, with nuts to match (27 in 100).");
    expect(text).not.toContain("fit new nuts");
    expect(text).toContain("Read next at about 137 mm and the end float.");
  });

  it("says which stations are wanting", () => {
    const few = exampleAssessment().stations.slice(0, 4);
    expect(summary({ ...open, reasons: ["coverage"], stations: few })).toContain(
      "There are 4 stations, and a verdict needs at least 5.",
    );
    expect(summary({ ...open, reasons: ["coverage"] })).toContain("farther than the nut's length, 30 mm");
    expect(summary({ ...open, reasons: ["unread-end"] })).toContain("within half the nut's length, 15 mm");
  });

  it("repeats the check that stops it", () => {
    const checks = [
      { check: "drift", severity: "note", message: "It drifts.", readings: [] },
      { check: "slip", severity: "stop", message: "Reading 4 is ten times the others.", readings: [3] },
    ] as const;
    expect(summary({ ...open, reasons: ["checks", "chances"], checks })).toMatch(/^Reading 4 is ten times/);
  });

  it("names the reversible step where it sits at the limit", () => {
    const atLimit = { ...open, reasons: ["at-the-limit"] } as const;
    const inOrder = { value: 0.01, low: 0.009, high: 0.011 };
    expect(summary({ ...atLimit, endFloat: inOrder })).toContain("Adjust the nut first, which can be undone");
    expect(summary({ ...atLimit, endFloat: null })).toContain("Correct the end float first");
  });
});

describe("the summary without a verdict", () => {
  const none = { verdict: "no-verdict", chances: null, likeliest: null } as const;

  it("sends a screw that holds up a load to a competent person, and still gives the numbers", () => {
    const text = summary({ ...none, reasons: ["holds-load"] });
    expect(text).toContain("inspected by a competent person to the maker's limits and local rules");
    expect(text).toContain("0.31 mm");
    expect(text).not.toMatch(/remake|adjust|new nuts/i);
  });

  it("says that parts in perfect order could not meet the limit", () => {
    const text = summary({
      ...none,
      reasons: ["limit-not-attainable"],
      settings: { ...settings, limit: 0.03 },
    });
    expect(text).toContain(
      "a limit of 0.03 mm: running clearance and attainable end float already come to 0.035 mm",
    );
  });

  it("asks for a reading force that overcomes the spring", () => {
    expect(summary({ ...none, reasons: ["spring-loaded"] })).toContain("a force that overcomes the spring");
  });
});
