import { beforeEach, describe, expect, it } from "vitest";
import { gridOf, type ProfileData, type ProfileDraws } from "../../../src/analysis/profile/draws.ts";
import { screwProfile } from "../../../src/analysis/profile/screw.ts";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "./data.ts";
import { momentsIn } from "./quadrature.ts";

/** Readings of a truth with normal scatter, rounded to 0.01 mm, two at each of so many stations over 300 mm. */
function read(
  truth: (position: number) => number,
  stations = 21,
  part: Partial<ProfileData> = {},
): ProfileData {
  const normal = normals(seededRandom(51));
  const reading = (position: number) => Math.round((truth(position) + 0.003 * normal()) / 0.01) * 0.01;
  return sweeps(
    Array.from({ length: stations }, (_, i) => {
      const position = (300 * i) / (stations - 1);
      return [position, reading(position), reading(position)] as const;
    }),
    part,
  );
}

const profileOf = (data: ProfileData) => screwProfile(data, seededRandom(52));

/** Two straight edges of 10 mm, and between them a level stretch that is 0.2 mm deeper. */
const plateau = (position: number) =>
  0.1 + 0.2 * Math.max(0, Math.min(1, (position - 90) / 10, (220 - position) / 10));

/** A sharp peak half a step of the grid off, met by a short nut. */
const narrow = (part: Partial<ProfileData> = {}) =>
  read((position) => 0.1 + 0.2 * Math.exp(-Math.abs(position - 151.5) / 8), 21, {
    engagedLength: 4,
    ...part,
  });

describe("draws of the profile", () => {
  const data = read(plateau, 21, { workingRange: { from: 0, to: 160.5 } });
  const within = (position: number) => position <= 160.5;
  let profile: ProfileDraws;

  beforeEach(() => {
    profile = profileOf(data);
  });

  it("are kept at the grid's positions", () => {
    const { positions, draws } = profile;
    expect([...positions]).toEqual([...gridOf(data)]);
    expect(draws.every(({ backlash }) => backlash.length === positions.length)).toBe(true);
    expect(draws.length).toBeGreaterThan(200);
  });

  it("have their tight spot where they are least over the travel", () => {
    const { positions, draws } = profile;
    for (const { backlash, tight } of draws) {
      expect(tight.backlash).toBe(Math.min(...backlash));
      expect(backlash[positions.indexOf(tight.position)]).toBe(tight.backlash);
    }
  });

  it("have their loosest spot in the working range, nowhere exceeded there", () => {
    const { positions, draws } = profile;
    for (const { backlash, loose, stationEffect } of draws) {
      const greatest = Math.max(...backlash.filter((_, i) => within(positions[i])));
      expect(loose.backlash).toBeGreaterThanOrEqual(greatest + Math.SQRT2 * stationEffect - 1e-12);
      expect(loose.backlash).toBeLessThan(greatest + Math.SQRT2 * stationEffect + 0.05);
      expect(within(loose.position)).toBe(true);
    }
  });

  it("are uneven in the share that is told as the chance of it", () => {
    const { draws, unevenChance } = profile;
    const uneven = draws.filter(({ loose, tight }) => loose.backlash - tight.backlash > 0.001).length;
    expect(unevenChance).toBe(uneven / draws.length);
  });

  it("are the same for the same seed", () => {
    expect(profileOf(data)).toEqual(profile);
  });
});

describe("a screw with one level worn stretch", () => {
  let profile: ProfileDraws;
  const at = (position: number) => {
    const { positions, draws } = profile;
    const index = positions.indexOf(position);
    return momentsIn(draws.map(({ backlash }) => backlash[index]));
  };

  beforeEach(() => {
    profile = profileOf(read(plateau));
  });

  it("is found, with its depth and its level", () => {
    expect(profile.unevenChance).toBe(1);
    for (const [position, truth] of [
      [30, 0.1],
      [60, 0.1],
      [120, 0.3],
      [150, 0.3],
      [210, 0.3],
      [270, 0.1],
    ]) {
      const { mean, deviation } = at(position);
      expect(Math.abs(mean - truth)).toBeLessThan(0.006);
      expect(deviation).toBeLessThan(0.008);
    }
  });

  it("is known less well within its edges than along its level stretches", () => {
    expect(at(93).deviation).toBeGreaterThan(2 * at(150).deviation);
  });

  it("is read with a scatter near to the one it was made with", () => {
    const { mean } = momentsIn(profile.draws.map(({ repeatability }) => repeatability));
    expect(mean).toBeGreaterThan(0.002);
    expect(mean).toBeLessThan(0.0045);
  });
});

