import type { Comparison } from "../../../src/analysis/comparison/comparison.ts";
import type { RunningIn } from "../../../src/analysis/runningIn/runningIn.ts";
import { dayNumber } from "../../../src/inspection/dates.ts";
import { exampleAssessment } from "../exampleAssessment.ts";

/**
 * A comparison made by hand, not by the analysis: a nut taken up by 0.08 mm on a slide that is 0.2 mm uneven, so that
 * lost motion at its greatest is 0.23 mm, against a limit of 0.15 mm.
 */
export function exampleComparison(changes: Partial<Comparison> = {}): Comparison {
  const before = exampleAssessment();
  const less = (amount: number) => ({ value: amount - 0.08, low: amount - 0.09, high: amount - 0.07 });
  const after = exampleAssessment({
    survey: "after",
    uniform: less(0.11),
    greatest: less(0.31),
    profile: before.profile.map(({ position, backlash }) => ({
      position,
      backlash: backlash - 0.08,
      low: backlash - 0.09,
      high: backlash - 0.07,
    })),
    tightSpot: { position: 300, backlash: 0.03 },
    loosestSpot: { position: 110, backlash: 0.23 },
  });
  return {
    from: { id: "before", taken: "2026-03-02", stage: "before-repair", assessment: before },
    to: { id: "after", taken: "2026-03-04", stage: "after-adjusting", assessment: after },
    done: "adjusted",
    change: {
      uniform: less(0),
      uneven: { value: 0, low: -0.02, high: 0.02 },
      greatest: less(0),
      endFloat: { value: 0, low: -0.01, high: 0.01 },
      uniformLessEndFloat: less(0),
    },
    difference: before.profile.map(({ position }) => ({
      position,
      change: -0.08,
      low: -0.09,
      high: -0.07,
    })),
    sameEverywhere: true,
    acceptance: {
      conformance: "disproven",
      withheld: null,
      limit: 0.15,
      greatest: less(0.31),
      chance: 0,
    },
    notes: ["Both surveys name the same indicator."],
    resolution: 0.01,
    ...changes,
  };
}

/** A history made by hand: five surveys in 200 days, growing steadily by 0.02 mm, with a limit of 0.15 mm. */
export function exampleRunningIn(changes: Partial<RunningIn> = {}): RunningIn {
  const first = dayNumber("2026-01-01");
  const estimate = (value: number) => ({ value, low: value - 0.002, high: value + 0.002 });
  const at = (share: number): number => first + 200 * share;
  return {
    by: "date",
    surveys: [0, 0.25, 0.5, 0.75, 1].map((share, i) => ({
      survey: `survey-${i + 1}`,
      taken: "2026-01-01",
      at: at(share),
      uniform: estimate(0.05 + 0.02 * share),
    })),
    chances: {
      constant: 0.01,
      steady: 0.8,
      settling: 0.05,
      slowing: 0.04,
      "settling-then-steady": 0.1,
    },
    likeliest: "steady",
    growth: { value: 0.02, low: 0.01, high: 0.03 },
    scatter: 0.001,
    trend: [0, 1, 2].map((share) => ({
      at: at(share),
      uniform: 0.05 + 0.02 * share,
      low: 0.04 + 0.02 * share,
      high: 0.06 + 0.02 * share,
    })),
    limit: 0.15,
    uneven: { value: 0.04, low: 0.03, high: 0.05 },
    limitReached: {
      value: at(3),
      low: at(2),
      high: at(4),
      chanceAlready: 0,
      chanceByHorizon: 1,
      horizon: at(6),
    },
    lookAgain: { at: at(1.5), why: "limit" },
    resolution: 0.01,
    ...changes,
  };
}
