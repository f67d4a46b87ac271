import { describe, expect, it } from "vitest";
import { alternativesOf } from "../../../src/report/evidence/alternatives.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";

const { settings } = exampleAssessment();
const { slide } = exampleInspection();

describe("alternatives to a new screw", () => {
  it("are named only where the screw is to be remade", () => {
    expect(alternativesOf(exampleAssessment(), slide)).not.toEqual([]);
    for (const verdict of ["adjust-nut", "replace-nuts", "measure-more", "no-verdict"] as const) {
      expect(alternativesOf(exampleAssessment({ verdict }), slide)).toEqual([]);
    }
  });

  it("name recutting up to a tenth of the thread's thickness, half the pitch", () => {
    const recut = (low: number): boolean => {
      const deepest = { value: low + 0.02, low, high: low + 0.04 };
      const wornZones = exampleAssessment().wornZones.map((zone) => ({ ...zone, deepest }));
      return alternativesOf(exampleAssessment({ wornZones }), slide).some((text) =>
        /Recut.*no more than 0.2 mm/.test(text),
      );
    };
    // Pitch 4 mm: thread 2 mm thick, a tenth is 0.2 mm.
    expect(recut(0.15)).toBe(true);
    expect(recut(0.21)).toBe(false);
  });

  it("name turning end for end where the worn part then lies outside the working range", () => {
    const turned = (workingRange: { from: number; to: number }): string | undefined =>
      alternativesOf(exampleAssessment({ settings: { ...settings, workingRange } }), slide).find((text) =>
        text.startsWith("Turn"),
      );
    // The worn zone from 75 to 145 of 0 to 300 lies from 155 to 225 when turned.
    expect(turned({ from: 0, to: 150 })).toContain("from about 155 mm to 225 mm");
    expect(turned({ from: 0, to: 160 })).toBeUndefined();
    expect(turned({ from: 0, to: 300 })).toBeUndefined();
  });

  it("name stops over the longest stretch that adjusting would bring within the limit", () => {
    // Left is 0.035 + 0.2 exp(-((x - 110) / 35)²), within 0.15 from x = 110 + 35 √ln(0.2 / 0.115) = 136.03 on.
    const stops = alternativesOf(exampleAssessment(), slide).find((text) => text.startsWith("Limit"));
    expect(stops).toContain("from about 138 mm to 300 mm");
  });

  it("name no stops where the working range was stated, for it is needed", () => {
    const stated = exampleInspection({ workingRange: { from: 0, to: 300 } }).slide;
    expect(alternativesOf(exampleAssessment(), stated).some((text) => text.startsWith("Limit"))).toBe(false);
  });

  it("name no stops that would leave less than half the travel", () => {
    const tight = { ...settings, limit: 0.036 };
    const texts = alternativesOf(exampleAssessment({ settings: tight }), slide);
    expect(texts.some((text) => text.startsWith("Limit"))).toBe(false);
  });
});
