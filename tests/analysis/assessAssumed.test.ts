import { describe, expect, it } from "vitest";
import { pushPull } from "./examples.ts";
import { assess, POSITIONS, SURVEY } from "./knownDraws.ts";

describe("what is assumed", () => {
  it("includes the resolution where it was found from the readings", () => {
    const { indicator: _, ...survey } = pushPull(POSITIONS.map((position, i) => [position, 0.3 + 0.02 * i]));
    const { assumed, resolution } = assess(survey);
    expect(resolution).toBeCloseTo(0.02, 9);
    expect(assumed).toContain(
      "The indicator's resolution is 0.02 mm, the graduation that all readings lie on.",
    );
    expect(assess().assumed.some((line) => line.includes("resolution"))).toBe(false);
  });

  it("includes every default of the slide", () => {
    expect(assess().assumed).toContain("The nut is adjustable.");
    expect(assess(SURVEY, { nut: { adjustable: true } }).assumed).not.toContain("The nut is adjustable.");
  });

  it("is told in the inspection's unit", () => {
    const inches = pushPull([[1, 0.01]], { indicator: { resolution: 0.001 } });
    const { assumed } = assess(inches, { units: "in", travel: { from: 0, to: 10 }, backlashLimit: 0.005 });
    expect(assumed).toContain("A nut is left 0.001 in of running clearance at the tight spot.");
  });
});
