import { describe, expect, it } from "vitest";
import type { Action, Chances, Finding } from "../../../src/analysis/assessment.ts";
import {
  canBeSettled,
  chooseVerdict,
  leastCertainMargin,
} from "../../../src/analysis/decide/chooseVerdict.ts";
import type { Coverage } from "../../../src/analysis/decide/coverage.ts";
import type { Margins } from "../../../src/analysis/decide/decision.ts";
import type { Settings } from "../../../src/analysis/decide/settings.ts";
import { SETTINGS, WELL_COVERED } from "../examples.ts";

const NONE: Chances = {
  "leave-alone": 0,
  "correct-end-float": 0,
  "adjust-nut": 0,
  "replace-nuts": 0,
  "remake-screw": 0,
};

/** The rest of the chance goes to remaking the screw, or where that is the action, to replacing the nuts. */
function sure(action: Action, chance = 0.95): Chances {
  const other = action === "remake-screw" ? "replace-nuts" : "remake-screw";
  return { ...NONE, [action]: chance, [other]: 1 - chance };
}

/** The ruling on chances whose end float was measured, unless it was not. */
function ruled(
  chances: Chances,
  settings: Settings,
  coverage: Coverage,
  findings: readonly Finding[],
  canBeSettled: boolean,
  measured = true,
) {
  const endFloat = { measured, draws: new Float64Array(), standard: 0 };
  return chooseVerdict({ chances, endFloat }, settings, coverage, findings, canBeSettled);
}

const finding = (severity: Finding["severity"]): Finding => ({
  check: "slip",
  severity,
  message: "",
  readings: [0],
});

describe("the verdict", () => {
  it.each(["leave-alone", "correct-end-float", "adjust-nut", "replace-nuts", "remake-screw"] as const)(
    "is %s at a chance of 0.95",
    (action) => {
      const chances = sure(action);
      expect(ruled(chances, SETTINGS, WELL_COVERED, [], true)).toEqual({
        verdict: action,
        reasons: [],
        chances,
        likeliest: action,
      });
    },
  );

  it.each(["leave-alone", "adjust-nut", "replace-nuts", "remake-screw"] as const)(
    "is %s whether or not the end float was measured, which it does not rest on",
    (action) => {
      expect(ruled(sure(action), SETTINGS, WELL_COVERED, [], true, false).verdict).toBe(action);
    },
  );

  it("is to measure more below that, for the chances' sake", () => {
    const chances = sure("adjust-nut", 0.949);
    expect(ruled(chances, SETTINGS, WELL_COVERED, [], true)).toEqual({
      verdict: "measure-more",
      reasons: ["chances"],
      chances,
      likeliest: "adjust-nut",
    });
  });

  it("says that it sits at the limit where more readings would not settle it", () => {
    const ruling = ruled(sure("adjust-nut", 0.6), SETTINGS, WELL_COVERED, [], false);
    expect(ruling.verdict).toBe("measure-more");
    expect(ruling.reasons).toEqual(["at-the-limit"]);
  });

  it("never blames the end float where it was not measured", () => {
    const ruling = ruled(sure("correct-end-float"), SETTINGS, WELL_COVERED, [], true, false);
    expect(ruling.verdict).toBe("measure-more");
    expect(ruling.reasons).toEqual(["end-float-unmeasured"]);
  });

  it("stands, once it is sure, though it sits near the limit", () => {
    expect(ruled(sure("leave-alone"), SETTINGS, WELL_COVERED, [], false).verdict).toBe("leave-alone");
  });

  it("takes the one with less work where two are equally likely", () => {
    const chances = { ...NONE, "adjust-nut": 0.5, "remake-screw": 0.5 };
    expect(ruled(chances, SETTINGS, WELL_COVERED, [], true).likeliest).toBe("adjust-nut");
  });

  it.each([
    ["there are too few stations", { ...WELL_COVERED, enoughStations: false }],
    ["there is a gap", { ...WELL_COVERED, gaps: [{ from: 10, to: 20 }] }],
  ])("waits for coverage where %s", (_, coverage) => {
    const ruling = ruled(sure("leave-alone"), SETTINGS, coverage, [], true);
    expect(ruling.verdict).toBe("measure-more");
    expect(ruling.reasons).toEqual(["coverage"]);
  });

  it.each([
    ["leave-alone", "leave-alone"],
    ["correct-end-float", "correct-end-float"],
    ["adjust-nut", "measure-more"],
    ["replace-nuts", "measure-more"],
    ["remake-screw", "remake-screw"],
  ] as const)("with an unread end of the travel, for %s, is %s", (action, verdict) => {
    const coverage = { ...WELL_COVERED, unreadEnds: [300] };
    const ruling = ruled(sure(action), SETTINGS, coverage, [], true);
    expect(ruling.verdict).toBe(verdict);
    expect(ruling.reasons).toEqual(verdict === "measure-more" ? ["unread-end"] : []);
  });

  it("waits where a check says stop, and only then", () => {
    const stopped = ruled(
      sure("leave-alone"),
      SETTINGS,
      WELL_COVERED,
      [finding("note"), finding("stop")],
      true,
    );
    expect(stopped.verdict).toBe("measure-more");
    expect(stopped.reasons).toEqual(["checks"]);
    const warned = ruled(
      sure("leave-alone"),
      SETTINGS,
      WELL_COVERED,
      [finding("note"), finding("warning")],
      true,
    );
    expect(warned.verdict).toBe("leave-alone");
  });

  it("names every reason, the chief one first", () => {
    const coverage = { enoughStations: false, gaps: [], unreadEnds: [0] };
    const ruling = ruled(sure("adjust-nut", 0.6), SETTINGS, coverage, [finding("stop")], true);
    expect(ruling.reasons).toEqual(["coverage", "unread-end", "checks", "chances"]);
  });

  it.each([
    ["a slide that holds up a load", { holdsLoad: true }, ["holds-load"]],
    ["a spring that hides the nut's wear", { springHides: true }, ["spring-loaded"]],
    ["a limit that perfect parts could not keep", { limit: 0.0349 }, ["limit-not-attainable"]],
    [
      "all three",
      { holdsLoad: true, springHides: true, limit: 0.0349 },
      ["holds-load", "spring-loaded", "limit-not-attainable"],
    ],
  ])("is none, and no chances are told, for %s", (_, part, reasons) => {
    expect(ruled(sure("leave-alone"), { ...SETTINGS, ...part }, WELL_COVERED, [], true)).toEqual({
      verdict: "no-verdict",
      reasons,
      chances: null,
      likeliest: null,
    });
  });
});

