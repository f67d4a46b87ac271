import { describe, expect, it } from "vitest";
import type { ProfileData } from "../../../src/analysis/profile/draws.ts";
import { logChanceRounded, roundedLikelihood } from "../../../src/analysis/profile/rounding.ts";
import { pairs, sweeps } from "./data.ts";
import { normalChance, normalDensity, simpson } from "./quadrature.ts";

const GRADUATION = 0.01;

/** The chance that a value scattered about a place is rounded to a reading. */
function rounded(reading: number, place: number, sigma: number): number {
  const half = GRADUATION / 2;
  return normalChance((reading - half - place) / sigma, (reading + half - place) / sigma);
}

/** The chance averaged over a normal station effect. */
function overStationEffect(chance: (shift: number) => number, tau: number): number {
  if (tau === 0) return chance(0);
  return simpson(-6 * tau, 6 * tau, 200).reduce(
    (sum, [shift, weight]) => sum + weight * normalDensity(shift, tau ** 2) * chance(shift),
    0,
  );
}

function logOfSweeps(values: readonly number[], backlash: number, sigma: number, tau: number): number {
  const chance = (shift: number) =>
    values.reduce((product, value) => product * rounded(value, backlash + shift, sigma), 1);
  return Math.log(overStationEffect(chance, tau));
}

/** Both readings of a pair scatter by their share of its scatter, from a place that may be anywhere. */
function logOfPairs(
  readings: readonly (readonly [number, number])[],
  backlash: number,
  sigma: number,
): number {
  const each = sigma / Math.SQRT2;
  const middle = readings.reduce((sum, [advancing]) => sum + advancing, 0) / readings.length;
  const reach = GRADUATION + 6 * each;
  const total = simpson(middle - reach, middle + reach, 200).reduce(
    (sum, [place, weight]) =>
      sum +
      (weight / GRADUATION) *
        readings.reduce(
          (product, [advancing, retracting]) =>
            product * rounded(advancing, place, each) * rounded(retracting, place - backlash, each),
          1,
        ),
    0,
  );
  return Math.log(total);
}

function likelihood(data: ProfileData, sigma: number, tau = 0) {
  const log = roundedLikelihood(data, [{ sigma, tau, logPrior: -5 }]);
  return (backlash: number) => log(0, 0, backlash);
}

/** Places to either side of a middle, as far as readings make likely. */
const around = (middle: number, reach: number) =>
  [-1, -0.6, -0.3, -0.1, 0, 0.2, 0.5, 0.8, 1].map((share) => middle + share * reach);

/** The table's straight lines leave the logarithm short by at most so much. */
const CLOSE = 0.04;

describe("the likelihood of rounded sweeps", () => {
  it.each([
    ["one reading", [0.2], 0.0033, 0],
    ["one reading finer than the graduation", [0.2], 0.001, 0],
    ["one reading coarser than it", [0.2], 0.011, 0],
    ["two readings", [0.2, 0.21], 0.0033, 0],
    ["five readings", [0.2, 0.2, 0.2, 0.21, 0.2], 0.0033, 0],
    ["five scattered readings", [0.2, 0.22, 0.19, 0.21, 0.2], 0.011, 0],
    ["one reading, with a station effect", [0.2], 0.0033, 0.003],
    ["one reading, with a great station effect", [0.2], 0.001, 0.009],
    ["two readings, with a station effect", [0.2, 0.21], 0.0033, 0.003],
    ["five readings, with a great station effect", [0.2, 0.2, 0.2, 0.21, 0.2], 0.0033, 0.009],
    ["five scattered readings, with a station effect", [0.2, 0.22, 0.19, 0.21, 0.2], 0.011, 0.003],
  ] as const)("is the product of normal chances between graduations: %s", (_, values, sigma, tau) => {
    const data = sweeps([[0, ...values]]);
    const log = likelihood(data, sigma, tau);
    const reach = 2.5 * Math.hypot(sigma / Math.sqrt(values.length), tau, GRADUATION / Math.sqrt(12));
    for (const backlash of around(data.stations[0].mean, reach)) {
      expect(Math.abs(log(backlash) - logOfSweeps(values, backlash, sigma, tau))).toBeLessThan(CLOSE);
    }
  });

  it("is level in the middle of a graduation where scatter is small beside it", () => {
    const log = likelihood(sweeps([[0, 0.2]]), 0.0005);
    expect(log(0.2)).toBeCloseTo(0, 3);
    expect(log(0.203)).toBeCloseTo(0, 3);
    // At the graduation's edge half of the readings are rounded this way.
    expect(log(0.205)).toBeCloseTo(Math.log(0.5), 1);
  });

  it("looks at the station and the scatter asked for, in any order", () => {
    const data = sweeps([
      [0, 0.2],
      [50, 0.3],
    ]);
    const log = roundedLikelihood(data, [
      { sigma: 0.003, tau: 0, logPrior: 0 },
      { sigma: 0.01, tau: 0, logPrior: 0 },
    ]);
    for (const [station, value] of [
      [1, 0.3],
      [0, 0.2],
      [1, 0.3],
    ]) {
      for (const [scatter, sigma] of [
        [1, 0.01],
        [0, 0.003],
      ]) {
        const expected = logOfSweeps([value], value + 0.004, sigma, 0);
        expect(Math.abs(log(station, scatter, value + 0.004) - expected)).toBeLessThan(CLOSE);
      }
    }
  });
});

