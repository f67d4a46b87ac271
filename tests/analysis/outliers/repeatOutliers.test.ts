import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { repeatabilityPosterior } from "../../../src/analysis/correct/repeatability.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { screenRepeats } from "../../../src/analysis/outliers/repeatOutliers.ts";
import reference from "../../reference/scatter.json";
import { pushPull } from "../examples.ts";

/** Repeats at stations 50 mm apart, as given, station by station, and what becomes of them. */
function repeats(...stations: readonly (readonly number[])[]) {
  const survey = pushPull(
    stations.flatMap((values, i) => values.map((value): readonly [number, number] => [50 * i, value])),
  );
  const corrected = correct(survey, 4);
  const { outliers, ...rest } = screenRepeats(stationsOf(corrected.readings), corrected);
  return {
    ...rest,
    corrected,
    outliers,
    named: outliers.map(({ reading }) => reading.from[0]),
    from: (index: number) => outliers.filter(({ reading }) => reading.from[0] === index)[0],
  };
}

const TWICE = [0.2, 0.2];
const THRICE = [0.2, 0.2, 0.2];
const FIVE = [0.2, 0.2, 0.2, 0.2, 0.2];

describe("readings that disagree with their repeats", () => {
  it("are none where all repeats agree, nor where nothing was read twice", () => {
    expect(repeats(THRICE, THRICE).outliers).toEqual([]);
    const single = repeats([0.2], [0.9], [0.2]);
    expect(single.outliers).toEqual([]);
    expect(single.clean.map(({ position }) => position)).toEqual([0, 50, 100]);
  });

  it("are told with what their repeats say, as chance has it there", () => {
    const { named, from, clean, scatter, corrected } = repeats(THRICE, [0.2, 0.5, 0.2], THRICE);
    expect(named).toEqual([4]);
    const outlier = from(4);
    expect(outlier).toMatchObject({ expected: 0.2, reading: { value: 0.5, position: 50 } });
    expect(outlier).not.toHaveProperty("rival");
    expect(outlier.agreement(0.2)).toBeCloseTo(1, 6);
    expect(outlier.agreement(0.22) / reference.offTwo).toBeCloseTo(1, 3);
    expect(outlier.agreement(0.18)).toBeCloseTo(outlier.agreement(0.22), 9);
    // Neither the scatter nor the stations that are clean hold it.
    expect(scatter).toEqual(repeatabilityPosterior({ squares: 0, freedom: 5 }, corrected));
    expect(clean.map(({ readings }) => readings.map((reading) => reading.from[0]))).toEqual([
      [0, 1, 2],
      [3, 5],
      [6, 7, 8],
    ]);
  });

  it("are both of two, either as wrong as the other, when they lie further apart than one survey in 500 has it", () => {
    const apart = (distance: number) => repeats(TWICE, [0.2, 0.2 + distance], TWICE);
    expect(apart(0.99 * reference.secondOfTwo).named).toEqual([]);
    const { named, from, clean } = apart(1.01 * reference.secondOfTwo);
    expect(named).toEqual([2, 3]);
    expect(from(2).rival?.from).toEqual([3]);
    expect(from(3).rival?.from).toEqual([2]);
    expect(from(2).agreement(from(2).expected + 0.03) / reference.offOne).toBeCloseTo(1, 3);
    expect(clean.map(({ position }) => position)).toEqual([0, 100]);
  });

  it("are one of three, when it lies further from the others than one survey in 500 has any of them", () => {
    const apart = (distance: number) => repeats([0.2, 0.2, 0.2 + distance]).named;
    expect(apart(0.99 * reference.thirdOfThree)).toEqual([]);
    expect(apart(1.01 * reference.thirdOfThree)).toEqual([2]);
  });

  it("do not hide one another at one station", () => {
    // One in ten of twenty readings are two, so both may be taken out.
    expect(repeats(FIVE, [0.2, 0.2, 0.5, 0.2, 0.5], FIVE, FIVE).named).toEqual([7, 9]);
    // One in ten of ten is one.
    expect(repeats(FIVE, [0.2, 0.2, 0.5, 0.2, 0.5]).named).toEqual([7]);
  });

  it("do not hide one another at different stations, the nearer included", () => {
    expect(repeats(FIVE, [0.2, 0.2, 0.2, 0.2, 0.8], FIVE, [0.1, 0.2, 0.2, 0.2, 0.2]).named).toEqual([9, 15]);
  });

  it("are all of four where two say one thing and two another", () => {
    const { named, outliers } = repeats(FIVE, FIVE, [0.2, 0.5, 0.5, 0.2], FIVE, [0.2]);
    expect(named).toEqual([10, 11, 12, 13]);
    expect(outliers.every(({ rival }) => rival === undefined)).toBe(true);
    expect(outliers.map(({ expected }) => Math.round(1000 * expected))).toEqual([400, 300, 300, 400]);
  });
});