describe("the deciding margin", () => {
  /** Margins of draws in which each question is met by the given number out of ten. */
  function margins(met: Readonly<Record<keyof Margins, number>>): readonly Margins[] {
    const size = { asFound: 1, withEndFloat: 2, withTakeUp: 3, takeUpLeft: 4, wear: 5 };
    return Array.from({ length: 10 }, (_, i): Margins => {
      const of = (question: keyof Margins) => (i < met[question] ? size[question] : -size[question]);
      return {
        asFound: of("asFound"),
        withEndFloat: of("withEndFloat"),
        withTakeUp: of("withTakeUp"),
        takeUpLeft: of("takeUpLeft"),
        wear: of("wear"),
      };
    });
  }
  const certain = { asFound: 0, withEndFloat: 0, withTakeUp: 10, takeUpLeft: 10, wear: 10 };

  it.each([
    ["asFound", 1],
    ["withEndFloat", 2],
    ["withTakeUp", 3],
    ["takeUpLeft", 4],
    ["wear", 5],
  ] as const)("is that of the least certain question: %s", (question, size) => {
    const deciding = leastCertainMargin(margins({ ...certain, [question]: 4 }), SETTINGS);
    expect([...deciding]).toEqual([...Array(4).fill(size), ...Array(6).fill(-size)]);
  });

  it("counts doubt the same on both sides", () => {
    const few = leastCertainMargin(margins({ ...certain, asFound: 2, wear: 7 }), SETTINGS);
    expect(Math.abs(few[0])).toBe(5);
    const many = leastCertainMargin(margins({ ...certain, asFound: 3, wear: 8 }), SETTINGS);
    expect(Math.abs(many[0])).toBe(1);
  });

  it("is that of the first question where all are certain", () => {
    expect([...leastCertainMargin(margins(certain), SETTINGS)]).toEqual(Array(10).fill(-1));
  });

  it("leaves out what only matters for a nut that can be adjusted", () => {
    const fixed = { ...SETTINGS, adjustable: false };
    const given = margins({ ...certain, withTakeUp: 9, takeUpLeft: 5, wear: 5 });
    expect(Math.abs(leastCertainMargin(given, fixed)[0])).toBe(3);
    expect(Math.abs(leastCertainMargin(given, SETTINGS)[0])).toBe(4);
    const byEndFloat = margins({ ...certain, withEndFloat: 1, takeUpLeft: 5, wear: 5 });
    expect(Math.abs(leastCertainMargin(byEndFloat, fixed)[0])).toBe(2);
    const asFound = margins({ ...certain, asFound: 2, withEndFloat: 1, takeUpLeft: 5, wear: 5 });
    expect(Math.abs(leastCertainMargin(asFound, fixed)[0])).toBe(1);
  });

  it("takes a margin of nothing for met", () => {
    const given = margins(certain).map((each, i) => ({ ...each, wear: i < 5 ? 0 : 1 }));
    expect(leastCertainMargin(given, SETTINGS)[0]).toBe(-1);
  });
});

describe("whether more readings can settle it", () => {
  // Ten repeats leave √(0.003² + 0.0126491² / 10) = 0.005 mm; 1.65 times that is 0.00825 mm.
  const settles = (...margin: readonly number[]) =>
    canBeSettled(Float64Array.from(margin), Math.sqrt(0.00016), 0.003);

  it("is so where the median of the margin is further from nothing than ten repeats would leave", () => {
    expect(settles(-0.5, 0.0083, 0.5)).toBe(true);
    expect(settles(-0.5, -0.0083, 0.5)).toBe(true);
  });

  it("is not where it is nearer", () => {
    expect(settles(-0.5, 0.0082, 0.5)).toBe(false);
    expect(settles(-0.5, -0.0082, 0.5)).toBe(false);
  });
});
