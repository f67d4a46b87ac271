import type { Station } from "../correct/stations.ts";
import { drawIndex } from "../statistics/random.ts";
import type { ProfileData } from "./draws.ts";
import type { Scatter } from "./noise.ts";
import { between } from "./table.ts";

/**
 * How well a shape of wear explains the stations' means, with level and depth integrated in closed form.
 *
 * Mean at station i ~ N(level + depth · φᵢ, σ² / mᵢ + rounding), flat prior on the level, and on the depth a mixture
 * of half-normals of different scales, which has the heavy tail of a half-Cauchy. Repeats within a station tell of σ
 * alone.
 */
export interface Evidence {
  /**
   * Logarithm of the evidence for a shape, given its values at the stations.
   *
   * @param least what is surely less than this is given as less than anything, without working it out
   */
  ofShape(shape: Float64Array, least?: number): number;
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
  /** Index into the grid. */
  readonly scatter: number;
  /** Logarithm of the prior times what the repeats say. */
  readonly ofRepeats: number;
  /** Precision of a station's mean in each group. */
  readonly precisions: readonly number[];
  readonly total: number;
  readonly mean: number;
  /** Logarithm of the evidence for a profile that is even: prior, normalising factors, and what the readings say. */
  readonly even: number;
}

/** Repeatabilities that prior and repeats make less likely than the best by this much, in logarithms, are left out. */
const IMPLAUSIBLE = 12;
/** Terms this far below the greatest, in logarithms, are left out of sums. */
const NEGLIGIBLE = 7;

const FLATNESS = Float64Array.from(DEPTH_SCALES, (scale) => 1 / (scale * scale));
const FLATTEST = Math.min(...FLATNESS);
const SCALES = DEPTH_SCALES.length;

/** Readings that tell the depth with this precision, per square millimetre, make its prior a factor. */
const WELL_KNOWN = 500 * Math.max(...FLATNESS);
const PRIOR_PER_MM = 1000;
const PRIORS = Float64Array.from({ length: 2 * PRIOR_PER_MM }, (_, i) =>
  FLATNESS.reduce((sum, flat) => sum + Math.sqrt(flat) * Math.exp(-0.5 * flat * (i / PRIOR_PER_MM) ** 2), 0),
);

/** Prior density of a depth above 0, to a factor: read by straight lines, and even beyond the table. */
function priorAt(depth: number): number {
  const place = depth * PRIOR_PER_MM;
  if (!(place < PRIORS.length - 1)) return PRIORS[PRIORS.length - 1];
  return between(PRIORS, place);
}

