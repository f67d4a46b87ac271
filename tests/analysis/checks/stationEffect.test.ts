import { describe, expect, it } from "vitest";
import { stationEffect } from "../../../src/analysis/checks/stationEffect.ts";
import { pushPull } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

const PLACES = Array.from({ length: 13 }, (_, i) => 25 * i);
/** Far apart for the nut, so that wear explains them: two stations lie 0.05 mm below those beside them. */
const UNEVEN = pushPull(
  [...PLACES, ...PLACES.toReversed()].map((position) => [
    position,
    position === 75 || position === 200 ? 0.15 : 0.2,
  ]),
);

const at = (chance: number, survey = UNEVEN) =>
  stationEffect(surveyed(survey, { stationEffect: { chance, deviation: 0.009 } }));

describe("stations that differ by more than their repeats", () => {
  it("are warned of, by how much", () => {
    const [finding] = at(1 - 1e-9);
    expect(finding.check).toBe("stations differ by more than repeats do");
    expect(finding.severity).toBe("warning");
    expect(finding.message).toContain("by about 0.02 mm");
  });

  it("are told of where the readings make it five hundred times as likely as it was, by its odds", () => {
    const chances = Array.from({ length: 4000 }, (_, i) => 1 - Math.exp(-i / 300));
    const first = chances.find((chance) => at(chance).length > 0) ?? 0;
    const before = first / (1 - first) / 500;
    // Beforehand it is thought to be unlikely, though not out of the question.
    expect(before).toBeGreaterThan(0.01);
    expect(before).toBeLessThan(1);
  });

  it("are not told of where no station lies below those beside it: high ones may be wear", () => {
    expect(at(1 - 1e-9, CLEAN)).toEqual([]);
  });
});
