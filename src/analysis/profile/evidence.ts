import type { Station } from "../stations.ts";
import type { ProfileData } from "./draws.ts";
import type { Scatter } from "./noise.ts";

/**
 * How well a shape of wear explains the stations' means, with level and depth integrated in closed form.
 *
 * Mean at station i ~ N(level + depth · φᵢ, σ² / mᵢ + rounding), flat prior on the level, and on the depth a mixture
 * of half-normals of different scales, which has the heavy tail of a half-Cauchy. Repeats within a station tell of σ
 * alone.
 */
export interface Evidence {
  /** Logarithm of the evidence for a shape, given its values at the stations. */
  ofShape(shape: Float64Array): number;
  /** The same for a profile that is even everywhere. */
  ofEven(): number;
  /** Level, depth and repeatability drawn given a shape; without a shape, the depth is 0. */
  draw(shape: Float64Array | undefined, random: () => number, normal: () => number): Drawn;
}

export interface Drawn {
  readonly level: number;
  readonly depth: number;
  /** Index into the grid of repeatabilities. */
  readonly scatter: number;
}

/** Scales of the half-normals of the mixture, in millimetres, all of the same weight. */
export const DEPTH_SCALES = [0.03, 0.1, 0.3];

/** Logarithm of the prior density of a depth, per millimetre. */
export function logDepthPrior(depth: number): number {
  if (depth < 0) return Number.NEGATIVE_INFINITY;
  let sum = 0;
  for (const scale of DEPTH_SCALES) sum += Math.exp(-0.5 * (depth / scale) ** 2) / scale;
  return Math.log((sum * Math.sqrt(2 / Math.PI)) / DEPTH_SCALES.length);
}

/** Stations with the same number of repeats, which share one precision. */
interface Group {
  readonly members: readonly number[];
  readonly repeats: number;
  readonly means: Float64Array;
}

/** One repeatability of the grid, with all that does not depend on the shape. */
interface Weighted {
  /** Precision of a station's mean in each group. */
  readonly precisions: readonly number[];
  readonly total: number;
  readonly mean: number;
  /** Prior, normalising factors, and what the repeats say. */
  readonly constant: number;
  readonly squares: number;
}

/** Terms this far below the greatest, in logarithms, are left out of sums. */
const NEGLIGIBLE = 14;

export function evidenceOf(data: ProfileData, grid: readonly Scatter[]): Evidence {
  const groups = groupsOf(data.stations);
  const weighted = grid.map((scatter) => weigh(data, groups, scatter));
  const widest = Math.max(...DEPTH_SCALES);
  const even = Float64Array.from(weighted, (given) => given.constant - 0.5 * given.squares);
  const logs = new Float64Array(grid.length * DEPTH_SCALES.length);
  const slopes = new Float64Array(logs.length);
  const precisions = new Float64Array(logs.length);
  const spreads = new Float64Array(grid.length);
  const pulls = new Float64Array(grid.length);
  const tilts = new Float64Array(grid.length);
  const bounds = new Float64Array(grid.length);
  const sums = groups.map(() => ({ shape: 0, squares: 0, cross: 0 }));

  /** Sums over the stations, and from them the evidence of every repeatability and scale that matters. */
  const fill = (shape: Float64Array): void => {
    groups.forEach(({ members, means }, k) => {
      let sum = 0;
      let squares = 0;
      let cross = 0;
      for (let i = 0; i < members.length; i++) {
        const value = shape[members[i]];
        sum += value;
        squares += value * value;
        cross += value * means[i];
      }
      const into = sums[k];
      into.shape = sum;
      into.squares = squares;
      into.cross = cross;
    });
    let best = Number.NEGATIVE_INFINITY;
    for (let g = 0; g < weighted.length; g++) {
      const given = weighted[g];
      let sum = 0;
      let squares = 0;
      let cross = 0;
      for (let k = 0; k < sums.length; k++) {
        const precision = given.precisions[k];
        sum += precision * sums[k].shape;
        squares += precision * sums[k].squares;
        cross += precision * sums[k].cross;
      }
      tilts[g] = sum / given.total;
      spreads[g] = Math.max(0, squares - sum * tilts[g]);
      pulls[g] = cross - sum * given.mean;
      bounds[g] =
        given.constant - 0.5 * (given.squares - pulls[g] ** 2 / (spreads[g] + 1 / (widest * widest)));
      if (bounds[g] > best) best = bounds[g];
    }
    for (let g = 0; g < weighted.length; g++) {
      const given = weighted[g];
      for (let k = 0; k < DEPTH_SCALES.length; k++) {
        const at = g * DEPTH_SCALES.length + k;
        if (bounds[g] < best - NEGLIGIBLE) {
          logs[at] = Number.NEGATIVE_INFINITY;
          continue;
        }
        const scale = DEPTH_SCALES[k];
        const precision = spreads[g] + 1 / (scale * scale);
        slopes[at] = pulls[g] / precision;
        precisions[at] = precision;
        // Half of a normal prior has twice its density, and only the positive half of the posterior counts.
        logs[at] =
          given.constant -
          0.5 * (given.squares - pulls[g] * slopes[at]) -
          0.5 * Math.log(precision * scale * scale) +
          logUpper(slopes[at] * Math.sqrt(precision));
      }
    }
  };

  return {
    ofShape(shape) {
      fill(shape);
      return logSum(logs) - Math.log(DEPTH_SCALES.length);
    },
    ofEven: () => logSum(even),
    draw(shape, random, normal) {
      if (shape === undefined) {
        const scatter = drawLog(even, random);
        const given = weighted[scatter];
        return { level: given.mean + normal() / Math.sqrt(given.total), depth: 0, scatter };
      }
      fill(shape);
      const at = drawLog(logs, random);
      const scatter = Math.floor(at / DEPTH_SCALES.length);
      const depth = drawPositive(slopes[at], 1 / Math.sqrt(precisions[at]), random, normal);
      const given = weighted[scatter];
      const level = given.mean - depth * tilts[scatter] + normal() / Math.sqrt(given.total);
      return { level, depth, scatter };
    },
  };
}

