import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import { findOutliers } from "../../../src/analysis/outliers/findOutliers.ts";
import type { ProfileDraws } from "../../../src/analysis/profile/draws.ts";
import { drawsOf, pushPull, SETTINGS } from "../examples.ts";

/** Repeatability and station effect, and with the graduation's rectangle the deviation of one reading. */
const REPEATABILITY = 0.004;
const STATION_EFFECT = 0.006;
const DEVIATION = Math.hypot(REPEATABILITY, STATION_EFFECT, 0.01 / Math.sqrt(12));

/** R's qnorm(1 - p / 2): one survey in twenty, and one in 500 for one, three and seven looks. */
const IN_TWENTY = 1.959964;
const IN_500 = 3.0902323;
const IN_500_OF_THREE = 3.4029328;
const IN_500_OF_SEVEN = 3.6279195;

const LEVEL = 0.2;

const flat = (...levels: readonly number[]): ProfileDraws =>
  through([0, 300], ...levels.map((at) => [at, at]));

function through(positions: readonly number[], ...profiles: readonly (readonly number[])[]): ProfileDraws {
  const drawn = drawsOf(positions, profiles, REPEATABILITY);
  return { ...drawn, draws: drawn.draws.map((draw) => ({ ...draw, stationEffect: STATION_EFFECT })) };
}

/** What is doubted in readings whose profile is flat at 0.2 mm, and what without those that stand out is as given. */
function doubted(
  readings: readonly (readonly [position: number, value: number])[],
  without: ProfileDraws = flat(LEVEL, LEVEL),
) {
  const corrected = correct(pushPull(readings), 4);
  const given = { stations: stationsOf(corrected.readings), profile: flat(LEVEL, LEVEL) };
  const asked: (readonly number[])[] = [];
  const doubts = findOutliers(given, corrected, SETTINGS, (others) => {
    asked.push(others.flatMap(({ from }) => from));
    return { profile: without };
  });
  return {
    ...doubts,
    asked,
    confirmed: doubts.toConfirm.flatMap(({ from }) => from),
    outlying: doubts.outliers.flatMap(({ reading }) => reading.from),
    clean: doubts.clean.map(({ position }) => position),
  };
}

/** Seven stations over the travel, read once, at 0.2 mm but for what is given by place in the file. */
const seven = (...off: readonly (readonly [index: number, by: number])[]) =>
  Array.from({ length: 7 }, (_, i): readonly [number, number] => [
    50 * i,
    LEVEL + (off.find(([index]) => index === i)?.[1] ?? 0),
  ]);
const ALL_BUT_THE_FOURTH = [0, 1, 2, 4, 5, 6];

/** So many deviations of the difference of two readings from different places. */
const apart = (deviations: number) => deviations * Math.SQRT2 * DEVIATION;

