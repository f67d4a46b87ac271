import { drawIndex } from "../../../src/analysis/statistics/random.ts";
import type { ProfileData } from "./draws.ts";
import { type Filter, filterOf, type Matern, whitened } from "./matern.ts";
import type { Scatter } from "./noise.ts";
import { DEPTH_SCALES } from "./priors.ts";
import type { RoundedLikelihood } from "./rounding.ts";
import { drawLog, drawPositive, logSum, upperHalf } from "./special.ts";
import { between } from "./table.ts";

export { erfc } from "./special.ts";

/**
 * How well wear explains the readings, with level, depth, scatter and discrepancy integrated in closed form.
 *
 * Each station's rounded likelihood is replaced by the normal curve with its moments: μᵢ ~ N(level + depth · φᵢ + hᵢ,
 * vᵢ), with h a Matérn process or none, a flat prior on the level, and on the depth a mixture of half-normals, which
 * has the heavy tail of a half-Cauchy (METHOD.md, section 4).
 */
export interface Evidence {
  /**
   * Logarithm of the evidence for wear, given what the nut meets of it at the stations.
   *
   * @param discrepancy index into the discrepancies; 0 for none
   * @param least what is surely less than this may be given as −∞, without working it out
   */
  ofShape(shape: Float64Array, discrepancy: number, least?: number): number;
  /** The same for a profile that is even everywhere. */
  ofEven(): number;
  /** Level, depth and scatter drawn given a shape; without a shape, the depth is 0. */
  draw(
    shape: Float64Array | undefined,
    discrepancy: number,
    random: () => number,
    normal: () => number,
  ): Drawn;
}

export interface Drawn {
  readonly level: number;
  readonly depth: number;
  /** Index into the grid of scatter. */
  readonly scatter: number;
}

/** Repeatabilities that prior and repeats make less likely than the best by this much, in logarithms, are left out. */
const IMPLAUSIBLE = 12;
/** Terms this far below the greatest, in logarithms, are left out of sums. */
const NEGLIGIBLE = 9;

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

/** One scatter of the grid under one discrepancy, with all that does not depend on the shape. */
interface Weighted {
  /** Index into the grid. */
  readonly scatter: number;
  /** Precision of each station, and precision times mean; both empty with a discrepancy. */
  readonly precisions: Float64Array;
  readonly pulls: Float64Array;
  /** With a discrepancy: the filter, and what it makes of ones and of the means. */
  readonly filter: Filter | undefined;
  readonly ones: Float64Array;
  readonly means: Float64Array;
  readonly total: number;
  readonly mean: number;
  /** Logarithm of the evidence for a profile that is even: prior, normalising factors, and what the readings say. */
  readonly even: number;
}

/** Every scatter under one discrepancy, with room for what a shape makes of each. */
interface Table {
  readonly weighted: readonly Weighted[];
  readonly even: Float64Array;
  readonly tilts: Float64Array;
  readonly spreads: Float64Array;
  readonly pulls: Float64Array;
  readonly bounds: Float64Array;
  /** Of every scatter and scale, as shares of the greatest bound. */
  readonly terms: Float64Array;
}

/**
 * @param discrepancies the first of which is none
 * @param rounded the stations' likelihoods, from which the normal curves are taken
 */
export function evidenceOf(
  data: ProfileData,
  grid: readonly Scatter[],
  rounded: RoundedLikelihood,
  discrepancies: readonly (Matern | undefined)[],
): Evidence {
  const places = Float64Array.from(data.stations, ({ position }) => position);
  const plausible = plausibleOf(data, grid);
  const tables: Table[] = [];
  const tableOf = (discrepancy: number): Table => {
    const known = tables[discrepancy] ?? tabulate(discrepancies[discrepancy]);
    tables[discrepancy] = known;
    return known;
  };
  const tabulate = (matern: Matern | undefined): Table => {
    // A discrepancy takes the place of what stations add by themselves.
    const scatters = plausible.filter((scatter) => matern === undefined || grid[scatter].tau === 0);
    const weighted = scatters.map((scatter) => weigh(places, grid[scatter], scatter, rounded, matern));
    const room = (): Float64Array => new Float64Array(weighted.length);
    return {
      weighted,
      even: Float64Array.from(weighted, (given) => given.even),
      tilts: room(),
      spreads: room(),
      pulls: room(),
      bounds: room(),
      terms: new Float64Array(weighted.length * SCALES),
    };
  };
  const white = new Float64Array(places.length);

  /** What every scatter makes of a shape, and the greatest bound of the evidence. */
  const prepare = ({ weighted, tilts, spreads, pulls, bounds }: Table, shape: Float64Array): number => {
    let best = Number.NEGATIVE_INFINITY;
    for (let g = 0; g < weighted.length; g++) {
      const { precisions, pulls: towards, filter, ones, means, total, mean, even } = weighted[g];
      let values = 0;
      let squares = 0;
      let products = 0;
      if (filter === undefined) {
        for (let i = 0; i < shape.length; i++) {
          const value = shape[i];
          const weight = precisions[i] * value;
          values += weight;
          squares += weight * value;
          products += towards[i] * value;
        }
      } else {
        whitened(filter, shape, white);
        for (let i = 0; i < white.length; i++) {
          const value = white[i];
          values += ones[i] * value;
          squares += value * value;
          products += means[i] * value;
        }
      }
      const tilt = values / total;
      const spread = Math.max(0, squares - values * tilt);
      const pull = products - values * mean;
      tilts[g] = tilt;
      spreads[g] = spread;
      pulls[g] = pull;
      bounds[g] = pull > 0 ? even + (0.5 * pull * pull) / (spread + FLATTEST) : even;
      if (bounds[g] > best) best = bounds[g];
    }
    return best;
  };

  return {
    ofShape(shape, discrepancy, least = Number.NEGATIVE_INFINITY) {
      const table = tableOf(discrepancy);
      const best = prepare(table, shape);
      const { weighted, spreads, pulls, bounds } = table;
      // Every scatter adds at most twice the greatest bound; a little more where the depth's prior is a factor.
      if (best + Math.log(2 * weighted.length) + 1 < least) return Number.NEGATIVE_INFINITY;
      let sum = 0;
      for (let g = 0; g < weighted.length; g++) {
        if (bounds[g] < best - NEGLIGIBLE) continue;
        if (spreads[g] > WELL_KNOWN && pulls[g] > 0) sum += termOfAll(table, g, best);
        else for (let scale = 0; scale < SCALES; scale++) sum += termOf(table, g, scale, best);
      }
      return best + Math.log(sum / SCALES);
    },
    ofEven: () => logSum(tableOf(0).even),
    draw(shape, discrepancy, random, normal) {
      const table = tableOf(discrepancy);
      const { weighted, even, tilts, spreads, pulls, terms } = table;
      if (shape === undefined) {
        const given = weighted[drawLog(even, random)];
        return { level: given.mean + normal() / Math.sqrt(given.total), depth: 0, scatter: given.scatter };
      }
      const best = prepare(table, shape);
      for (let at = 0; at < terms.length; at++)
        terms[at] = termOf(table, Math.floor(at / SCALES), at % SCALES, best);
      const at = drawIndex(terms, random);
      const g = Math.floor(at / SCALES);
      const precision = spreads[g] + FLATNESS[at % SCALES];
      const depth = drawPositive(pulls[g] / precision, 1 / Math.sqrt(precision), random, normal);
      const { mean, total, scatter } = weighted[g];
      return { level: mean - depth * tilts[g] + normal() / Math.sqrt(total), depth, scatter };
    },
  };
}

