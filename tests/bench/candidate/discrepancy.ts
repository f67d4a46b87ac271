import type { ProfileData } from "./draws.ts";
import { covarianceAt, drawPath, type Matern } from "./matern.ts";
import type { RoundedLikelihood } from "./rounding.ts";

/** Places along the travel at which a discrepancy is kept, mm: the profile's positions and the stations, in order. */
export interface PathPlaces {
  readonly places: Float64Array;
  /** Where among them the stations and the positions are. */
  readonly stations: Int32Array;
  readonly positions: Int32Array;
}

export function pathPlacesOf(data: ProfileData, positions: Float64Array): PathPlaces {
  const stations = data.stations.map(({ position }) => position);
  const places = Float64Array.from(new Set([...positions, ...stations])).sort();
  const indices = (wanted: ArrayLike<number>): Int32Array =>
    Int32Array.from(wanted, (place) => places.indexOf(place));
  return { places, stations: indices(stations), positions: indices(positions) };
}

/**
 * Draws of a discrepancy given what the shape leaves of the stations' means: a path drawn beforehand, corrected by
 * what it misses (Matheron's rule; Doucet 2010, A note on efficient conditional simulation of Gaussian distributions).
 */
export interface ConditionalPaths {
  /**
   * @param matern index into the discrepancies
   * @param scatter index into the grid of scatter
   * @param expected what the shape makes of each station, mm
   */
  draw(matern: number, scatter: number, expected: Float64Array): Float64Array;
}

export function conditionalPaths(
  { places, stations }: PathPlaces,
  discrepancies: readonly (Matern | undefined)[],
  rounded: RoundedLikelihood,
  normal: () => number,
): ConditionalPaths {
  const count = stations.length;
  const covariances: Float64Array[] = [];
  const factors: Float64Array[][] = discrepancies.map(() => []);
  const covarianceOf = (at: number, matern: Matern): Float64Array => {
    const known = covariances[at];
    if (known !== undefined) return known;
    const matrix = new Float64Array(places.length * count);
    for (let p = 0; p < places.length; p++) {
      for (let i = 0; i < count; i++) {
        matrix[p * count + i] = covarianceAt(matern, places[p] - places[stations[i]]);
      }
    }
    covariances[at] = matrix;
    return matrix;
  };
  const factorOf = (at: number, covariance: Float64Array, scatter: number): Float64Array => {
    const known = factors[at][scatter];
    if (known !== undefined) return known;
    const matrix = new Float64Array(count * count);
    for (let i = 0; i < count; i++) {
      for (let j = 0; j <= i; j++) matrix[i * count + j] = covariance[stations[i] * count + j];
      matrix[i * count + i] += rounded.moments(i, scatter).variance;
    }
    factorise(matrix, count);
    factors[at][scatter] = matrix;
    return matrix;
  };
  return {
    draw(at, scatter, expected) {
      const matern = discrepancies[at];
      if (matern === undefined) throw new Error("There is no path without a discrepancy.");
      const covariance = covarianceOf(at, matern);
      const factor = factorOf(at, covariance, scatter);
      const path = drawPath(matern, places, normal);
      const missed = new Float64Array(count);
      for (let i = 0; i < count; i++) {
        const { mean, variance } = rounded.moments(i, scatter);
        missed[i] = mean + Math.sqrt(variance) * normal() - expected[i] - path[stations[i]];
      }
      solve(factor, missed);
      for (let p = 0; p < path.length; p++) {
        let sum = 0;
        for (let i = 0; i < count; i++) sum += covariance[p * count + i] * missed[i];
        path[p] += sum;
      }
      return path;
    },
  };
}

/** Cholesky factor in place, lower triangle by rows. */
function factorise(matrix: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * count + j];
      for (let k = 0; k < j; k++) sum -= matrix[i * count + k] * matrix[j * count + k];
      matrix[i * count + j] = i === j ? Math.sqrt(sum) : sum / matrix[j * count + j];
    }
  }
}

/** Solves for a right side, in place, given the factor. */
function solve(factor: Float64Array, side: Float64Array): void {
  const count = side.length;
  for (let i = 0; i < count; i++) {
    let sum = side[i];
    for (let k = 0; k < i; k++) sum -= factor[i * count + k] * side[k];
    side[i] = sum / factor[i * count + i];
  }
  for (let i = count - 1; i >= 0; i--) {
    let sum = side[i];
    for (let k = i + 1; k < count; k++) sum -= factor[k * count + i] * side[k];
    side[i] = sum / factor[i * count + i];
  }
}
