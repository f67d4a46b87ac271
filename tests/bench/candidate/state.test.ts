import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "../../analysis/profile/data.ts";
import { closed } from "./closing.ts";
import { discrepancyOf, EVEN, numbersOf, posteriorOf } from "./posterior.ts";
import { normalChance, normalDensity } from "./quadrature.ts";
import { logDepthPrior, type State, statesOf } from "./state.ts";
import { WEAR_SHAPES } from "./wearShapes.ts";

const READINGS = [
  [0, 0.2, 0.21],
  [120, 0.26, 0.26],
  [240, 0.3, 0.31],
  [300, 0.22, 0.21],
] as const;
/** A bump at 210 mm, 71 mm wide, met by a nut of 24 mm: a deepest wear of 0.1 mm leaves 0.037 mm at 240 mm. */
const COARSE = sweeps(
  [
    [0, 0.2, 0.21],
    [120, 0.2, 0.2],
    [240, 0.24, 0.23],
    [300, 0.2, 0.21],
  ],
  { resolution: 0.01 },
);
const FINE = sweeps(READINGS, { resolution: 0.001, engagedLength: 60 });
const BUMP = WEAR_SHAPES.findIndex(({ name }) => name === "bump");
const PER_FLANK = WEAR_SHAPES.findIndex(({ name }) => name === "a bump on each flank");

describe("the weight of a state", () => {
  it("is its likelihood with readings rounded, over that of the normal curves", () => {
    const posterior = posteriorOf(COARSE, seededRandom(2));
    const states = statesOf(posterior);
    const u = Float64Array.of(0.7, 0.5, 0.5, 0.2);
    const drawn = states.draw(states.scored({ shape: BUMP, u }));
    const scatter = 5;
    const { sigma, tau, logPrior } = posterior.grid[scatter];
    expect(tau).toBe(0);
    const state = states.changed(drawn, { level: 0.2, depth: 0.1, scatter });
    const exact = COARSE.stations.reduce((sum, { readings }, i) => {
      const backlash = 0.2 + 0.1 * state.engaged[i];
      const chances = readings.map(({ value }) =>
        normalChance((value - 0.005 - backlash) / sigma, (value + 0.005 - backlash) / sigma),
      );
      return sum + chances.reduce((total, chance) => total + Math.log(chance), 0);
    }, logPrior + logDepthPrior(0.1));
    expect(Math.abs(states.logNormal(state) + state.logWeight - exact)).toBeLessThan(0.1);
  });

  it("makes a negative level unlikely, by its distance in deviations of a reading", () => {
    const none = sweeps([[0, 0]], { resolution: 0.01 });
    const posterior = posteriorOf(none, seededRandom(2));
    const states = statesOf(posterior);
    const even = states.draw(states.scored({ shape: EVEN, u: new Float64Array(0) }));
    const weigh = (level: number) => states.changed(even, { level, depth: 0, scatter: 4 }).logWeight;
    // Readings of nothing fit a level as far above as below.
    const { sigma } = posterior.grid[4];
    expect(weigh(-sigma) - weigh(sigma)).toBeCloseTo(-0.5, 6);
  });
});

describe("the profile of a state with a discrepancy", () => {
  const posterior = posteriorOf(FINE, seededRandom(3));
  const states = statesOf(posterior);

  /** A state of the shape with some discrepancy. */
  function drawn(shape: number, ...numbers: readonly number[]): State {
    const u = new Float64Array(numbersOf(shape, posterior)).fill(0.5);
    u.set(numbers);
    u[u.length - 2] = 0.2;
    u[u.length - 1] = 0.999;
    expect(discrepancyOf({ shape, u }, posterior)).toBeGreaterThan(0);
    return states.draw(states.scored({ shape, u }));
  }

  it("obeys the nut: closing it over the nut changes nothing", () => {
    for (let i = 0; i < 20; i++) {
      const profile = states.profileOf(drawn(BUMP));
      const again = closed(profile, posterior.positions, 60);
      profile.forEach((value, at) => {
        expect(again[at]).toBeCloseTo(value, 9);
      });
    }
  });

  it("is nowhere below its level", () => {
    for (let i = 0; i < 20; i++) {
      const state = drawn(BUMP);
      expect(Math.min(...states.profileOf(state))).toBeGreaterThanOrEqual(state.level - 1e-12);
    }
  });

  it("may have a low place narrower than the nut where the flanks wear in different places", () => {
    // Bumps of half the depth at a third and at two thirds of the travel, with a nut of a fifth of it.
    const state = drawn(PER_FLANK, 0.32, 0.5, 0.5, 0.68, 0.5, 0.5, 0.5);
    const path = (state.path ?? new Float64Array(0)).fill(0);
    const profile = states.profileOf({ ...state, path, level: 0.1, depth: 0.2 });
    const bare = states.profileOf({ ...state, path: undefined, level: 0.1, depth: 0.2 });
    profile.forEach((value, at) => {
      expect(value).toBeCloseTo(bare[at], 9);
    });
  });
});

describe("the prior of the depth", () => {
  it("forbids negative depths, and is a mixture of half-normals above", () => {
    expect(logDepthPrior(-1e-6)).toBe(Number.NEGATIVE_INFINITY);
    const expected = [0.03, 0.1, 0.3].reduce(
      (sum, scale) => sum + (2 * normalDensity(0.07, scale ** 2)) / 3,
      0,
    );
    expect(logDepthPrior(0.07)).toBeCloseTo(Math.log(expected), 12);
  });
});
