import {
  extremes,
  gridOf,
  type ProfileData,
  type ProfileDraw,
  type ProfileDraws,
} from "../../../src/analysis/profile/draws.ts";
import { drawIndex, normals, type Random } from "../../../src/analysis/statistics/random.ts";
import { cholesky, logDeterminant, solveLower } from "./cholesky.ts";

/**
 * The profile as a smooth curve: constant, or constant plus a Gaussian process with Matérn 5/2 covariance, with the
 * hyperparameters integrated over a grid (Rasmussen and Williams, Gaussian Processes for Machine Learning, 2.2, 2.7
 * and 4.2). The constant is given a flat prior and integrated in closed form.
 */

const EVEN_PRIOR = 0.4;
const DRAWS = 2000;
const JITTER = 1e-9;

interface Cell {
  /** Standard deviation of the uneven part; 0 for an even profile. */
  readonly amplitude: number;
  readonly length: number;
  readonly sigma: number;
  readonly logPrior: number;
}

interface FittedCell extends Cell {
  readonly logPosterior: number;
}

/** Draws of the profile under the smooth model. */
export function smoothProfile(data: ProfileData, random: Random): ProfileDraws {
  const cells = cellsOf(data).map((cell) => ({
    ...cell,
    logPosterior: cell.logPrior + logEvidence(cell, data),
  }));
  const greatest = Math.max(...cells.map((cell) => cell.logPosterior));
  const weights = cells.map((cell) => Math.exp(cell.logPosterior - greatest));
  const counts = new Map<number, number>();
  for (let i = 0; i < DRAWS; i++) {
    const chosen = drawIndex(weights, random);
    counts.set(chosen, (counts.get(chosen) ?? 0) + 1);
  }
  const positions = gridOf(data);
  const normal = normals(random);
  const draws = [...counts].flatMap(([index, count]) =>
    drawsOf(cells[index], count, data, positions, normal),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const even = weights.reduce((sum, weight, i) => sum + (cells[i].amplitude === 0 ? weight : 0), 0);
  return { positions, draws, unevenChance: 1 - even / total };
}

/** The grid of hyperparameters with the logarithm of each cell's prior probability. */
function cellsOf(data: ProfileData): readonly Cell[] {
  const span = data.travel.to - data.travel.from;
  const typical = Math.max(0.4 * data.resolution, 0.004);
  const sigmas = spaced(typical / 5, typical * 5, 13).map((sigma) => ({
    sigma,
    log: -0.5 * (Math.log(sigma / typical) / 0.7) ** 2,
  }));
  const lengths = spaced(data.engagedLength / 2, 1.5 * span, 7);
  const amplitudes = spaced(0.002, 1, 12).map((amplitude) => ({
    amplitude,
    log: Math.log(amplitude / (1 + (amplitude / data.limit) ** 2)),
  }));
  const logSum = (logs: readonly number[]): number =>
    Math.log(logs.reduce((sum, log) => sum + Math.exp(log), 0));
  const sigmaTotal = logSum(sigmas.map(({ log }) => log));
  const unevenTotal = logSum(amplitudes.map(({ log }) => log)) + Math.log(lengths.length);
  return sigmas.flatMap(({ sigma, log }) => [
    { amplitude: 0, length: span, sigma, logPrior: log - sigmaTotal + Math.log(EVEN_PRIOR) },
    ...lengths.flatMap((length) =>
      amplitudes.map((each) => ({
        amplitude: each.amplitude,
        length,
        sigma,
        logPrior: log - sigmaTotal + each.log - unevenTotal + Math.log(1 - EVEN_PRIOR),
      })),
    ),
  ]);
}

function logEvidence(cell: Cell, data: ProfileData): number {
  const { stations } = data;
  const n = stations.length;
  const factor = cholesky(covarianceOfMeans(cell, data), n);
  const ones = solveLower(factor, n, new Float64Array(n).fill(1));
  const values = solveLower(
    factor,
    n,
    stations.map((station) => station.mean),
  );
  const precision = dot(ones, ones);
  const fitted = dot(ones, values) / precision;
  const misfit = dot(values, values) - fitted * fitted * precision;
  let withinSquares = 0;
  let repeats = 0;
  for (const station of stations) {
    repeats += station.readings.length - 1;
    for (const reading of station.readings) withinSquares += (reading.value - station.mean) ** 2;
  }
  const within = -repeats * Math.log(cell.sigma) - withinSquares / (2 * cell.sigma ** 2);
  return -0.5 * (logDeterminant(factor, n) + Math.log(precision) + misfit) + within;
}

/** Covariance of the stations' means: the process, repeatability over the repeats, and the shared rounding. */
function covarianceOfMeans(cell: Cell, data: ProfileData): Float64Array {
  const { stations, resolution, roundings } = data;
  const n = stations.length;
  const matrix = new Float64Array(n * n);
  const rounding = (roundings * resolution ** 2) / 12;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      matrix[i * n + j] = covariance(cell, stations[i].position - stations[j].position);
    }
    matrix[i * n + i] += cell.sigma ** 2 / stations[i].readings.length + rounding;
  }
  return matrix;
}

