import { describe, expect, it } from "vitest";
import { correct } from "../../../src/analysis/correct/corrections.ts";
import {
  pooledSquares,
  posteriorDeviation,
  repeatabilityPosterior,
  roundingVariance,
  tailProbability,
} from "../../../src/analysis/correct/repeatability.ts";
import { stationsOf } from "../../../src/analysis/correct/stations.ts";
import reference from "../../reference/scatter.json";
import { pushPull } from "../examples.ts";

const corrected = (resolution = 0.01) => correct(pushPull([[0, 0.2]], { indicator: { resolution } }), 4);
const near = (value: number, expected: number) => expect(value / expected).toBeCloseTo(1, 2);

describe("what scatter may bring about", () => {
  it("is as R integrates it, from nothing shown, from twelve repeats, and with a fine indicator", () => {
    near(
      tailProbability(0.02, repeatabilityPosterior({ squares: 0, freedom: 0 }, corrected())),
      reference.tailOfNothing,
    );
    const twelve = repeatabilityPosterior({ squares: 12 * 0.006 ** 2, freedom: 12 }, corrected());
    near(tailProbability(0.02, twelve), reference.tailOfTwelve);
    near(posteriorDeviation(twelve), reference.deviationOfTwelve);
    const fine = repeatabilityPosterior({ squares: 5 * 0.003 ** 2, freedom: 5 }, corrected(0.001));
    near(tailProbability(0.012, fine), reference.tailOfFine);
  });

  it("is as R integrates it for pairs, a mean, and variance on top", () => {
    const pairs = { ...corrected(), roundings: 2 as const };
    const shown = repeatabilityPosterior({ squares: 8 * 0.01 ** 2, freedom: 8 }, pairs);
    near(tailProbability(0.03, shown, 1.5, 0.005 ** 2), reference.tailOfPairs);
  });

  it("is as likely one way as the other", () => {
    const shown = repeatabilityPosterior({ squares: 0, freedom: 3 }, corrected());
    expect(tailProbability(0, shown)).toBeCloseTo(0.5, 6);
    expect(tailProbability(-0.01, shown) + tailProbability(0.01, shown)).toBeCloseTo(1, 6);
  });
});

describe("what readings show of it", () => {
  it("is their squares about the means of their stations, one degree of freedom less for each", () => {
    const stations = stationsOf(
      correct(
        pushPull([
          [0, 0.2],
          [0, 0.22],
          [50, 0.3],
          [50, 0.33],
          [50, 0.36],
          [100, 0.5],
        ]),
        4,
      ).readings,
    );
    const { squares, freedom } = pooledSquares(stations);
    expect(squares).toBeCloseTo(0.0002 + 0.0018, 12);
    expect(freedom).toBe(3);
  });

  it("is at least a rectangle of one graduation for each rounding", () => {
    expect(roundingVariance(corrected())).toBeCloseTo(0.01 ** 2 / 12, 15);
    expect(roundingVariance({ ...corrected(), roundings: 2 })).toBeCloseTo(0.01 ** 2 / 6, 15);
  });
});
