import { describe, expect, it } from "vitest";
import { assessSurvey } from "../../src/analysis/assess.ts";
import type { Assessment, Estimate, ProfilePoint } from "../../src/analysis/assessment.ts";
import reference from "../reference/profiles.json" with { type: "json" };
import { assessed, inspectionOf, pushPull } from "./examples.ts";

/** The assessment of the slide of the reference values, whose script stands beside them. */
function assessedAs(readings: readonly number[]): Assessment {
  const placed = readings.map((backlash, i) => [reference.positions[i], backlash] as const);
  const survey = pushPull(placed, { indicator: { resolution: 0.001 } });
  return assessed(inspectionOf(survey, { nut: { engagedLength: 20 } }));
}

/** The profile at a position, by straight lines between its points. */
function pointAt({ profile }: Assessment, position: number): ProfilePoint {
  const after = Math.max(
    1,
    profile.findIndex((point) => point.position >= position),
  );
  const [a, b] = [profile[after - 1], profile[after]];
  const share = (position - a.position) / (b.position - a.position);
  const between = (of: (point: ProfilePoint) => number): number => of(a) + share * (of(b) - of(a));
  return {
    position,
    backlash: between((point) => point.backlash),
    low: between((point) => point.low),
    high: between((point) => point.high),
  };
}

/** Each within the other's interval: what chance in the draws explains. */
function expectSame(a: Estimate, b: Estimate): void {
  expect(a.value).toBeGreaterThan(b.low);
  expect(a.value).toBeLessThan(b.high);
  expect(b.value).toBeGreaterThan(a.low);
  expect(b.value).toBeLessThan(a.high);
}

describe("the profile against R", () => {
  it("of an even slide is the mean of all readings, known as well as lm knows it", () => {
    const { mean, se, sigma, readings } = reference.even;
    const { uniform, unevenChance, repeatability } = assessedAs(readings);
    expect(Math.abs(uniform.value - mean)).toBeLessThan(se);
    expect((uniform.high - uniform.low) / (2 * 1.96 * se)).toBeGreaterThan(0.6);
    expect((uniform.high - uniform.low) / (2 * 1.96 * se)).toBeLessThan(2);
    expect(unevenChance).toBeLessThan(0.5);
    expect(repeatability / sigma).toBeGreaterThan(0.7);
    expect(repeatability / sigma).toBeLessThan(1.4);
  });

  it("of a tapered slide is lm's straight line at both ends", () => {
    const { at, fit, se, readings, sigma } = reference.taper;
    const assessment = assessedAs(readings);
    at.forEach((position, i) => {
      expect(Math.abs(pointAt(assessment, position).backlash - fit[i])).toBeLessThan(2 * se[i]);
    });
    const rise = fit[1] - fit[0];
    expect(Math.abs(assessment.uneven.value - rise)).toBeLessThan(2 * sigma);
    expect(assessment.unevenChance).toBeGreaterThan(0.99);
    expect(assessment.tightSpot.position).toBeLessThan(20);
    expect(assessment.loosestSpot.position).toBeGreaterThan(280);
  });

  it("of a slide with a soft patch agrees with the band of mgcv's gam all along", () => {
    const { at, fit, se, readings } = reference.patch;
    const assessment = assessedAs(readings);
    at.forEach((position, i) => {
      const { backlash, low, high } = pointAt(assessment, position);
      expect(fit[i] + 3 * se[i]).toBeGreaterThan(low);
      expect(fit[i] - 3 * se[i]).toBeLessThan(high);
      expect(Math.abs(backlash - fit[i])).toBeLessThan(0.012);
    });
    expect(assessment.verdict).toBe("remake-screw");
  });
});

describe("the profile", () => {
  it("gives the same answer to the same readings", () => {
    expect(assessedAs(reference.patch.readings)).toEqual(assessedAs(reference.patch.readings));
  });

  it("does not change its verdict with the order of readings, the unit, or a shifted or mirrored travel", () => {
    const { readings } = reference.patch;
    const usual = assessedAs(readings);
    const inches = assessSurvey(
      {
        format: "tightspot-inspection",
        version: 1,
        slide: {
          id: "slide",
          name: "Cross slide",
          units: "in",
          travel: { from: -300 / 25.4, to: 0 },
          screw: { lead: 4 / 25.4 },
          nut: { engagedLength: 20 / 25.4 },
          backlashLimit: 0.15 / 25.4,
        },
        surveys: [
          {
            id: "survey",
            taken: "2026-03-14",
            stage: "before-repair",
            method: "push-pull",
            indicator: { resolution: 0.001 / 25.4 },
            readings: readings
              .map((backlash, i) => ({ position: -reference.positions[i] / 25.4, backlash: backlash / 25.4 }))
              .reverse(),
          },
        ],
      },
      "survey",
    );
    if (!inches.ok) throw new Error(inches.problem.what);
    expect(inches.value.verdict).toBe(usual.verdict);
    expectSame(inches.value.uneven, usual.uneven);
    expectSame(inches.value.uniform, usual.uniform);
    expect(inches.value.loosestSpot.position).toBeCloseTo(-usual.loosestSpot.position, -1);
  });

  it("bounds the screw's wear by the rise above the tight spot, half a nut to either side", () => {
    const { wornZones, uneven } = assessedAs(reference.patch.readings);
    expect(wornZones).toHaveLength(1);
    const [zone] = wornZones;
    // The bell rises to a half of its height 53 mm from its middle; the nut's half length of 10 mm comes on top.
    expect(zone.from).toBeGreaterThan(140 - 53 - 10 - 8);
    expect(zone.from).toBeLessThan(140 - 53);
    expect(zone.to).toBeGreaterThan(140 + 53);
    expect(zone.to).toBeLessThan(140 + 53 + 10 + 8);
    expect(zone.atLeast).toBeLessThan(uneven.value);
    expect(zone.atLeast).toBeGreaterThan(0.1);
  });
});
