import { describe, expect, it } from "vitest";
import { lengthsIn } from "../../src/inspection/lengths.ts";
import { summaryOf } from "../../src/report/summary.ts";
import { EVEN, exampleAssessment } from "./exampleAssessment.ts";

const lengths = lengthsIn("mm", 0.01);
const { settings } = exampleAssessment();

const summary = (changes: Parameters<typeof exampleAssessment>[0]): string =>
  summaryOf(exampleAssessment(changes), lengths);

describe("the summary of a verdict", () => {
  it("says of a worn screw how uneven it is and what nothing but another screw removes", () => {
    expect(summary({})).toBe(
      "Lost motion at about 110 mm exceeds that at the tight spot, at about 300 mm, by 0.20 mm, give or take 0.02: " +
        "the screw has worn unevenly. Neither adjusting nor new nuts remove this; even new nuts would leave 0.24 mm, " +
        "give or take 0.02, at about 110 mm, over the limit of 0.15 mm. Remake the screw, with nuts to match.",
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
    const greatest = { value: 0.12, low: 0.11, high: 0.13 };
    expect(summary({ verdict: "leave-alone", greatest, conformance: "proven" })).toBe(
      "At about 110 mm, where it is greatest, lost motion is 0.12 mm, give or take 0.01: within the limit of " +
        "0.15 mm. Nut and screw need nothing done.",
    );
  });

  it("says beside a slide left alone that keeping the limit is not proven", () => {
    const greatest = { value: 0.116, low: 0.1, high: 0.148 };
    const text = (conformance: "proven" | "not proven"): string =>
      summary({ verdict: "leave-alone", greatest, conformance });
    expect(text("not proven")).toContain(
      "within the limit of 0.15 mm. That it keeps the limit is not proven by the rule of ISO 14253-1",
    );
    expect(text("proven")).not.toContain("not proven");
  });

  it("tells the greatest lost motion by both ends of its interval where one side of it is longer", () => {
    const greatest = { value: 0.11, low: 0.1, high: 0.16 };
    expect(summary({ verdict: "adjust-nut", greatest })).toContain(
      "lost motion is between 0.10 and 0.16 mm, most likely 0.11: over the limit",
    );
  });

  it("says of new nuts what they leave, not what adjusting would", () => {
    const changes = {
      settings: { ...settings, takeUpLeft: 0.02 },
      afterAdjusting: { worst: { value: 0.29, low: 0.28, high: 0.3 }, position: 110 },
      afterNewNuts: { worst: { value: 0.14, low: 0.13, high: 0.15 }, position: 110 },
    };
    for (const verdict of ["replace-nuts", "remake-screw"] as const) {
      expect(summary({ ...changes, verdict })).toContain("leave 0.14 mm, give or take 0.01");
    }
    expect(summary({ ...changes, verdict: "adjust-nut" })).toContain("leave 0.29 mm, give or take 0.01");
  });

  it.each([
    ["adjust-nut", []],
    ["replace-nuts", []],
    ["leave-alone", []],
    ["correct-end-float", []],
    ["no-verdict", ["spring-loaded"]],
  ] as const)(
    "names no place for %s where the readings show lost motion the same everywhere",
    (verdict, reasons) => {
      const text = summary({ ...EVEN, verdict, reasons });
      expect(text).toContain(
        "Lost motion is 0.20 mm, give or take 0.01, the same everywhere as far as the readings show",
      );
      expect(text).not.toMatch(/at about|tight spot|worst/);
    },
  );

  it("names no place where it is open whether lost motion differs", () => {
    const text = summary({ verdict: "adjust-nut", unevenChance: 0.8 });
    expect(text).toContain("Lost motion is 0.31 mm, give or take 0.01, where it is greatest: over the limit");
    expect(text).not.toMatch(/at about|tight spot|the same everywhere/);
  });

  it("writes in inches for those who read inches", () => {
    expect(summaryOf(exampleAssessment(), lengthsIn("in", 0.0254))).toContain(
      "by 0.008 in, give or take 0.001",
    );
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
