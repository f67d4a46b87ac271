import { describe, expect, it } from "vitest";
import { type DirectionCurve, flanksOf } from "../../../src/analysis/positioning/flanks.ts";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import reference from "../../reference/positioning.json" with { type: "json" };
import { evenlySpaced } from "../examples.ts";

const GRADUATION = 0.001;

const ofReference = (way: "advancing" | "retracting"): DirectionCurve => ({
  positions: reference.targets,
  deviations: reference.readings[way].map((runs, i) => runs.map((reading) => reading - reference.targets[i])),
});
const ADVANCING = ofReference("advancing");
const RETRACTING = ofReference("retracting");

const judged = (advancing: DirectionCurve, retracting: DirectionCurve, resolution = GRADUATION, seed = 1) =>
  flanksOf(advancing, retracting, resolution, seededRandom(seed));

/** Deviations of five runs at ten targets over 270 mm that scatter by 0.003 mm about a truth. */
function curve(truth: (position: number) => number, normal: () => number): DirectionCurve {
  const positions = evenlySpaced(0, 270, 10);
  return {
    positions,
    deviations: positions.map((position) =>
      Array.from({ length: 5 }, () => truth(position) + 0.003 * normal()),
    ),
  };
}

const patch = (position: number): number => -0.03 * Math.exp(-0.5 * ((position - 140) / 40) ** 2);
const slope = (position: number): number => 0.0002 * position;

describe("which flank has worn", () => {
  it("takes a straight line off each curve and weighs what is left against scatter, as R does", () => {
    const found = judged(ADVANCING, RETRACTING);
    for (const way of ["advancing", "retracting"] as const) {
      expect(found?.[way].range).toBeCloseTo(reference.range[way], 9);
      // The 99 % point of 2000 draws, within a twentieth of that of R's 200 000, and the graduation.
      const scatter = (found?.[way].byChance ?? 0) - GRADUATION;
      expect(Math.abs(scatter / reference.chance[way] - 1)).toBeLessThan(0.05);
    }
  });

  it("is the flank of the one curve that is uneven", () => {
    expect(judged(ADVANCING, RETRACTING)?.worn).toBe("advancing");
    expect(judged(RETRACTING, ADVANCING)?.worn).toBe("retracting");
  });

  it("is both, or the lead, where both curves are uneven", () => {
    const normal = normals(seededRandom(5));
    expect(
      judged(
        curve(patch, normal),
        curve((at) => -patch(at), normal),
      )?.worn,
    ).toBe("both");
    expect(judged(curve(patch, normal), curve(patch, normal))?.worn).toBe("both");
  });

  it("is not proven by a lead that is long or short, nor by lost motion that grows evenly", () => {
    const normal = normals(seededRandom(6));
    expect(
      judged(
        curve(slope, normal),
        curve((at) => -2 * slope(at), normal),
      )?.worn,
    ).toBe("not proven");
  });

  it("is named in few surveys of a screw that has not worn, and in all where wear is ten times the scatter", () => {
    const normal = normals(seededRandom(7));
    const surveys = Array.from({ length: 100 }, (_, seed) => seed);
    const even = surveys.map((seed) => judged(curve(slope, normal), curve(slope, normal), 0, seed)?.worn);
    // At most one in a hundred for either curve; the binomial's 99.9 % point of 100 at 0.02 is 7.
    expect(even.filter((worn) => worn !== "not proven").length).toBeLessThanOrEqual(7);
    const worn = surveys
      .slice(0, 20)
      .map((seed) => judged(curve(patch, normal), curve(slope, normal), 0, seed)?.worn);
    expect(new Set(worn)).toEqual(new Set(["advancing"]));
  });

  it("is not proven by steps of one graduation, however well readings repeat", () => {
    const positions = [0, 50, 100, 150, 200];
    const still = (means: readonly number[]): DirectionCurve => ({
      positions,
      deviations: means.map((mean) => [mean, mean, mean, mean, mean]),
    });
    const even = still([0, 0, 0, 0, 0]);
    expect(judged(still([0, 0, -0.01, 0, 0]), even, 0.01)?.worn).toBe("not proven");
    expect(judged(still([0, -0.03, -0.03, 0, 0]), even, 0.01)?.worn).toBe("advancing");
  });

  it("is not proven where the one curve is uneven by little more than the other", () => {
    const byChance = reference.chance.retracting + GRADUATION;
    const bent = (depth: number): DirectionCurve => ({
      positions: reference.targets,
      deviations: RETRACTING.deviations.map((runs, i) => runs.map((each) => (i === 4 ? each - depth : each))),
    });
    const found = judged(bent(1.3 * byChance), RETRACTING);
    expect(found?.advancing.range).toBeGreaterThan(found?.advancing.byChance ?? 1);
    expect(found?.worn).toBe("not proven");
  });

  it("is not proven where the one curve leaves a line by less than the scatter of the other may", () => {
    const positions = [0, 50, 100, 150, 200];
    const bent = { positions, deviations: [0, 0, -0.02, 0, 0].map((mean) => [mean, mean]) };
    const scattered = { positions, deviations: positions.map(() => [-0.03, 0.03]) };
    const found = judged(bent, scattered);
    expect(found?.advancing.byChance).toBeLessThan(0.01);
    expect(found?.retracting.range).toBeCloseTo(0, 12);
    expect(found?.worn).toBe("not proven");
    expect(judged(scattered, bent)?.worn).toBe("not proven");
  });

  it("allows for what few repeats leave open about their scatter", () => {
    const few = { positions: [0, 100, 200], deviations: [0, 0, 0].map(() => [-0.01, 0.01]) };
    const { byChance } = judged(few, few, 0)?.advancing ?? { byChance: 0 };
    // Of three means a, b and c, a line leaves (1, −2, 1) (a − 2b + c) / 6: a range of half a normal number of variance
    // 6 σ² / 2. σ is 0.01 √2 by three degrees of freedom, and R's qt(0.995, 3) is 5.8409.
    const expected = (5.8409 * 0.01 * Math.SQRT2 * Math.sqrt(3)) / 2;
    // Of 2000 draws, the 99 % point scatters by a fourteenth.
    expect(Math.abs(byChance / expected - 1)).toBeLessThan(0.2);
  });

  it("can be judged where some targets were read once", () => {
    const { positions, deviations } = RETRACTING;
    const once = { positions, deviations: deviations.map((runs, i) => (i === 4 ? runs.slice(0, 1) : runs)) };
    expect(judged(ADVANCING, once)?.worn).toBe("advancing");
  });

  it("cannot be judged from two targets, nor without repeats from both sides", () => {
    const part = (
      { positions, deviations }: DirectionCurve,
      targets: number,
      runs: number,
    ): DirectionCurve => ({
      positions: positions.slice(0, targets),
      deviations: deviations.slice(0, targets).map((each) => each.slice(0, runs)),
    });
    expect(judged(part(ADVANCING, 2, 5), part(RETRACTING, 2, 5))).toBeNull();
    expect(judged(part(ADVANCING, 9, 1), RETRACTING)).toBeNull();
    expect(judged(ADVANCING, part(RETRACTING, 9, 1))).toBeNull();
    expect(judged(part(ADVANCING, 3, 2), part(RETRACTING, 3, 2))).not.toBeNull();
  });
});
