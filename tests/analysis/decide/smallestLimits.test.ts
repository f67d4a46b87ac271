import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ACTIONS } from "../../../src/analysis/assessment.ts";
import { chancesOf, type Extremes } from "../../../src/analysis/decide/decision.ts";
import { smallestLimits } from "../../../src/analysis/decide/smallestLimits.ts";
import { SETTINGS } from "../examples.ts";

const draw = (worst: number, tight: number, endFloat = 0.01): Extremes => ({
  worst,
  tight,
  endFloat,
  drivePlay: 0,
});

describe("the smallest limit that each step keeps", () => {
  it("is, of a profile that is known, lost motion as found, and what each step leaves of it", () => {
    const limits = smallestLimits([draw(0.3, 0.2, 0.05)], { ...SETTINGS, takeUpLeft: 0.1 });
    const shown = limits.map(({ action, sure }) => [action, sure.toFixed(3)]);
    expect(shown).toEqual([
      ["leave-alone", "0.350"],
      ["correct-end-float", "0.310"],
      ["adjust-nut", "0.210"],
      ["replace-nuts", "0.135"],
      ["remake-screw", "0.035"],
    ]);
  });

  it("is kept in 19 draws of 20, and possible from the first that is more than one in twenty", () => {
    const draws = Array.from({ length: 100 }, (_, i) => draw(0.2 + i / 1000, 0.1));
    const [asFound] = smallestLimits(draws, SETTINGS);
    expect(asFound.possible).toBeCloseTo(0.2 + 0.004 + 0.01, 9);
    expect(asFound.sure).toBeCloseTo(0.2 + 0.094 + 0.01, 9);
  });

  it("is not told of a step that would be work for nothing", () => {
    const actions = (part: Partial<typeof SETTINGS>) =>
      smallestLimits([draw(0.3, 0.2)], { ...SETTINGS, ...part }).map(({ action }) => action);
    expect(actions({})).toEqual(["leave-alone", "adjust-nut", "remake-screw"]);
    expect(actions({ adjustable: false })).toEqual(["leave-alone", "replace-nuts", "remake-screw"]);
    expect(actions({ wearLimit: 0.1 })).toEqual(["leave-alone", "replace-nuts", "remake-screw"]);
    expect(actions({ takeUpLeft: 0 })).toEqual(["leave-alone", "replace-nuts", "remake-screw"]);
  });

  it("is the limit from which on the rule comes to that step or an easier one, and not before", () => {
    const length = (max: number) => fc.integer({ min: 0, max }).map((microns) => microns / 1000);
    const draws = fc.array(
      fc.record({ tight: length(300), rise: length(300), endFloat: length(60), drivePlay: length(40) }),
      { minLength: 1, maxLength: 60 },
    );
    const settings = fc.record({
      adjustable: fc.boolean(),
      runningClearance: length(60),
      takeUpLeft: length(300),
      wearLimit: length(400),
    });
    fc.assert(
      fc.property(draws, settings, (found, part) => {
        const extremes = found.map(({ tight, rise, ...rest }) => ({ tight, worst: tight + rise, ...rest }));
        const enough = (limit: number, upTo: number): boolean => {
          const chances = chancesOf(extremes, { ...SETTINGS, ...part, limit });
          return ACTIONS.slice(0, upTo + 1).reduce((sum, action) => sum + chances[action], 0) >= 0.95 - 1e-9;
        };
        const attainable = part.runningClearance + SETTINGS.endFloatAttainable;
        for (const { action, sure } of smallestLimits(extremes, { ...SETTINGS, ...part })) {
          expect(sure).toBeGreaterThanOrEqual(attainable);
          expect(enough(sure, ACTIONS.indexOf(action))).toBe(true);
          if (sure > attainable) expect(enough(sure - 1e-6, ACTIONS.indexOf(action))).toBe(false);
        }
      }),
    );
  });
});
