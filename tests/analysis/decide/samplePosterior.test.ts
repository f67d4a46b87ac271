import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { fitAtStations, samplePosterior } from "../../../src/analysis/decide/samplePosterior.ts";
import type { ProfileModel } from "../../../src/analysis/profile/draws.ts";
import { drawsOf, pushPull, SETTINGS } from "../examples.ts";
import { ADJUST, POSITIONS, SURVEY } from "../knownDraws.ts";

function sampled(part: { readonly drivePlay?: number; readonly profile?: ProfileModel } = {}) {
  const corrected = correct(SURVEY, 4);
  const input = { settings: SETTINGS, corrected, endFloat: SURVEY.endFloat, drivePlay: part.drivePlay ?? 0 };
  return samplePosterior(stationsOf(corrected.readings), input, part.profile ?? ADJUST);
}

describe("a posterior sample", () => {
  it("subtracts end float and drive play from the tight and the loosest spot of every draw", () => {
    const { stations, extremes, endFloat } = sampled({ drivePlay: 0.03 });
    expect(endFloat.measured).toBe(true);
    expect(stations.map(({ position }) => position)).toEqual(POSITIONS);
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
});

describe("the fit at the stations", () => {
  const positions = [0, 50, 100, 150];
  const fitOf = (stationAt: readonly number[], effects: readonly number[]) => {
    const profiles = [0.1, 0.2, 0.6].map((level) => positions.map((_, i) => level + 0.01 * i));
    const profile = drawsOf(positions, profiles, 0.004);
    const draws = profile.draws.map((draw, i) => ({ ...draw, stationEffect: effects[i] }));
    const corrected = correct(pushPull(stationAt.map((position) => [position, 0.2] as const)), 4);
    const input = { settings: SETTINGS, corrected, endFloat: undefined, drivePlay: 0 };
    return fitAtStations(
      samplePosterior(stationsOf(corrected.readings), input, () => ({ ...profile, draws })),
    );
  };

  it("has the median profile at each station, and at the nearest end for one beyond the travel", () => {
    const { fitted } = fitOf([-10, 50, 100.0005, 170], [0, 0, 0]);
    expect(fitted).toHaveLength(4);
    [0.2, 0.21, 0.22, 0.23].forEach((backlash, i) => {
      expect(fitted[i]).toBeCloseTo(backlash, 12);
    });
  });

  it("has the chance of a station effect, and its size if there is one", () => {
    const { stationEffect } = fitOf([0], [0, 0.003, 0.009]);
    expect(stationEffect.chance).toBeCloseTo(2 / 3, 12);
    expect(stationEffect.deviation).toBeCloseTo(0.006, 12);
    expect(fitOf([0], [0, 0, 0]).stationEffect).toEqual({ chance: 0, deviation: 0 });
  });
});
