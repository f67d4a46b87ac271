import { describe, expect, it } from "vitest";
import type { Finding } from "../../../src/analysis/assessment.ts";
import { decideFromPosterior, type PosteriorSummary } from "../../../src/analysis/decide/posteriorSummary.ts";
import type { Settings } from "../../../src/analysis/decide/settings.ts";
import { SETTINGS, WELL_COVERED } from "../examples.ts";

const END_FLOAT = 0.02;

/** Draws given by lost motion at the tight and at the loosest spot, end float of 0.02 mm included. */
const drawnFrom = (...draws: readonly (readonly [tight: number, loose: number])[]) =>
  draws.map(([tight, loose]) => ({
    tight: tight - END_FLOAT,
    worst: loose - END_FLOAT,
    endFloat: END_FLOAT,
    drivePlay: 0,
  }));

const GROUNDS: PosteriorSummary = {
  extremes: drawnFrom([0.28, 0.3], [0.29, 0.33], [0.3, 0.36]),
  endFloat: { measured: true },
  coverage: WELL_COVERED,
  repeatability: 0.004,
  rounding: 0.003,
  budget: { lines: [], combined: 0.03, expanded: 0.06 },
  greatest: { value: 0.33, low: 0.3, high: 0.36 },
  profile: [
    { position: 25, backlash: 0.29, low: 0.28, high: 0.3 },
    { position: 150, backlash: 0.33, low: 0.3, high: 0.36 },
  ],
  loosestSpot: { position: 150, backlash: 0.33 },
};

const decide = (
  part: Partial<Settings> = {},
  grounds: Partial<PosteriorSummary> = {},
  checks: readonly Finding[] = [],
) => decideFromPosterior({ ...GROUNDS, ...grounds }, { ...SETTINGS, ...part }, checks);

describe("what is decided from the draws", () => {
  it("is a verdict with its chances", () => {
    const { verdict, reasons, likeliest, chances, canBeSettled, settings } = decide();
    expect({ verdict, reasons, likeliest, canBeSettled }).toEqual({
      verdict: "adjust-nut",
      reasons: [],
      likeliest: "adjust-nut",
      canBeSettled: true,
    });
    expect(chances?.["adjust-nut"]).toBe(1);
    expect(settings).toEqual(SETTINGS);
  });

  it("is none where a check stops it, and the checks are told", () => {
    const stop: Finding = { check: "slip", severity: "stop", message: "", readings: [3] };
    const { verdict, reasons, checks } = decide({}, {}, [stop]);
    expect([verdict, reasons, checks]).toEqual(["measure-more", ["checks"], [stop]]);
  });

  it("is what the nut has to take up: the tight spot less end float and running clearance", () => {
    expect(decide().takeUp.value).toBeCloseTo(0.29 - 0.02 - 0.025, 12);
    expect(decide({ runningClearance: 0.04 }).takeUp.value).toBeCloseTo(0.29 - 0.02 - 0.04, 12);
  });

  it("is what adjusting leaves: the uneven part, running clearance and the end float that may stay", () => {
    const { afterAdjusting, profileAfterAdjusting } = decide();
    expect(afterAdjusting.position).toBe(150);
    expect(afterAdjusting.worst.value).toBeCloseTo(0.04 + 0.025 + 0.01, 12);
    expect(profileAfterAdjusting.map(({ position }) => position)).toEqual([25, 150]);
    expect(profileAfterAdjusting[0].backlash).toBeCloseTo(0.025 + 0.01, 12);
    expect(profileAfterAdjusting[1].backlash).toBeCloseTo(0.04 + 0.025 + 0.01, 12);
  });

  it("is what adjusting leaves where the nut has less to take up, and what new nuts leave all the same", () => {
    const { afterAdjusting, afterNewNuts, profileAfterAdjusting } = decide({ takeUpLeft: 0.1 });
    expect(afterAdjusting.worst.value).toBeCloseTo(0.33 - 0.02 - 0.1 + 0.01, 12);
    expect(profileAfterAdjusting[1].backlash).toBeCloseTo(0.33 - 0.02 - 0.1 + 0.01, 12);
    expect(afterNewNuts.position).toBe(150);
    expect(afterNewNuts.worst.value).toBeCloseTo(0.04 + 0.025 + 0.01, 12);
  });

  it("is conformance by the greatest lost motion and a guard band of 1.65 standard uncertainties", () => {
    // 0.33 mm and 1.65 times 0.03 mm.
    const at = (limit: number) => decide({ limit }).conformance;
    expect([at(0.38), at(0.379), at(0.281), at(0.28)]).toEqual([
      "proven",
      "not proven",
      "not proven",
      "disproven",
    ]);
  });

  it("cannot be settled at the limit, by the margin that is in doubt", () => {
    // Adjusting leaves 0.149, 0.15 and 0.151 mm of 0.15: some do, some do not, and the middle is at the limit.
    const extremes = drawnFrom([0.2, 0.314], [0.2, 0.315], [0.2, 0.3161]);
    const { verdict, reasons, canBeSettled } = decide({}, { extremes });
    expect([verdict, reasons, canBeSettled]).toEqual(["measure-more", ["at-the-limit"], false]);
    // A margin of 0.01 mm is told by readings that repeat so well, and not by coarser ones.
    const near = drawnFrom([0.2, 0.303], [0.2, 0.305], [0.2, 0.32]);
    expect(decide({}, { extremes: near }).reasons).toEqual(["chances"]);
    expect(decide({}, { extremes: near, rounding: 0.0062 }).reasons).toEqual(["at-the-limit"]);
    expect(decide({}, { extremes: near, repeatability: 0.02 }).reasons).toEqual(["at-the-limit"]);
  });
});