describe("the likelihood of rounded pairs", () => {
  it.each([
    ["one pair", [[0.5, 0.3]], 0.0033],
    ["one pair finer than the graduation", [[0.5, 0.3]], 0.001],
    ["one pair coarser than it", [[0.5, 0.3]], 0.011],
    [
      "two pairs",
      [
        [0.5, 0.3],
        [0.51, 0.3],
      ],
      0.0033,
    ],
    [
      "four pairs",
      [
        [0.5, 0.3],
        [0.5, 0.31],
        [0.49, 0.3],
        [0.5, 0.3],
      ],
      0.011,
    ],
  ] as const)("is summed over the place that the repeats share: %s", (_, readings, sigma) => {
    const data = pairs(readings);
    const log = likelihood(data, sigma);
    const reach = 2.5 * Math.hypot(sigma / Math.sqrt(readings.length), GRADUATION / Math.sqrt(6));
    for (const backlash of around(data.stations[0].mean, reach)) {
      expect(Math.abs(log(backlash) - logOfPairs(readings, backlash, sigma))).toBeLessThan(CLOSE);
    }
  });

  it("falls in a straight line to either side where scatter is small: a triangle two graduations wide", () => {
    const log = likelihood(pairs([[0.5, 0.3]]), 0.0004);
    expect(log(0.2)).toBeCloseTo(0, 1);
    expect(log(0.205)).toBeCloseTo(Math.log(0.5), 1);
    expect(log(0.1925)).toBeCloseTo(Math.log(0.25), 1);
  });

  it("takes lost motion that was worked out for a pair from the indicator's zero", () => {
    const data = pairs([[0, -0.2]]);
    const [station] = data.stations;
    const workedOut = { ...station, readings: [{ position: 0, value: 0.2, from: [0] }] };
    const log = likelihood({ ...data, stations: [workedOut] }, 0.0033);
    for (const backlash of around(0.2, 0.01)) {
      expect(log(backlash)).toBeCloseTo(likelihood(data, 0.0033)(backlash), 9);
    }
  });
});

describe.each([
  ["one sweep", sweeps([[0, 0.2]]), 0, 0.2],
  ["sweeps of which one lies far off", sweeps([[0, 0.2, 0.2, 0.2, 0.2, 0.3]]), 0, 0.22],
  ["sweeps with a station effect", sweeps([[0, 0.2, 0.22, 0.21, 0.2, 0.22]]), 0.009, 0.21],
  ["one pair", pairs([[0.5, 0.3]]), 0, 0.2],
  [
    "pairs with a station effect",
    pairs([
      [0.5, 0.3],
      [0.51, 0.3],
      [0.5, 0.29],
    ]),
    0.003,
    0.62 / 3,
  ],
] as const)("the likelihood of %s", (_, data, tau, mode) => {
  const log = likelihood(data, 0.004, tau);
  const [{ readings }] = data.stations;

  it("falls on both sides, however far, in the table and beyond it", () => {
    for (const side of [-1, 1]) {
      let before = log(mode + side * 0.015);
      for (let distance = 0.016; distance < 3; distance *= 1.03) {
        const value = log(mode + side * distance);
        expect(Number.isFinite(value)).toBe(true);
        expect(value).toBeLessThan(before);
        before = value;
      }
    }
  });

  it("meets itself at the table's ends: it never drops by more than its slope allows", () => {
    const step = 0.0001;
    const places = Array.from({ length: 2001 }, (_, i) => mode + (i - 1000) * step);
    const steepest = places.slice(1).map((place, i) => Math.abs(log(place) - log(places[i])) / step);
    // A normal logarithm at 0.1 mm falls by count × 0.1 / σ² for each unit of length.
    expect(Math.max(...steepest)).toBeLessThan((1.5 * readings.length * 0.1) / 0.004 ** 2);
  });

  it("falls steadily beyond the table, as a normal logarithm does", () => {
    const slope = (distance: number) => (log(mode + distance + 0.01) - log(mode + distance)) / 0.01;
    expect(slope(0.2)).toBeLessThan(slope(0.1));
    // By count / σ² for each unit of length.
    const curve = (slope(0.2) - slope(0.3)) / 0.1;
    expect(curve / (readings.length / 0.004 ** 2)).toBeCloseTo(1, 1);
  });
});

