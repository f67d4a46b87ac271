import { describe, expect, it } from "vitest";
import { resultOf } from "../../src/report/result.ts";
import { exampleAssessment } from "./exampleAssessment.ts";
import { exampleInspection } from "./exampleInspection.ts";
import { resultSchema } from "./resultSchema.ts";

const result = resultOf("cross-slide.json", exampleAssessment(), exampleInspection());

describe("the result", () => {
  it("has the published keys and no others, also after being written and read", () => {
    expect(resultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
  });

  it("gives a slide kept in inches its lengths in inches", () => {
    const inches = resultOf("x.json", exampleAssessment(), exampleInspection({ units: "in" }));
    // 0.11 mm / 25.4 = 0.004331 in; 110 mm = 4.330709 in; 0.006 mm = 0.000236 in.
    expect(inches.units).toBe("in");
    expect(inches.uniform.value).toBe(0.004331);
    expect(inches.loosestSpot.position).toBe(4.330709);
    expect(inches.afterAdjusting.position).toBe(4.330709);
    expect(inches.wornZones[0]?.atLeast).toBe(0.005906);
    // 0.312 mm over 25.4; a share of the thread's thickness is the same in every unit.
    expect(inches.wornZones[0]?.deepest.value).toBe(0.012283);
    expect(inches.wornZones[0]?.thicknessLeft?.value).toBe(0.844);
    expect(inches.repeatability).toBe(0.000236);
    expect(inches.uncertainty.lines[0]?.standard).toBe(0.000157);
    expect(inches.profile.at(-1)?.position).toBe(11.811024);
  });

  it("does not convert chances, nor the numbers of readings", () => {
    const checks = [
      { check: "outlier", severity: "warning", message: "One is off.", readings: [3] },
    ] as const;
    const inches = resultOf("x.json", exampleAssessment({ checks }), exampleInspection({ units: "in" }));
    expect(inches.unevenChance).toBe(0.999);
    expect(inches.chances?.["remake-screw"]).toBe(0.99);
    expect(inches.checks).toEqual(checks);
  });

  it("gives what adjusting and what new nuts leave, and the greatest lost motion, each its own key", () => {
    const changed = exampleAssessment({
      greatest: { value: 0.32, low: 0.3, high: 0.37 },
      afterNewNuts: { worst: { value: 0.127, low: 0.1, high: 0.15 }, position: 127 },
    });
    const inches = resultOf("x.json", changed, exampleInspection({ units: "in" }));
    expect(inches.greatest.high).toBe(0.014567);
    expect(inches.afterNewNuts.worst.value).toBe(0.005);
    expect(inches.afterNewNuts.position).toBe(5);
    expect(inches.afterAdjusting.worst.value).toBe(0.009252);
  });

  it("has chances that add up to one as they are written", () => {
    const third = 1 / 3;
    const chances = {
      "leave-alone": 0,
      "correct-end-float": third,
      "adjust-nut": third,
      "replace-nuts": 0,
      "remake-screw": third,
    };
    const written = resultOf("x.json", exampleAssessment({ chances }), exampleInspection()).chances;
    expect(Object.values(written ?? {}).toSorted()).toEqual([0, 0, 0.333333, 0.333333, 0.333334]);
  });

  it("hides the traces of binary fractions", () => {
    const uneven = { value: 0.1 + 0.2, low: 0.28, high: 0.32 };
    expect(resultOf("x.json", exampleAssessment({ uneven }), exampleInspection()).uneven.value).toBe(0.3);
  });

  it("keeps null for what is not known or not given", () => {
    const silent = resultOf(
      "x.json",
      exampleAssessment({
        verdict: "no-verdict",
        reasons: ["holds-load"],
        chances: null,
        likeliest: null,
        endFloat: null,
      }),
      exampleInspection(),
    );
    expect(resultSchema.parse(JSON.parse(JSON.stringify(silent)))).toEqual(silent);
    expect([silent.chances, silent.endFloat]).toEqual([null, null]);
  });

  it("asks for end float in the next readings by its own key", () => {
    const nextReadings = [
      { endFloat: true, why: "It decides." },
      { position: 25.4, why: "It may be the tight spot." },
    ] as const;
    const inches = resultOf(
      "x.json",
      exampleAssessment({ nextReadings }),
      exampleInspection({ units: "in" }),
    );
    expect(inches.nextReadings).toEqual([
      { endFloat: true, why: "It decides." },
      { position: 1, why: "It may be the tight spot." },
    ]);
  });

  it("refuses to hold a number that JSON cannot", () => {
    const takeUp = { value: Number.POSITIVE_INFINITY, low: 0, high: Number.POSITIVE_INFINITY };
    expect(() => resultOf("x.json", exampleAssessment({ takeUp }), exampleInspection())).toThrow(RangeError);
  });
});