describe("a station read once", () => {
  it.each([1, -1])("is weighed where all around lie to one side, as in one survey in twenty (%i)", (sign) => {
    expect(doubted(seven([3, 0.99 * sign * apart(IN_TWENTY)])).asked).toEqual([]);
    const { asked, confirmed, outlying } = doubted(seven([3, 1.01 * sign * apart(IN_TWENTY)]));
    expect(asked).toEqual([ALL_BUT_THE_FOURTH]);
    expect([confirmed, outlying]).toEqual([[], []]);
  });

  it("is to be confirmed where one survey in 500 has it as far out, at any of its stations", () => {
    expect(doubted(seven([3, 0.99 * apart(IN_500_OF_SEVEN)])).confirmed).toEqual([]);
    expect(doubted(seven([3, 1.01 * apart(IN_500_OF_SEVEN)])).confirmed).toEqual([3]);
    expect(doubted(seven([3, -1.01 * apart(IN_500_OF_SEVEN)])).confirmed).toEqual([3]);
  });

  it("is compared with two stations on either side and no further", () => {
    expect(doubted(seven([3, 0.3], [5, 0.3])).asked).toEqual([]);
    expect(doubted(seven([3, 0.3], [1, 0.3])).asked).toEqual([]);
    const { asked, confirmed } = doubted(seven([3, 0.3], [6, 0.3], [0, 0.3]));
    expect(asked).toEqual([[1, 2, 4, 5]]);
    expect(confirmed).toEqual([0, 3, 6]);
  });

  it("is compared with the nearest in height of those beside it", () => {
    expect(doubted(seven([3, 0.3], [4, 0.3 - 0.99 * apart(IN_TWENTY)])).asked).toEqual([]);
    expect(doubted(seven([3, 0.3], [4, 0.3 - 1.01 * apart(IN_TWENTY)])).asked).toEqual([ALL_BUT_THE_FOURTH]);
  });

  it("is told of where two more were read, not where one was", () => {
    expect(doubted(seven([1, 0.3]).slice(0, 2)).asked).toEqual([]);
    expect(doubted([[0, LEVEL], ...seven([1, 0.3]).slice(0, 2)]).asked).toEqual([]);
    expect(doubted(seven([1, 1.01 * apart(IN_500_OF_THREE)]).slice(0, 3)).confirmed).toEqual([1]);
    expect(doubted(seven([1, 0.99 * apart(IN_500_OF_THREE)]).slice(0, 3)).confirmed).toEqual([]);
  });

  it("is the only one looked at among stations read twice, whose means scatter less", () => {
    const twice = (off: number) => [...seven([3, off]), ...seven().filter(([position]) => position !== 150)];
    const reach = IN_500 * Math.sqrt(3 / 2) * DEVIATION;
    expect(doubted(twice(0.99 * reach)).confirmed).toEqual([]);
    expect(doubted(twice(1.01 * reach)).confirmed).toEqual([3]);
    expect(doubted([...seven(), ...seven([3, 0.004])]).asked).toEqual([]);
  });

  it("is none beyond the travel, nor is it held against one there", () => {
    expect(doubted([...seven(), [350, 0.9]]).asked).toEqual([]);
    expect(doubted([...seven(), [-50, 0.9]]).asked).toEqual([]);
    expect(doubted([...seven([6, 0.3]), [350, 0.5]]).asked).toEqual([[0, 1, 2, 3, 4, 5, 7]]);
    expect(doubted([...seven([0, 0.3]), [-50, 0.5]]).asked).toEqual([[7, 1, 2, 3, 4, 5, 6]]);
  });

  it("lies within the travel up to what is one place with its end", () => {
    expect(doubted([...seven().slice(0, -1), [300.0009, 0.5]]).confirmed).toEqual([6]);
    expect(doubted([...seven().slice(1), [-0.0009, 0.5]]).confirmed).toEqual([6]);
    expect(doubted([...seven().slice(0, -1), [300.0011, 0.5]]).asked).toEqual([]);
    expect(doubted([...seven().slice(1), [-0.0011, 0.5]]).asked).toEqual([]);
  });
});

