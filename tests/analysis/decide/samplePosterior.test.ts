import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { takenUp } from "../../../src/analysis/decide/decision.ts";
import {
  checkInputOf,
  removedEverywhere,
  samplePosterior,
  worstLeft,
} from "../../../src/analysis/decide/samplePosterior.ts";
import type { ProfileModel } from "../../../src/analysis/profile/draws.ts";
import { drawsOf, pushPull, SETTINGS } from "../examples.ts";
import { ADJUST, model, POSITIONS, SURVEY } from "../knownDraws.ts";

function judged(part: { readonly drivePlay?: number; readonly profile?: ProfileModel } = {}) {
  const corrected = correct(SURVEY, 4);
  const given = { settings: SETTINGS, corrected, endFloat: SURVEY.endFloat, drivePlay: part.drivePlay ?? 0 };
  return samplePosterior(corrected.readings, given, part.profile ?? ADJUST);
}

describe("a judgement", () => {
  it("takes end float and drive play off the tight and the loosest spot of every draw", () => {
    const { extremes, endFloat } = judged({ drivePlay: 0.03 });
    expect(endFloat.measured).toBe(true);
    expect(extremes).toHaveLength(3);
    [
      [0.3, 0.28],
      [0.33, 0.29],
      [0.36, 0.3],
    ].forEach(([loose, tight], i) => {
      expect(extremes[i].worst).toBeCloseTo(loose - 0.05, 5);
      expect(extremes[i].tight).toBeCloseTo(tight - 0.05, 5);
      expect(extremes[i].endFloat).toBeCloseTo(0.02, 5);
      expect(extremes[i].drivePlay).toBe(0.03);
    });
  });

  it("applies the rule to every draw", () => {
    const { margins, chances } = judged({
      profile: model(
        { tight: 0.1, loose: 0.12 },
        { tight: 0.3, loose: 0.32 },
        { tight: 0.1, loose: 0.4 },
        { tight: 0.1, loose: 0.5 },
      ),
    });
    expect(margins.map(({ asFound }) => Math.round(asFound * 1000))).toEqual([30, -170, -250, -350]);
    expect(chances).toEqual({
      "leave-alone": 0.25,
      "correct-end-float": 0,
      "adjust-nut": 0.25,
      "replace-nuts": 0,
      "remake-screw": 0.5,
    });
  });

  it("leaves end float of 0.01 mm and running clearance above the tight spot, and nothing below nothing", () => {
    const judgement = judged();
    const left = worstLeft(judgement, SETTINGS, takenUp);
    [0.02, 0.04, 0.06].forEach((uneven, i) => {
      expect(left[i]).toBeCloseTo(uneven + 0.025 + 0.01, 5);
    });
    expect(worstLeft(judgement, SETTINGS, () => 1)).toEqual([0, 0, 0]);
  });

  it("removes what the nut takes up, drive play, and what end float is more than can stay", () => {
    const less = removedEverywhere(judged({ drivePlay: 0.03 }), SETTINGS);
    [0.28, 0.29, 0.3].forEach((tight, i) => {
      // All but running clearance and 0.01 mm of end float.
      expect(less[i]).toBeCloseTo(tight - 0.025 - 0.01, 5);
    });
  });
});

describe("what the checks see of a judgement", () => {
  const positions = [0, 50, 100, 150];
  const seen = (stationAt: readonly number[], effects: readonly number[]) => {
    const profiles = [0.1, 0.2, 0.6].map((level) => positions.map((_, i) => level + 0.01 * i));
    const profile = drawsOf(positions, profiles, 0.004);
    const draws = profile.draws.map((draw, i) => ({ ...draw, stationEffect: effects[i] }));
    const corrected = correct(pushPull(stationAt.map((position) => [position, 0.2] as const)), 4);
    const given = { settings: SETTINGS, corrected, endFloat: undefined, drivePlay: 0 };
    return checkInputOf(samplePosterior(corrected.readings, given, () => ({ ...profile, draws })));
  };

  it("is the median profile at each station, and at the nearest end for one beyond the travel", () => {
    const { fitted, stations, repeatability } = seen([-10, 50, 100.0005, 170], [0, 0, 0]);
    expect(stations).toHaveLength(4);
    [0.2, 0.21, 0.22, 0.23].forEach((backlash, i) => {
      expect(fitted[i]).toBeCloseTo(backlash, 12);
    });
    expect(repeatability).toBe(0.004);
  });

  it("is the chance of a station effect, and its size where there is one", () => {
    const { stationEffect } = seen([0], [0, 0.003, 0.009]);
    expect(stationEffect.chance).toBeCloseTo(2 / 3, 12);
    expect(stationEffect.deviation).toBeCloseTo(0.006, 12);
    expect(seen([0], [0, 0, 0]).stationEffect).toEqual({ chance: 0, deviation: 0 });
  });

  it("has all stations of the survey", () => {
    expect(checkInputOf(judged()).stations.map(({ position }) => position)).toEqual(POSITIONS);
  });
});
