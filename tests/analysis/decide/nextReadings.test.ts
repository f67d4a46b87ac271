import { describe, expect, it } from "vitest";
import type { Coverage } from "../../../src/analysis/decide/coverage.ts";
import { type DecidingQuestion, nextReadingsOf } from "../../../src/analysis/decide/nextReadings.ts";
import type { ProfileDraws } from "../../../src/analysis/profile/draws.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import { drawsOf, SETTINGS, WELL_COVERED } from "../examples.ts";

/** Every combination of signs once, so that each is independent of the others: a of the first, b of the second … */
const SIGNS = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => [i & 1 ? 1 : -1, i & 2 ? 1 : -1, i & 4 ? 1 : -1]);

/** Eight draws, each of the numbers that the signs of three independent unknowns make. */
function draws(of: (a: number, b: number, c: number) => readonly number[]): readonly (readonly number[])[] {
  return SIGNS.map(([a, b, c]) => of(a, b, c));
}

const numbers = (of: (a: number, b: number, c: number) => number): Float64Array =>
  Float64Array.from(SIGNS, ([a, b, c]) => of(a, b, c));

function next(
  profile: ProfileDraws,
  question: Partial<DecidingQuestion> & Pick<DecidingQuestion, "margin">,
  coverage: Coverage = WELL_COVERED,
) {
  const usual = { endFloat: numbers(() => 0.02), endFloatMeasured: true, endFloatNeeded: false, noise: 1e-6 };
  return nextReadingsOf(profile, { ...usual, ...question }, coverage, SETTINGS, lengthsIn("mm", 0.01));
}

const placesOf = (readings: ReturnType<typeof next>): readonly (number | "end float")[] =>
  readings.map((reading) => ("position" in reading ? reading.position : "end float"));

