import { describe, expect, it } from "vitest";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { covarianceAt, drawPath, filterOf, whitened } from "./matern.ts";
import { quadraticForm } from "./quadrature.ts";

const MATERN = { amplitude: 0.02, length: 30 };
const PLACES = [0, 7, 12, 40, 41, 90, 200];
const VARIANCES = [1e-5, 4e-5, 1e-5, 2e-5, 1e-5, 1e-4, 1e-5];
const VALUES = [0.01, 0.012, 0.02, -0.01, -0.012, 0.03, 0];

/** The covariance of the values, worked out anew: (1 + √3 d / ℓ) exp(−√3 d / ℓ), and the errors' variance. */
const covariance = PLACES.map((a, i) =>
  PLACES.map((b, k) => {
    const r = (Math.sqrt(3) * Math.abs(a - b)) / 30;
    return 0.0004 * (1 + r) * Math.exp(-r) + (i === k ? VARIANCES[i] : 0);
  }),
);

describe("a Matérn process of smoothness 3/2", () => {
  it("has the covariance of its formula", () => {
    expect(covarianceAt(MATERN, 0)).toBeCloseTo(0.0004, 15);
    expect(covarianceAt(MATERN, -41)).toBeCloseTo(covariance[0][4], 15);
  });

  it("gives values the density that the whole covariance matrix gives them", () => {
    const filter = filterOf(MATERN, PLACES, VARIANCES);
    const white = new Float64Array(PLACES.length);
    whitened(filter, VALUES, white);
    const { squares, logDeterminant } = quadraticForm(covariance, VALUES);
    expect(white.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(squares, 8);
    expect(2 * filter.logDeviations).toBeCloseTo(logDeterminant, 8);
  });

  it("whitens linearly, so that products of two series come out too", () => {
    const filter = filterOf(MATERN, PLACES, VARIANCES);
    const ones = new Float64Array(PLACES.length);
    const white = new Float64Array(PLACES.length);
    whitened(filter, new Array<number>(PLACES.length).fill(1), ones);
    whitened(filter, VALUES, white);
    // (a + b)² − a² − b² = 2 a b, for the quadratic form of the inverse too.
    const squaresOf = (shift: number, share: number) =>
      quadraticForm(
        covariance,
        VALUES.map((value) => shift + share * value),
      ).squares;
    const expected = 0.5 * (squaresOf(1, 1) - squaresOf(1, 0) - squaresOf(0, 1));
    expect(white.reduce((sum, value, i) => sum + value * ones[i], 0)).toBeCloseTo(expected, 6);
  });

  it("draws paths with that covariance", () => {
    const normal = normals(seededRandom(4));
    const paths = Array.from({ length: 6000 }, () => drawPath(MATERN, PLACES, normal));
    for (const [a, b] of [
      [0, 0],
      [0, 1],
      [2, 4],
      [3, 5],
      [6, 6],
      [1, 6],
    ]) {
      const found = paths.reduce((sum, path) => sum + path[a] * path[b], 0) / paths.length;
      const expected = covarianceAt(MATERN, PLACES[a] - PLACES[b]);
      expect(Math.abs(found - expected)).toBeLessThan((4 * 0.0004 * 1.42) / Math.sqrt(paths.length));
    }
  });
});