export function evidenceOf(data: ProfileData, grid: readonly Scatter[]): Evidence {
  const groups = groupsOf(data.stations);
  const weighted = plausible(grid.map((scatter, index) => weigh(data, groups, scatter, index)));
  const even = Float64Array.from(weighted, (given) => given.even);
  const totals = Float64Array.from(weighted, (given) => given.total);
  const means = Float64Array.from(weighted, (given) => given.mean);
  const precisions = Float64Array.from(weighted.flatMap((given) => given.precisions));
  const count = weighted.length;
  const tilts = new Float64Array(count);
  const spreads = new Float64Array(count);
  const pulls = new Float64Array(count);
  const bounds = new Float64Array(count);
  /** Of every scatter and scale, as shares of the greatest bound. */
  const terms = new Float64Array(count * SCALES);

  /** Every scatter adds at most twice the greatest bound; a little more where the depth's prior is a factor. */
  const most = Math.log(2 * count) + 1;

  /** What every scatter makes of a shape, and the greatest bound of the evidence. */
  const prepare = (shape: Float64Array): number => {
    let best = Number.NEGATIVE_INFINITY;
    tilts.fill(0);
    spreads.fill(0);
    pulls.fill(0);
    for (let k = 0; k < groups.length; k++) {
      const { members, means: meansOfGroup } = groups[k];
      let values = 0;
      let squares = 0;
      let products = 0;
      for (let i = 0; i < members.length; i++) {
        const value = shape[members[i]];
        values += value;
        squares += value * value;
        products += value * meansOfGroup[i];
      }
      for (let g = 0; g < count; g++) {
        const precision = precisions[g * groups.length + k];
        tilts[g] += precision * values;
        spreads[g] += precision * squares;
        pulls[g] += precision * products;
      }
    }
    for (let g = 0; g < count; g++) {
      const values = tilts[g];
      const tilt = values / totals[g];
      const spread = Math.max(0, spreads[g] - values * tilt);
      const pull = pulls[g] - values * means[g];
      tilts[g] = tilt;
      spreads[g] = spread;
      pulls[g] = pull;
      bounds[g] = pull > 0 ? even[g] + (0.5 * pull * pull) / (spread + FLATTEST) : even[g];
      if (bounds[g] > best) best = bounds[g];
    }
    return best;
  };

  /** Evidence of one scatter and scale, as a share of the greatest bound. */
  const termOf = (g: number, scale: number, best: number): number => {
    const precision = spreads[g] + FLATNESS[scale];
    const z = pulls[g] / Math.sqrt(precision);
    const exponent = even[g] - best + (z > 0 ? 0.5 * z * z : 0);
    // Half of a normal prior has twice its density, and only the positive half of the posterior counts.
    return Math.exp(exponent) * Math.sqrt(FLATNESS[scale] / precision) * upperHalf(z);
  };

  /** The same of all scales together, where the readings tell the depth so well that its prior hardly bends. */
  const termOfAll = (g: number, best: number): number => {
    const spread = spreads[g];
    const depth = pulls[g] / spread;
    const z = depth * Math.sqrt(spread);
    return Math.exp(even[g] - best + 0.5 * z * z) * upperHalf(z) * (priorAt(depth) / Math.sqrt(spread));
  };

  return {
    ofShape(shape, least = Number.NEGATIVE_INFINITY) {
      const best = prepare(shape);
      if (best + most < least) return Number.NEGATIVE_INFINITY;
      let sum = 0;
      for (let g = 0; g < count; g++) {
        if (bounds[g] < best - NEGLIGIBLE) continue;
        if (spreads[g] > WELL_KNOWN && pulls[g] > 0) sum += termOfAll(g, best);
        else for (let scale = 0; scale < SCALES; scale++) sum += termOf(g, scale, best);
      }
      return best + Math.log(sum / SCALES);
    },
    ofEven: () => logSum(even),
    draw(shape, random, normal) {
      if (shape === undefined) {
        const given = weighted[drawLog(even, random)];
        return { level: given.mean + normal() / Math.sqrt(given.total), depth: 0, scatter: given.scatter };
      }
      const best = prepare(shape);
      for (let at = 0; at < terms.length; at++)
        terms[at] = termOf(Math.floor(at / SCALES), at % SCALES, best);
      const at = drawIndex(terms, random);
      const g = Math.floor(at / SCALES);
      const precision = spreads[g] + FLATNESS[at % SCALES];
      const depth = drawPositive(pulls[g] / precision, 1 / Math.sqrt(precision), random, normal);
      const { mean, total, scatter } = weighted[g];
      return { level: mean - depth * tilts[g] + normal() / Math.sqrt(total), depth, scatter };
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

function plausible(weighted: readonly Weighted[]): readonly Weighted[] {
  const best = Math.max(...weighted.map(({ ofRepeats }) => ofRepeats));
  return weighted.filter(({ ofRepeats }) => ofRepeats > best - IMPLAUSIBLE);
}

function weigh(
  data: ProfileData,
  groups: readonly Group[],
  { sigma, tau, logPrior }: Scatter,
  scatter: number,
): Weighted {
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
  const ofRepeats = logPrior - 0.5 * (repeats * Math.log(variance) + within / variance);
  const even = ofRepeats + 0.5 * (logs - Math.log(total) - squares);
  return { scatter, ofRepeats, precisions, total, mean, even };
}

const TAIL = 8;
const PER_UNIT = 64;
const UPPER_HALVES = Float64Array.from({ length: 2 * TAIL * PER_UNIT + 2 }, (_, i) => {
  const z = i / PER_UNIT - TAIL;
  return erfc(-z / Math.SQRT2) * (z < 0 ? Math.exp(0.5 * z * z) : 1);
});

/**
 * Twice the standard normal probability below z; for z below 0, over exp(−z²/2), beside which it does not vanish.
 * Read by straight lines from a table, to two parts in a hundred thousand.
 */
function upperHalf(z: number): number {
  if (z >= TAIL) return 2;
  if (z <= -TAIL) return Math.sqrt(2 / Math.PI) / (-z * (1 + 1 / (z * z)));
  return between(UPPER_HALVES, (z + TAIL) * PER_UNIT);
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
  for (const log of logs) sum += Math.exp(log - greatest);
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