describe("the chance that one value is rounded to a reading", () => {
  it("is that of a normal value between graduations", () => {
    for (const distance of [0, 0.002, 0.005, 0.012]) {
      const expected = Math.log(rounded(0.2, 0.2 - distance, 0.004));
      expect(logChanceRounded(distance, 0.004, GRADUATION)).toBeCloseTo(expected, 5);
    }
  });

  it("still falls where it is too small for a number, as a normal tail does", () => {
    // 0.995 mm to the graduation's near edge, in deviations of 0.004 mm.
    expect(logChanceRounded(1, 0.004, GRADUATION)).toBeCloseTo(-0.5 * (0.995 / 0.004) ** 2, 6);
  });
});

describe("the likelihood far from the readings", () => {
  /** Within a twentieth of the logarithm. */
  function expectNear(found: number, expected: number): void {
    expect(found / expected).toBeGreaterThan(0.95);
    expect(found / expected).toBeLessThan(1.05);
  }

  it.each([-1, 1])("of sweeps, beyond the table, is near to the normal chance of it: side %i", (side) => {
    const values = [0.2, 0.2, 0.2, 0.23];
    const data = sweeps([[0, ...values]]);
    for (const distance of [0.03, 0.04, 0.05]) {
      const backlash = data.stations[0].mean + side * distance;
      expectNear(likelihood(data, 0.004)(backlash), logOfSweeps(values, backlash, 0.004, 0));
    }
  });

  it.each([-1, 1])("of many pairs, whose chance is too small to sum, is near to it: side %i", (side) => {
    const readings = Array.from({ length: 70 }, () => [0.5, 0.3] as const);
    const log = likelihood(pairs(readings), 0.003);
    let before = log(0.2);
    for (let distance = 0.001; distance < 0.024; distance += 0.001) {
      const value = log(0.2 + side * distance);
      expect(value).toBeLessThan(before);
      before = value;
    }
    // Advancing and retracting each bear half of 0.0235 mm less a graduation, by 0.003 mm / √2.
    const each = (0.0235 - 0.01) / 2 / (0.003 / Math.SQRT2);
    expectNear(
      log(0.2 + side * 0.0235),
      2 * 70 * (-0.5 * each ** 2 - Math.log(each * Math.sqrt(2 * Math.PI))),
    );
  });

  it("of many sweeps, with a station effect that cannot reach, still falls", () => {
    const readings = [0, ...new Array<number>(40).fill(0.2)] as const;
    const log = likelihood(sweeps([readings as readonly [number, ...number[]]]), 0.003, 0.009);
    for (const side of [-1, 1]) {
      let before = log(0.2 + side * 0.01);
      for (let distance = 0.012; distance < 0.07; distance += 0.002) {
        const value = log(0.2 + side * distance);
        expect(value).toBeLessThan(before);
        before = value;
      }
      expect(before).toBeGreaterThan(-1e4);
    }
  });
});

describe("the likelihood of readings that lie evenly about a middle", () => {
  it.each([
    ["sweeps", sweeps([[0, 0.2, 0.21]]), 0.205],
    ["pairs", pairs([[0.5, 0.3]]), 0.2],
  ] as const)("is alike on both sides: %s", (_, data, middle) => {
    for (const tau of [0, 0.003]) {
      const log = likelihood(data, 0.004, tau);
      for (const distance of [0.001, 0.004, 0.009, 0.02, 0.05]) {
        expect(log(middle - distance)).toBeCloseTo(log(middle + distance), 6);
      }
    }
  });
});