describe("the readings that would tell most", () => {
  it("are the places that move the margin, most first", () => {
    const profile = drawsOf(
      [0, 100, 200],
      draws((a, b, c) => [0.3 + 0.02 * a, 0.3 + 0.03 * b, 0.2 + 0.04 * c]),
    );
    // The margin hangs on the first two alone: 0.0004² / 0.0004 and 0.0009² / 0.0009 mm².
    expect(placesOf(next(profile, { margin: numbers((a, b) => 0.02 * a + 0.03 * b) }))).toEqual([100, 0]);
  });

  it("are judged by what a reading with its noise would tell, not by how they go together", () => {
    // Both follow the margin wholly, but noise of 0.01 mm drowns the one that hardly moves.
    const profile = drawsOf(
      [0, 100],
      draws((a) => [0.3 + 0.005 * a, 0.3 + 0.03 * a]),
    );
    const [first] = placesOf(next(profile, { margin: numbers((a) => 0.03 * a), noise: 0.0001 }));
    expect(first).toBe(100);
  });

  it("leave out a place that the ones before it already tell of", () => {
    const profile = drawsOf(
      [0, 100, 200],
      draws((a, b) => [0.3 + 0.03 * a, 0.3 + 0.03 * a, 0.3 + 0.01 * b]),
    );
    const margin = numbers((a, b) => 0.03 * a + 0.01 * b);
    expect(placesOf(next(profile, { margin })).slice(0, 2)).toEqual([0, 200]);
  });

  it("leave what a reading did not settle, for its noise, to be settled by others", () => {
    // Noise of a third of the variance leaves a quarter of the first unknown: too little to ask beside it again.
    const profile = drawsOf(
      [0, 100, 200],
      draws((a, b) => [0.3 + 0.03 * a, 0.3 + 0.03 * a, 0.3 + 0.01 * b]),
    );
    const margin = numbers((a, b) => 0.03 * a + 0.01 * b);
    expect(placesOf(next(profile, { margin, noise: 0.0003 })).slice(0, 2)).toEqual([0, 200]);
  });

  it("are fewer where there are no more places", () => {
    const profile = drawsOf(
      [0],
      draws((a) => [0.3 + 0.03 * a]),
    );
    expect(placesOf(next(profile, { margin: numbers((a, b) => 0.03 * a + 0.03 * b) }))).toEqual([0]);
  });

  it("are no more than three", () => {
    const profile = drawsOf(
      [0, 100, 200, 300],
      draws((a, b, c) => [0.3 + 0.01 * a, 0.3 + 0.02 * b, 0.3 + 0.03 * c, 0.3 + 0.04 * a * b * c]),
    );
    const margin = numbers((a, b, c) => 0.01 * a + 0.02 * b + 0.03 * c + 0.04 * a * b * c);
    expect(placesOf(next(profile, { margin }))).toEqual([300, 200, 100]);
  });

  it("lie more than half a nut apart", () => {
    const positions = [100, 112, 112.1, 300];
    const profile = drawsOf(
      positions,
      draws((a, b, c) => [0.3 + 0.04 * a, 0.3 + 0.03 * b, 0.3 + 0.02 * c, 0.3]),
    );
    const margin = numbers((a, b, c) => 0.04 * a + 0.03 * b + 0.02 * c);
    expect(placesOf(next(profile, { margin }))).toEqual([100, 112.1]);
  });

  it("are none where no place has a fiftieth of the margin's variance to tell", () => {
    const profile = drawsOf(
      [0, 100],
      draws((a, b) => [0.3 + 0.01 * a, 0.3 + 0.01 * b]),
    );
    // Of the margin's variance, 1, the place at 0 mm tells 0.0196 or 0.0225, and the rest is another matter.
    const margin = (share: number) => numbers((a, _, c) => share * a + Math.sqrt(1 - share * share) * c);
    expect(next(profile, { margin: margin(0.14), noise: 0 })).toEqual([]);
    expect(placesOf(next(profile, { margin: margin(0.15), noise: 0 }))).toEqual([0]);
  });

  it("are told with how well lost motion is known there: two standard deviations", () => {
    const profile = drawsOf(
      [0, 100, 200, 300],
      draws((a) => [0.3, 0.3 + 0.03 * a, 0.2, 0.4]),
    );
    expect(next(profile, { margin: numbers((a) => 0.03 * a) })).toEqual([
      { position: 100, why: "Lost motion at 100 mm is known to within 0.06 mm." },
    ]);
  });

  it("are told as the tight or the loosest spot where a fifth of the draws have it within half a nut", () => {
    const profile = drawsOf(
      [0, 100, 200],
      draws((a, b) => [0.1 + 0.02 * a, 0.4, 0.7 + 0.03 * b]),
    );
    expect(next(profile, { margin: numbers((a, b) => 0.02 * a + 0.03 * b) })).toEqual([
      {
        position: 200,
        why: "Lost motion at 200 mm is known to within 0.06 mm, and the loosest spot may be here.",
      },
      { position: 0, why: "Lost motion at 0 mm is known to within 0.04 mm, and the tight spot may be here." },
    ]);
  });

  it.each([
    ["12 mm from the tight spot, just within", 88, ", and the tight spot may be here."],
    ["more than 12 mm from it", 87.9, "."],
  ])("are told as the tight spot %s half a nut", (_, tightAt, ending) => {
    const {
      positions,
      draws: given,
      unevenChance,
    } = drawsOf(
      [0, 100, 300],
      draws((a) => [0.3, 0.3 + 0.03 * a, 0.4]),
    );
    // Two of eight draws have their tight spot here: a quarter.
    const moved = given.map((draw, i) => ({
      ...draw,
      tight: { position: i < 2 ? tightAt : 0, backlash: 0.2 },
      loose: { position: 300, backlash: 0.4 },
    }));
    const [reading] = next({ positions, draws: moved, unevenChance }, { margin: numbers((a) => 0.03 * a) });
    expect(reading.why).toBe(`Lost motion at 100 mm is known to within 0.06 mm${ending}`);
  });

  it("are told as the tight spot where as many draws have the loosest spot there", () => {
    const profile = drawsOf(
      [0, 100, 300],
      draws((a) => [0.3, 0.3 + 0.03 * a, 0.3]),
    );
    const [{ why }] = next(profile, { margin: numbers((a) => 0.03 * a) });
    expect(why).toContain("and the tight spot may be here");
  });

  it("do not name a spot that only one draw in eight has there", () => {
    const {
      positions,
      draws: given,
      unevenChance,
    } = drawsOf(
      [0, 100, 300],
      draws((a) => [0.3, 0.3 + 0.03 * a, 0.4]),
    );
    const moved = given.map((draw, i) => ({
      ...draw,
      tight: { position: i < 1 ? 100 : 0, backlash: 0.2 },
      loose: { position: i < 1 ? 100 : 300, backlash: 0.4 },
    }));
    const [reading] = next({ positions, draws: moved, unevenChance }, { margin: numbers((a) => 0.03 * a) });
    expect(reading.why).toBe("Lost motion at 100 mm is known to within 0.06 mm.");
  });
});

