import { describe, expect, it } from "vitest";
import { misfit } from "../../../src/analysis/checks/misfit.ts";
import { stationEffect } from "../../../src/analysis/checks/stationEffect.ts";
import { wobble, wobbleHeight } from "../../../src/analysis/checks/wobble.ts";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import reference from "../../reference/wobble.json" with { type: "json" };
import { pushPull, SETTINGS } from "../examples.ts";
import { CLEAN, surveyed } from "./checkInput.ts";

/** Stations 11 mm apart, which meet a screw of lead 4 mm at every quarter of a turn, and a profile of 0.2 mm. */
function rising(height: (position: number) => number, part: Parameters<typeof surveyed>[1] = {}) {
  const places = Array.from({ length: 25 }, (_, i) => 11 * i);
  const survey = pushPull(places.flatMap((at) => [[at, height(at)] as const, [at, height(at)] as const]));
  return surveyed(survey, { fitted: places.map(() => 0.2), outliers: [], ...part });
}

const sine = (height: number) => (position: number) =>
  0.2 + (height / 2) * Math.sin((2 * Math.PI * position) / 4 + 1);

describe("a wobble once per turn", () => {
  it("is warned of, with its height and the lead it follows", () => {
    const seen = rising(sine(0.03));
    expect(wobbleHeight(seen)).toBeCloseTo(0.03, 9);
    expect(wobble(seen)).toEqual([
      {
        check: "wobble once per turn",
        severity: "warning",
        message:
          "Lost motion rises and falls by about 0.03 mm once per turn of the screw (lead 4 mm), beside what wear explains: a screw that is bent, or turns off its centre. Read one stretch again at every quarter of a turn.",
        readings: Array.from({ length: 50 }, (_, i) => i),
      },
    ]);
  });

  it("is what least squares fit, and told where the F test has it for one chance in 500, as in R", () => {
    const { places, deviations, rare, height } = reference;
    /** Beside a profile that rises from end to end, with one station of which the readings are in doubt. */
    const seen = (times: number) => {
      const profile = [0.3, ...places.map((at) => 0.2 + 0.0005 * at)];
      const heights = places.map(
        (at, i) =>
          profile[i + 1] + 0.01 * Math.sin((2 * Math.PI * at) / 5 + 0.4) + times * deviations[i] + 0.004,
      );
      const survey = pushPull([[-3, 0.9], ...heights.map((value, i) => [places[i], value] as const)]);
      const settings = { ...SETTINGS, lead: 5 };
      const { clean, ...all } = surveyed(survey, { fitted: profile, settings });
      return { ...all, clean: all.stations.slice(1) };
    };
    expect(wobbleHeight(seen(0.99 * rare))).toBeCloseTo(height, 8);
    expect(wobbleHeight(seen(1.01 * rare))).toBeUndefined();
  });

  it("is told from four stations on, where they bear out nothing else", () => {
    const four = [0, 1, 2, 43];
    const survey = (count: number) =>
      surveyed(
        pushPull(
          four.slice(0, count).map((at) => [at, 0.2 + 0.05 * Math.sin((2 * Math.PI * at) / 4)] as const),
        ),
        { fitted: [0.2, 0.2, 0.2, 0.2] },
      );
    const all = survey(4);
    expect(wobbleHeight({ ...all, clean: all.stations })).toBeCloseTo(0.1, 9);
    const three = survey(3);
    expect(wobbleHeight({ ...three, clean: three.stations })).toBeUndefined();
  });

  it("is told instead of the low stations that it makes", () => {
    const seen = rising(sine(0.08), { stationEffect: { chance: 1 - 1e-9, deviation: 0.02 } });
    expect(wobble(seen)).toHaveLength(1);
    expect(misfit(seen)).toEqual([]);
    expect(stationEffect(seen)).toEqual([]);
  });

  it("is none where the stations meet the screw at one angle, or are too few", () => {
    const inStep = pushPull([0, 40, 80, 120, 160].map((at, i) => [at, 0.2 + 0.02 * (i % 2)] as const));
    expect(wobbleHeight(surveyed(inStep, { fitted: [0.2, 0.2, 0.2, 0.2, 0.2] }))).toBeUndefined();
    const three = pushPull([0, 41, 82].map((at, i) => [at, 0.2 + 0.02 * (i % 2)] as const));
    expect(wobbleHeight(surveyed(three, { fitted: [0.2, 0.2, 0.2] }))).toBeUndefined();
  });

  it("is found in one of five hundred surveys where there is none", () => {
    const normal = normals(seededRandom(3));
    let found = 0;
    for (let i = 0; i < 3000; i++)
      if (wobbleHeight(rising(() => 0.2 + 0.005 * normal())) !== undefined) found++;
    // Six are expected; by the binomial, more than fifteen come in one of two thousand tries.
    expect(found).toBeLessThanOrEqual(15);
    expect(found).toBeGreaterThan(0);
  });

  it("is none in a clean survey", () => {
    expect(wobble(surveyed(CLEAN))).toEqual([]);
  });
});