/** Evidence of one scatter and scale, as a share of the greatest bound. */
function termOf({ even, pulls, spreads }: Table, g: number, scale: number, best: number): number {
  const precision = spreads[g] + FLATNESS[scale];
  const z = pulls[g] / Math.sqrt(precision);
  const exponent = even[g] - best + (z > 0 ? 0.5 * z * z : 0);
  // Half of a normal prior has twice its density, and only the positive half of the posterior counts.
  return Math.exp(exponent) * Math.sqrt(FLATNESS[scale] / precision) * upperHalf(z);
}

/** The same of all scales together, where the readings tell the depth so well that its prior hardly bends. */
function termOfAll({ even, pulls, spreads }: Table, g: number, best: number): number {
  const spread = spreads[g];
  const depth = pulls[g] / spread;
  const z = depth * Math.sqrt(spread);
  return Math.exp(even[g] - best + 0.5 * z * z) * upperHalf(z) * (priorAt(depth) / Math.sqrt(spread));
}

/** Scatters that prior and repeats leave possible, by a normal error for rounding that costs nothing to work out. */
function plausibleOf(
  { stations, roundings, resolution }: ProfileData,
  grid: readonly Scatter[],
): readonly number[] {
  const within = stations.reduce((all, station) => all + station.squares, 0);
  const repeats = stations.reduce((all, station) => all + station.readings.length - 1, 0);
  // Repeats of coarse readings are themselves rounded, so each carries some of the rounding's variance.
  const rounding = (roundings * resolution ** 2) / 48;
  const logs = grid.map(({ sigma, logPrior }) => {
    const variance = sigma ** 2 + rounding;
    return logPrior - 0.5 * (repeats * Math.log(variance) + within / variance);
  });
  const best = Math.max(...logs);
  return logs.flatMap((log, scatter) => (log > best - IMPLAUSIBLE ? [scatter] : []));
}

function weigh(
  places: Float64Array,
  { logPrior }: Scatter,
  scatter: number,
  rounded: RoundedLikelihood,
  matern: Matern | undefined,
): Weighted {
  const moments = Array.from(places, (_, i) => rounded.moments(i, scatter));
  const variances = moments.map(({ variance }) => variance);
  const areas = moments.reduce((sum, { logArea }) => sum + logArea, logPrior);
  const filter = matern && filterOf(matern, places, variances);
  const ones = new Float64Array(places.length);
  const means = new Float64Array(places.length);
  let logDeviations = 0;
  if (filter === undefined) {
    moments.forEach(({ mean, variance }, i) => {
      ones[i] = 1 / Math.sqrt(variance);
      means[i] = mean / Math.sqrt(variance);
      logDeviations += 0.5 * Math.log(variance);
    });
  } else {
    whitened(filter, new Float64Array(places.length).fill(1), ones);
    whitened(
      filter,
      moments.map(({ mean }) => mean),
      means,
    );
    logDeviations = filter.logDeviations;
  }
  const total = ones.reduce((sum, one) => sum + one * one, 0);
  const mean = ones.reduce((sum, one, i) => sum + one * means[i], 0) / total;
  const squares = ones.reduce((sum, one, i) => sum + (means[i] - mean * one) ** 2, 0);
  const constant = 0.5 * (places.length - 1) * Math.log(2 * Math.PI);
  return {
    scatter,
    precisions: filter === undefined ? ones.map((one) => one * one) : new Float64Array(0),
    pulls: filter === undefined ? ones.map((one, i) => one * means[i]) : new Float64Array(0),
    filter,
    ones,
    means,
    total,
    mean,
    even: areas - constant - logDeviations - 0.5 * (Math.log(total) + squares),
  };
}