describe("a reading that stands out, against the profile through the others", () => {
  const HIGH = 0.5;
  const around = (deviations: number) => flat(LEVEL + HIGH - deviations * DEVIATION);

  it("is an outlier where one survey in 500 has it as far off, either way, at any of its stations", () => {
    for (const sign of [1, -1]) {
      const likely = doubted(seven([3, HIGH]), around(0.99 * sign * IN_500_OF_SEVEN));
      expect([likely.confirmed, likely.outlying, likely.clean.length]).toEqual([[3], [], 7]);
      const outlier = doubted(seven([3, HIGH]), around(1.01 * sign * IN_500_OF_SEVEN));
      expect([outlier.confirmed, outlier.outlying]).toEqual([[3], [3]]);
      expect(outlier.clean).toEqual([0, 50, 100, 200, 250, 300]);
    }
  });

  it.each([0, 6])(
    "is to be confirmed at an end only where a verdict could be wrong as seldom (%i)",
    (end) => {
      expect(doubted(seven([end, HIGH]), around(0.99 * IN_TWENTY)).confirmed).toEqual([]);
      expect(doubted(seven([end, HIGH]), around(1.01 * IN_TWENTY)).confirmed).toEqual([end]);
      expect(doubted(seven([1, HIGH]), around(0)).confirmed).toEqual([1]);
      expect(doubted(seven([5, HIGH]), around(0)).confirmed).toEqual([5]);
    },
  );

  it("agrees with it as the mean of its draws has it", () => {
    const { outliers } = doubted(seven([3, HIGH]), flat(0.3, 0.3 - DEVIATION));
    const [outlier] = outliers;
    expect(outliers).toHaveLength(1);
    expect(outlier.expected).toBeCloseTo(0.3 - DEVIATION / 2, 12);
    // One and two deviations off, of one sign: R's 2 * pnorm(-c(1, 2)), and their mean.
    expect(outlier.agreement(0.3 + DEVIATION)).toBeCloseTo((0.3173105 + 0.0455003) / 2, 6);
    expect(outlier.agreement(0.3 - 2 * DEVIATION)).toBeCloseTo((0.3173105 + 0.0455003) / 2, 6);
    expect(outlier.agreement(0.3 - DEVIATION / 2)).toBeCloseTo(1, 6);
  });

  it("scatters as each draw has it", () => {
    const drawn = flat(0.3, 0.3);
    const finer = { ...drawn.draws[1], repeatability: 0, stationEffect: 0 };
    const { outliers } = doubted(seven([3, HIGH]), { ...drawn, draws: [drawn.draws[0], finer] });
    // One deviation of the finer draw is a graduation's rectangle alone.
    const fine = 0.01 / Math.sqrt(12);
    const [one, two] = [outliers[0].agreement(0.3 + 2 * fine), outliers[0].agreement(0.3 + DEVIATION)];
    expect(one).toBeCloseTo((0.0455003 + twoTailed((2 * fine) / DEVIATION)) / 2, 4);
    expect(two).toBeCloseTo((0.3173105 + twoTailed(DEVIATION / fine)) / 2, 4);
  });

  it.each([
    [0, 0.1],
    [2, 0.2],
    [3, 0.3],
    [6, 0.6],
  ])("is held against it on the straight line between places it is kept at (%i: %f mm)", (index, height) => {
    const bent = through([0, 100, 300], [0.1, 0.2, 0.6]);
    const { outliers } = doubted(seven([index, 1.5]), bent);
    expect(outliers.map(({ reading }) => reading.from)).toEqual([[index]]);
    expect(outliers[0].expected).toBeCloseTo(height, 12);
  });

  it("is held against its end a little beyond it", () => {
    const bent = through([0, 100, 300], [0.1, 0.2, 0.6]);
    const beyond = doubted([...seven().slice(0, -1), [300.0009, 1.5]], bent);
    expect(beyond.outliers[0].expected).toBe(0.6);
    const before = doubted([...seven().slice(1), [-0.0009, 1.5]], bent);
    expect(before.outliers[0].expected).toBe(0.1);
  });

  it("may be wear where it is higher, not where it is lower", () => {
    expect(doubted(seven([3, HIGH])).outliers).toMatchObject([{ mayBeWear: true }]);
    expect(doubted(seven([3, -0.15])).outliers).toMatchObject([{ mayBeWear: false }]);
  });
});

describe("readings in doubt", () => {
  it("are those against their repeats and those read once, told together", () => {
    const readings = [...seven([4, 0.4]), ...[0.2, 0.2, 0.2, 0.9].map((value) => [50, value] as const)];
    const { outlying, confirmed, clean, asked } = doubted(readings);
    expect(outlying).toEqual([10, 4]);
    expect(confirmed).toEqual([4]);
    expect(clean).toEqual([0, 50, 100, 150, 250, 300]);
    expect(asked).toEqual([[0, 1, 7, 8, 9, 2, 3, 5, 6]]);
  });
});

/** Chance that a normal error is as many deviations off, either way; Abramowitz and Stegun 26.2.17, to 1.5e-7. */
function twoTailed(deviations: number): number {
  const t = 1 / (1 + 0.2316419 * deviations);
  const series =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return (2 * Math.exp(-(deviations ** 2) / 2) * series) / Math.sqrt(2 * Math.PI);
}
