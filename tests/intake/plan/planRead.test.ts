import { describe, expect, it } from "vitest";
import { assessSurvey } from "../../../src/analysis/assess.ts";
import type { Inspection, Slide } from "../../../src/inspection/schema.ts";
import { measuringPlan } from "../../../src/intake/plan/measuringPlan.ts";

/** What an assessment finds wanting in where, how often and in which order readings were taken. */
const OF_THE_PLAN = [
  "in step with the lead",
  "no repeats",
  "gap in coverage",
  "drift",
  "first station not read again",
  "duplicate rows",
  "outside the travel",
];

function checksOn(slide: Slide, order: readonly number[]): readonly string[] {
  const readings = order.map((position, index) => ({
    position,
    backlash: Number((0.2 + 0.005 * ((index * 7) % 3)).toFixed(3)),
  }));
  const survey = {
    id: "by-the-plan",
    taken: "2026-03-14",
    stage: "routine",
    method: "push-pull",
    indicator: { resolution: 0.005 },
    endFloat: [0.01],
    readings,
  } as const;
  const inspection: Inspection = { format: "tightspot-inspection", version: 1, slide, surveys: [survey] };
  const assessed = assessSurvey(inspection, survey.id);
  if (!assessed.ok) throw new Error(assessed.problem.what);
  return assessed.value.checks.map(({ check }) => check);
}

const SLIDE: Slide = {
  id: "slide",
  name: "Slide",
  units: "mm",
  travel: { from: 0, to: 120 },
  screw: { lead: 4 },
  backlashLimit: 0.15,
};

describe("readings taken by the plan", () => {
  it.each([
    ["a travel that even spacing would meet at one angle of the screw only", SLIDE],
    ["a long travel", { ...SLIDE, travel: { from: -50, to: 450 }, screw: { lead: 5, nominalDiameter: 25 } }],
    ["a coarse lead", { ...SLIDE, screw: { lead: 20 }, nut: { engagedLength: 40 } }],
  ])("leave the checks nothing to ask for: %s", (_, slide) => {
    const plan = measuringPlan(slide);
    if (!plan.ok) throw new Error(plan.problem.what);
    const order = plan.value.readings.map(({ position }) => position);
    expect(checksOn(slide, order).filter((check) => OF_THE_PLAN.includes(check))).toEqual([]);
  });

  it("stand against those of a survey that the checks do find wanting", () => {
    const found = checksOn(SLIDE, [0, 12, 24, 36, 48, 60, 72]);
    for (const check of ["in step with the lead", "no repeats", "gap in coverage"]) {
      expect(found).toContain(check);
    }
  });
});
