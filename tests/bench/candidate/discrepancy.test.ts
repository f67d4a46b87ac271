import { describe, expect, it } from "vitest";
import { normals, seededRandom } from "../../../src/analysis/statistics/random.ts";
import { sweeps } from "../../analysis/profile/data.ts";
import { conditionalPaths, pathPlacesOf } from "./discrepancy.ts";
import { scatterGrid } from "./noise.ts";
import { momentsIn } from "./quadrature.ts";
import { roundedLikelihood } from "./rounding.ts";

const DATA = sweeps(
  [
    [60, 0.21, 0.212],
    [240, 0.19, 0.191],
  ],
  { resolution: 0.001 },
);
const MATERN = { amplitude: 0.01, length: 120 };
const SCATTER = 4;

describe("the places along the travel", () => {
  it("are the positions and the stations in order, each once", () => {
    const { places, stations, positions } = pathPlacesOf(DATA, Float64Array.of(0, 60, 100, 300));
    expect([...places]).toEqual([0, 60, 100, 240, 300]);
    expect([...stations]).toEqual([1, 3]);
    expect([...positions]).toEqual([0, 1, 2, 4]);
  });
});

describe("a discrepancy given the readings", () => {
  it("has the mean and deviation that two stations give it anywhere", () => {
    const grid = scatterGrid(DATA);
    const rounded = roundedLikelihood(DATA, grid);
    const path = pathPlacesOf(DATA, Float64Array.of(0, 60, 150, 300));
    const paths = conditionalPaths(path, [undefined, MATERN], rounded, normals(seededRandom(5)));
    const expected = Float64Array.of(0.2, 0.2);
    const draws = Array.from({ length: 4000 }, () => paths.draw(1, SCATTER, expected));
    // Two stations: the inverse of a matrix of two rows, written out.
    const covariance = (distance: number) => {
      const r = (Math.sqrt(3) * Math.abs(distance)) / 120;
      return 1e-4 * (1 + r) * Math.exp(-r);
    };
    const [first, second] = [0, 1].map((i) => rounded.moments(i, SCATTER));
    const [a, b, c] = [1e-4 + first.variance, covariance(180), 1e-4 + second.variance];
    const determinant = a * c - b * b;
    path.places.forEach((place, at) => {
      const [k1, k2] = [covariance(place - 60), covariance(place - 240)];
      const [w1, w2] = [(c * k1 - b * k2) / determinant, (a * k2 - b * k1) / determinant];
      const mean = w1 * (first.mean - 0.2) + w2 * (second.mean - 0.2);
      const deviation = Math.sqrt(1e-4 - w1 * k1 - w2 * k2);
      const found = momentsIn(draws.map((draw) => draw[at]));
      expect(Math.abs(found.mean - mean)).toBeLessThan((4 * deviation) / Math.sqrt(4000));
      expect(found.deviation / deviation).toBeCloseTo(1, 1);
    });
  });

  it("is none where there is no discrepancy", () => {
    const grid = scatterGrid(DATA);
    const path = pathPlacesOf(DATA, Float64Array.of(0));
    const paths = conditionalPaths(path, [undefined], roundedLikelihood(DATA, grid), () => 0);
    expect(() => paths.draw(0, SCATTER, Float64Array.of(0, 0))).toThrow();
  });
});