function groupsOf(stations: readonly Station[]): readonly Group[] {
  const counts = [...new Set(stations.map((station) => station.readings.length))];
  return counts.map((repeats) => {
    const members = stations.flatMap((station, i) => (station.readings.length === repeats ? [i] : []));
    return { members, repeats, means: Float64Array.from(members, (i) => stations[i].mean) };
  });
}

function weigh(data: ProfileData, groups: readonly Group[], { sigma, tau, logPrior }: Scatter): Weighted {
  const rounding = (data.roundings * data.resolution ** 2) / 12;
  const precisions = groups.map(({ repeats }) => 1 / (sigma ** 2 / repeats + rounding + tau ** 2));
  let total = 0;
  let sum = 0;
  let logs = 0;
  groups.forEach(({ means }, k) => {
    total += means.length * precisions[k];
    logs += means.length * Math.log(precisions[k]);
    for (const value of means) sum += precisions[k] * value;
  });
  const mean = sum / total;
  let squares = 0;
  groups.forEach(({ means }, k) => {
    for (const value of means) squares += precisions[k] * (value - mean) ** 2;
  });
  const within = data.stations.reduce((all, station) => all + station.squares, 0);
  const repeats = data.stations.reduce((all, station) => all + station.readings.length - 1, 0);
  // Repeats of coarse readings are themselves rounded, so each carries some of the rounding's variance.
  const variance = sigma ** 2 + rounding / 4;
  const constant =
    logPrior + 0.5 * (logs - Math.log(total)) - 0.5 * (repeats * Math.log(variance) + within / variance);
  return { precisions, total, mean, constant, squares };
}

/** Logarithm of twice the standard normal probability below z. */
function logUpper(z: number): number {
  if (z > 6) return Math.LN2;
  if (z < -6) return -0.5 * z * z - Math.log(-z * Math.sqrt(Math.PI / 2) * (1 + 1 / (z * z)));
  return Math.log(erfc(-z / Math.SQRT2));
}

/** Complementary error function (Numerical Recipes in C, 2nd edition, 6.2: erfcc; relative error below 1.2e-7). */
export function erfc(x: number): number {
  const z = Math.abs(x);
  const t = 1 / (1 + 0.5 * z);
  const value =
    t *
    Math.exp(
      -z * z -
        1.26551223 +
        t *
          (1.00002368 +
            t *
              (0.37409196 +
                t *
                  (0.09678418 +
                    t *
                      (-0.18628806 +
                        t *
                          (0.27886807 +
                            t * (-1.13520398 + t * (1.48851587 + t * (-0.82215223 + t * 0.17087277)))))))),
    );
  return x >= 0 ? value : 2 - value;
}

function logSum(logs: Float64Array): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > greatest) greatest = log;
  let sum = 0;
  for (const log of logs) if (log > greatest - 30) sum += Math.exp(log - greatest);
  return greatest + Math.log(sum);
}

function drawLog(logs: Float64Array, random: () => number): number {
  const total = logSum(logs);
  let left = random();
  for (let i = 0; i < logs.length; i++) {
    left -= Math.exp(logs[i] - total);
    if (left < 0) return i;
  }
  return logs.length - 1;
}

/** A normal number that is not negative (rejection; for means far below zero Robert 1995, exponential proposal). */
function drawPositive(mean: number, deviation: number, random: () => number, normal: () => number): number {
  const bound = -mean / deviation;
  if (bound < 1) {
    for (;;) {
      const z = normal();
      if (z >= bound) return mean + deviation * z;
    }
  }
  const rate = 0.5 * (bound + Math.sqrt(bound * bound + 4));
  for (;;) {
    const z = bound - Math.log(1 - random()) / rate;
    if (random() <= Math.exp(-0.5 * (z - rate) ** 2)) return mean + deviation * z;
  }
}