describe("end float as the next reading", () => {
  const profile = drawsOf(
    [0, 100],
    draws((a) => [0.3 + 0.01 * a, 0.3]),
  );
  const endFloat = numbers((_, b) => 0.05 + 0.03 * b);
  const margin = numbers((a, b) => 0.01 * a + 0.03 * b);

  it("begin with the end float where the verdict waits for it alone", () => {
    const profile = drawsOf(
      [0, 100],
      [
        [0.2, 0.2],
        [0.2, 0.2],
      ],
    );
    const still = { margin: new Float64Array(2), endFloat: new Float64Array(2), endFloatMeasured: false };
    expect(next(profile, { ...still, endFloatNeeded: true })[0]).toMatchObject({ endFloat: true });
    expect(next(profile, still)).toEqual([]);
  });

  it("comes first where it decides, once", () => {
    const found = next(profile, { margin, endFloat, endFloatMeasured: false });
    expect(placesOf(found)).toEqual(["end float", 0]);
    expect(found[0]).toEqual({
      endFloat: true,
      why: "The end float is known only to within 0.06 mm, and it decides what is left for the nut.",
    });
  });

  it("is told once where the verdict waits for it and it tells most, too", () => {
    const other = numbers((a, b) => 0.05 * a + 0.03 * b);
    const waiting = { endFloat, endFloatMeasured: false, endFloatNeeded: true };
    expect(placesOf(next(profile, { margin, ...waiting }))).toEqual(["end float", 0]);
    expect(placesOf(next(profile, { margin: other, ...waiting }))).toEqual([0, "end float"]);
  });

  it("is not asked for where it was measured", () => {
    expect(placesOf(next(profile, { margin, endFloat, endFloatMeasured: true }))).toEqual([0]);
  });

  it("is asked for after a place that tells more", () => {
    const other = numbers((a, b) => 0.05 * a + 0.03 * b);
    expect(placesOf(next(profile, { margin: other, endFloat, endFloatMeasured: false }))).toEqual([
      0,
      "end float",
    ]);
  });
});

describe("the places that a verdict cannot do without", () => {
  const profile = drawsOf(
    [0, 100, 200, 300],
    draws((a, b, c) => [0.3 + 0.04 * a, 0.3 + 0.03 * b, 0.3 + 0.02 * c, 0.3 + 0.01 * a * b * c]),
  );
  const margin = numbers((a, b, c) => 0.04 * a + 0.03 * b + 0.02 * c + 0.01 * a * b * c);

  it("are unread ends and the middles of gaps, before what would tell most", () => {
    const coverage = { enoughStations: true, gaps: [{ from: 100, to: 130 }], unreadEnds: [300] };
    const found = next(profile, { margin }, coverage);
    expect(found.slice(0, 2)).toEqual([
      {
        position: 300,
        why: "No reading was taken near this end of the travel (300 mm), and an unread end may be the tight spot.",
      },
      { position: 115, why: "No reading was taken within the nut's length of 115 mm." },
    ]);
    expect(placesOf(found).slice(2)).toEqual([0]);
  });

  it("leave out a gap that reading the end beside it closes, within the nut's length", () => {
    const gap = (middle: number) => ({
      enoughStations: true,
      gaps: [{ from: middle - 5, to: middle + 5 }],
      unreadEnds: [300],
    });
    expect(placesOf(next(profile, { margin }, gap(276))).slice(0, 2)).toEqual([300, 0]);
    expect(placesOf(next(profile, { margin }, gap(275))).slice(0, 2)).toEqual([300, 275]);
  });

  it("are not named again as what would tell most, nor is a place within half a nut of them", () => {
    const coverage = { ...WELL_COVERED, unreadEnds: [0] };
    expect(placesOf(next(profile, { margin }, coverage))).toEqual([0, 100, 200]);
    const near = { ...WELL_COVERED, gaps: [{ from: 80, to: 96 }] };
    expect(placesOf(next(profile, { margin }, near))).toEqual([88, 0, 200]);
    const further = { ...WELL_COVERED, gaps: [{ from: 79.8, to: 96 }] };
    expect(placesOf(next(profile, { margin }, further))).toEqual([87.9, 0, 100]);
  });

  it("leave room for one that tells most, however many they are", () => {
    const gaps = [40, 140, 240].map((from) => ({ from, to: from + 10 }));
    expect(placesOf(next(profile, { margin }, { ...WELL_COVERED, gaps }))).toEqual([45, 145, 245, 0]);
  });
});
