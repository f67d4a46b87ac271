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
const NEGLIGIBLE = 9;

export function evidenceOf(data: ProfileData, grid: readonly Scatter[]): Evidence {
  const groups = groupsOf(data.stations);
  const weighted = grid.map((scatter) => weigh(data, groups, scatter));
  const even = Float64Array.from(weighted, (given) => given.constant - 0.5 * given.squares);
  const count = grid.length;
  const scales = DEPTH_SCALES.length;
  const precisionOfGroup = Float64Array.from(weighted.flatMap((given) => given.precisions));
  const flatness = Float64Array.from(DEPTH_SCALES, (scale) => 1 / (scale * scale));
  const least = Math.min(...flatness);
  const logs = new Float64Array(count * scales);
  const slopes = new Float64Array(count * scales);
  const precisions = new Float64Array(count * scales);
  const spreads = new Float64Array(count);
  const pulls = new Float64Array(count);
  const tilts = new Float64Array(count);
  const bounds = new Float64Array(count);
  const sums = new Float64Array(3 * groups.length);

  /** Sums over the stations of each group: of the shape, of its squares, and of its products with the means. */
  const addUp = (shape: Float64Array): void => {
    for (let k = 0; k < groups.length; k++) {
      const { members, means } = groups[k];
      let sum = 0;
      let squares = 0;
      let cross = 0;
      for (let i = 0; i < members.length; i++) {
        const value = shape[members[i]];
        sum += value;
        squares += value * value;
        cross += value * means[i];
      }
      sums[3 * k] = sum;
      sums[3 * k + 1] = squares;
      sums[3 * k + 2] = cross;
    }
  };

  /** The evidence of every scatter and scale; what is negligible beside the greatest is left out. */
  const fill = (shape: Float64Array): void => {
    addUp(shape);
    let best = Number.NEGATIVE_INFINITY;
    for (let g = 0; g < count; g++) {
      const given = weighted[g];
      let sum = 0;
      let squares = 0;
      let cross = 0;
      for (let k = 0; k < groups.length; k++) {
        const precision = precisionOfGroup[g * groups.length + k];
        sum += precision * sums[3 * k];
        squares += precision * sums[3 * k + 1];
        cross += precision * sums[3 * k + 2];
      }
      const tilt = sum / given.total;
      const spread = Math.max(0, squares - sum * tilt);
      const pull = cross - sum * given.mean;
      const bound = even[g] + (0.5 * pull * pull) / (spread + least);
      tilts[g] = tilt;
      spreads[g] = spread;
      pulls[g] = pull;
      bounds[g] = bound;
      if (bound > best) best = bound;
    }
    logs.fill(Number.NEGATIVE_INFINITY);
    for (let g = 0; g < count; g++) {
      if (bounds[g] < best - NEGLIGIBLE) continue;
      for (let k = 0; k < scales; k++) {
        const at = g * scales + k;
        const precision = spreads[g] + flatness[k];
        const slope = pulls[g] / precision;
        slopes[at] = slope;
        precisions[at] = precision;
        // Half of a normal prior has twice its density, and only the positive half of the posterior counts.
        logs[at] =
          even[g] +
          0.5 * (pulls[g] * slope - Math.log(precision / flatness[k])) +
          logUpper(slope * Math.sqrt(precision));
      }
    }
  };

  return {
    ofShape(shape) {
      fill(shape);
      return logSum(logs) - Math.log(scales);
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
      const scatter = Math.floor(at / scales);
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
  for (const log of logs) if (log > greatest - NEGLIGIBLE) sum += Math.exp(log - greatest);
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