/** Matérn covariance of smoothness 5/2. */
function covariance(cell: Cell, distance: number): number {
  if (cell.amplitude === 0) return 0;
  const scaled = (Math.sqrt(5) * Math.abs(distance)) / cell.length;
  return cell.amplitude ** 2 * (1 + scaled + (scaled * scaled) / 3) * Math.exp(-scaled);
}

function drawsOf(
  cell: FittedCell,
  count: number,
  data: ProfileData,
  positions: Float64Array,
  normal: () => number,
): ProfileDraw[] {
  const { stations } = data;
  const n = stations.length;
  const g = positions.length;
  const factor = cholesky(covarianceOfMeans(cell, data), n);
  const ones = solveLower(factor, n, new Float64Array(n).fill(1));
  const values = solveLower(
    factor,
    n,
    stations.map((station) => station.mean),
  );
  const precision = dot(ones, ones);
  const constant = dot(ones, values) / precision;
  const cross = Array.from(positions, (at) =>
    solveLower(
      factor,
      n,
      stations.map((station) => covariance(cell, at - station.position)),
    ),
  );
  // What the constant's own uncertainty adds: one minus the weight that the stations already carry.
  const slack = cross.map((row) => 1 - dot(row, ones));
  const centre = cross.map((row, i) => dot(row, values) + constant * slack[i]);
  const posterior = new Float64Array(g * g);
  for (let i = 0; i < g; i++) {
    for (let j = 0; j <= i; j++) {
      posterior[i * g + j] =
        covariance(cell, positions[i] - positions[j]) -
        dot(cross[i], cross[j]) +
        (slack[i] * slack[j]) / precision +
        (i === j ? JITTER : 0);
    }
  }
  const spread = cell.amplitude === 0 ? undefined : cholesky(posterior, g);
  return Array.from({ length: count }, () => {
    const backlash = new Float64Array(g);
    if (spread === undefined) backlash.fill(constant + normal() / Math.sqrt(precision));
    else fillDraw(backlash, centre, spread, normal);
    return {
      backlash,
      ...extremes(positions, backlash, data.workingRange),
      repeatability: cell.sigma,
      stationEffect: 0,
    };
  });
}

function fillDraw(
  target: Float64Array,
  centre: readonly number[],
  spread: Float64Array,
  normal: () => number,
) {
  const g = target.length;
  const noise = Float64Array.from({ length: g }, normal);
  for (let i = 0; i < g; i++) {
    let sum = centre[i];
    for (let k = 0; k <= i; k++) sum += spread[i * g + k] * noise[k];
    target[i] = sum;
  }
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}

/** Values evenly spaced in their logarithm. */
function spaced(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => from * (to / from) ** (i / (count - 1)));
}