describe("an even screw", () => {
  it("is not claimed to be uneven, and its level is known better than one reading", () => {
    const { draws, unevenChance } = profileOf(read(() => 0.187));
    expect(unevenChance).toBeLessThan(0.5);
    const { mean, deviation } = momentsIn(draws.map(({ tight }) => tight.backlash));
    expect(Math.abs(mean - 0.187)).toBeLessThan(3 * deviation + 0.001);
    expect(deviation).toBeLessThan(0.005);
  });

  it("has a level anywhere within the graduation that all readings lie on", () => {
    const equal = sweeps(Array.from({ length: 11 }, (_, i) => [30 * i, 0.2, 0.2] as const));
    const { draws, unevenChance } = profileOf(equal);
    expect(unevenChance).toBeLessThan(0.5);
    const levels = draws.map(({ tight }) => tight.backlash).sort((a, b) => a - b);
    const quantile = (share: number) => levels[Math.floor(share * levels.length)];
    // Normal errors would make the mean of 22 readings known to 0.0006 mm.
    expect(quantile(0.9) - quantile(0.1)).toBeGreaterThan(0.003);
    expect(quantile(0.025)).toBeGreaterThan(0.19);
    expect(quantile(0.975)).toBeLessThan(0.21);
  });
});

describe("a narrow peak", () => {
  it("counts as the loosest spot between the positions that are kept", () => {
    const { positions, draws } = profileOf(narrow());
    const between = draws.filter(({ loose }) => !positions.includes(loose.position));
    expect(between.length).toBeGreaterThan(0.2 * draws.length);
    for (const { backlash, loose } of between) expect(loose.backlash).toBeGreaterThan(Math.max(...backlash));
  });

  it("is as high as a long nut lets it be, which is never stopped by its deepest thread", () => {
    // A bell of 0.3 mm, 40 mm from its middle to half, half a step of the grid off, met by a nut of 60 mm.
    const met = (position: number) => 0.1 + 0.3 * 2 ** -(((Math.abs(position - 151.5) + 30) / 40) ** 2);
    const { draws } = profileOf(read(met, 21, { engagedLength: 60 }));
    for (const { backlash, loose, stationEffect } of draws) {
      const crest = loose.backlash - Math.SQRT2 * stationEffect;
      expect(crest).toBeLessThan(Math.max(...backlash) + 0.01);
      expect(Math.abs(crest - met(151.5))).toBeLessThan(0.04);
    }
  });

  it.each([
    { from: 0, to: 140 },
    { from: 165, to: 300 },
  ])("does not count beyond the working range, $from to $to mm", (workingRange) => {
    for (const { loose } of profileOf(narrow({ workingRange })).draws) {
      expect(loose.position).toBeGreaterThanOrEqual(workingRange.from);
      expect(loose.position).toBeLessThanOrEqual(workingRange.to);
    }
  });
});

describe("a slight bump", () => {
  const bump = (depth: number) => (position: number) =>
    0.1 + depth * Math.exp(-0.5 * ((position - 140) / 40) ** 2);

  /** The share of the draws in which the screw has worn unevenly, whatever wobble comes on top. */
  const wornShare = ({ draws }: ProfileDraws) =>
    draws.filter(({ backlash }) => Math.max(...backlash) - Math.min(...backlash) > 0.001).length /
    draws.length;

  it("is uneven wear more likely than not, and the more so the deeper it is", () => {
    const share = (depth: number) => wornShare(profileOf(read(bump(depth))));
    expect(share(0.02)).toBeGreaterThan(0.9);
    expect(share(0.012)).toBeGreaterThan(0.5);
    expect(share(0)).toBeLessThan(0.5);
  });
});

describe("a travel that is counted from elsewhere", () => {
  it("has the same profile, and its peaks, at its own positions", () => {
    const { stations, ...data } = narrow();
    const stretch = { from: 1000, to: 1300 };
    const shifted = profileOf({
      ...data,
      travel: stretch,
      workingRange: stretch,
      stations: stations.map((station) => ({ ...station, position: station.position + 1000 })),
    });
    const usual = profileOf({ ...data, stations });
    const middles = (profile: ProfileDraws) =>
      [0, 30, 50, 70, 90].map((i) => momentsIn(profile.draws.map(({ backlash }) => backlash[i])).mean);
    middles(shifted).forEach((middle, i) => {
      expect(Math.abs(middle - middles(usual)[i])).toBeLessThan(0.004);
    });
    const between = shifted.draws.filter(({ loose }) => !shifted.positions.includes(loose.position));
    expect(between.length).toBeGreaterThan(0.2 * shifted.draws.length);
    const near = between.filter(({ loose }) => Math.abs(loose.position - 1151.5) < 10);
    expect(near.length).toBeGreaterThan(0.95 * between.length);
  });
});
