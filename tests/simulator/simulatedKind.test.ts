import { beforeAll, describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { ACTIONS } from "../../src/analysis/assessment.ts";
import { correct } from "../../src/analysis/correct/corrections.ts";
import { inMillimetres } from "../../src/inspection/metric.ts";
import { isPair, isPositioning } from "../../src/inspection/readingShapes.ts";
import { inspectionSchema } from "../../src/inspection/schema.ts";
import { HELD_OUT } from "./kinds/held-out/index.ts";
import { KINDS } from "./kinds/index.ts";
import { type SimulatedKind, simulatedKind } from "./simulatedKind.ts";

let slides: readonly SimulatedKind[];

beforeAll(() => {
  slides = [...KINDS, ...HELD_OUT].flatMap((kind) =>
    Array.from({ length: 40 }, (_, i) => simulatedKind(kind, 300 + 7919 * i)),
  );
});

/** Rules 1 to 5 of the decision, word by word; e' is what end float remains. */
function ruled({ inspection, truth }: SimulatedKind, remains: number): string {
  const { slide } = inMillimetres(inspection);
  const { nut = {}, backlashLimit: limit, runningClearance: clearance = 0.025, screw } = slide;
  const elsewhere = truth.endFloat + truth.drivePlay;
  const [worst, tight] = [truth.greatest - elsewhere, truth.uniform - elsewhere];
  const least = 1e-9;
  if (worst + elsewhere <= limit + least) return "leave-alone";
  if (worst + remains <= limit + least) return "correct-end-float";
  if (worst - tight + clearance + remains > limit + least) return "remake-screw";
  const need = worst + remains - limit;
  const worn = tight + (nut.takeUpUsed ?? 0) - (nut.clearanceNew ?? 0);
  const serves =
    nut.adjustable === true &&
    need <= (nut.takeUpLeft ?? Number.POSITIVE_INFINITY) + least &&
    worn <= (nut.wearLimit ?? screw.lead / 8) + least;
  return serves ? "adjust-nut" : "replace-nuts";
}

describe("slides of every kind of wear", () => {
  it("are inspections that the program opens", () => {
    for (const { inspection } of slides) expect(z.safeParse(inspectionSchema, inspection).success).toBe(true);
  });

  it("are the same for the same seed", () => {
    const again = simulatedKind(KINDS[3], 300 + 7919 * 5);
    expect(again.inspection).toEqual(slides[3 * 40 + 5].inspection);
  });

  it("are read in both units, by every way of measuring, with end float unread, read once and read more often", () => {
    const surveys = slides.map(({ inspection }) => inspection.surveys[0]);
    expect(new Set(surveys.map(({ method }) => method)).size).toBe(3);
    expect(new Set(slides.map(({ inspection }) => inspection.slide.units)).size).toBe(2);
    expect(new Set(surveys.map(({ endFloat = [] }) => endFloat.length))).toEqual(new Set([0, 1, 2, 3]));
  });

  it("have readings that scatter about the truth by repeatability and rounding, where nothing else is wrong", () => {
    const off = slides
      .filter(({ truth }) => truth.error === 0 && truth.wobble === 0)
      .flatMap(({ inspection, truth }) => {
        const { slide, surveys } = inMillimetres(inspection);
        const { readings, resolution, roundings } = correct(surveys[0], slide.screw.lead);
        const deviation = Math.hypot(truth.repeatability, resolution.step * Math.sqrt(roundings / 12));
        return readings.map(({ position, value }) => (value - truth.backlash(position)) / deviation);
      });
    const mean = off.reduce((sum, each) => sum + each, 0) / off.length;
    const variance = off.reduce((sum, each) => sum + each ** 2, 0) / off.length;
    expect(off.length).toBeGreaterThan(5000);
    expect(Math.abs(mean)).toBeLessThan(0.05);
    expect(variance).toBeGreaterThan(0.9);
    expect(variance).toBeLessThan(1.1);
  });

  it("have readings off by no more than the indicator's error beside that", () => {
    for (const { inspection, truth } of slides.filter((each) => each.truth.error > 0)) {
      const { slide, surveys } = inMillimetres(inspection);
      const { readings, resolution } = correct(surveys[0], slide.screw.lead);
      const reach = truth.error + truth.wobble + 6 * truth.repeatability + 2 * resolution.step;
      for (const { position, value } of readings) {
        expect(Math.abs(value - truth.backlash(position))).toBeLessThan(reach);
      }
    }
  });

  it("have readings on the graduation", () => {
    for (const { inspection } of slides) {
      const [survey] = inMillimetres(inspection).surveys;
      const step = survey.method === "dial-pair" ? 0.5 : survey.indicator?.resolution;
      if (step === undefined) continue;
      const values = survey.readings.flatMap((each) =>
        isPair(each) ? [each.advancing, each.retracting] : isPositioning(each) ? [] : [each.backlash],
      );
      for (const value of values) {
        expect(Math.abs(value / step - Math.round(value / step))).toBeLessThan(1e-6);
      }
    }
  });

  it("have a profile that is least and greatest where the truth says so", () => {
    for (const { inspection, truth } of slides) {
      const { slide } = inMillimetres(inspection);
      const values = truth.profile.map(({ backlash }) => backlash);
      expect(truth.profile[0].position).toBe(0);
      expect(truth.profile.at(-1)?.position).toBeCloseTo(slide.travel.to, 9);
      expect(Math.min(...values)).toBeCloseTo(truth.uniform, 12);
      expect(truth.backlash(truth.tightAt)).toBeCloseTo(truth.uniform, 12);
      if (slide.workingRange === undefined) expect(Math.max(...values)).toBeCloseTo(truth.greatest, 12);
      else expect(truth.greatest).toBeLessThanOrEqual(Math.max(...values) + 1e-12);
      expect(truth.uneven).toBeCloseTo(truth.greatest - truth.uniform, 12);
      expect(truth.uniform).toBeGreaterThan(truth.endFloat + truth.drivePlay);
    }
  });

  it("have the verdict of the rules, end float put right as far as a bearing in order allows", () => {
    for (const slide of slides)
      expect(slide.truth.verdict).toBe(ruled(slide, Math.min(slide.truth.endFloat, 0.01)));
  });

  it("have one right answer, but for end float within a graduation of what is attainable, and for wobble", () => {
    for (const { truth } of slides) {
      if (truth.wobble > 0 || (truth.endFloat > 0.01 && truth.endFloat <= 0.1)) continue;
      expect(truth.answers).toHaveLength(1);
    }
  });

  it("leave uneven part, running clearance and end float after a nut was taken up that has enough left", () => {
    let seen = 0;
    for (const { inspection, truth } of slides) {
      const { nut, runningClearance = 0.025 } = inMillimetres(inspection).slide;
      const tight = truth.uniform - truth.endFloat - truth.drivePlay;
      if (nut?.takeUpLeft !== undefined || tight < runningClearance) continue;
      seen++;
      const remains = Math.min(truth.endFloat, 0.01);
      expect(truth.leftAfterAdjusting).toBeCloseTo(truth.uneven + runningClearance + remains, 9);
    }
    expect(seen).toBeGreaterThan(100);
  });

  it("have each of the five answers, none of them in more than half", () => {
    for (const action of ACTIONS) {
      const share = slides.filter(({ truth }) => truth.verdict === action).length / slides.length;
      expect(share).toBeGreaterThan(0.04);
      expect(share).toBeLessThan(0.5);
    }
  });
});
