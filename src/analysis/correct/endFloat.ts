import { sampleStandardDeviation } from "simple-statistics";
import type { Estimate } from "../assessment.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { erfc } from "../profile/evidence.ts";
import { logChanceRounded } from "../profile/rounding.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { drawIndex, type Random } from "../statistics/random.ts";

/** Greatest end float assumed where it was not measured, in millimetres. */
const GREATEST_UNMEASURED = 0.1;

/** Prior of the end float: exactly zero for a preloaded thrust bearing, else uniform up to this many millimetres. */
const CHANCE_OF_ZERO = 0.4;
const PRIOR_RANGE = 0.12;

/** Grid cells per standard deviation of a reading. */
const CELLS_PER_DEVIATION = 6;
/** Least scatter, as a share of the graduation: less cannot be distinguished from none. */
const LEAST_SCATTER = 0.1;
/** The grid ends this many standard deviations from the readings. */
const REACH = 5;

export interface EndFloat {
  readonly measured: boolean;
  /** One value for each draw of the profile, in millimetres. */
  readonly draws: Float64Array;
}

/**
 * Draws the end float, one value for each draw of the profile. If measured: from its posterior given that draw's
 * repeatability, with the exact likelihood of rounded readings (zero stands for all below half a graduation). If the
 * readings disagree by far more than the survey's repeatability explains, their own scatter is used. If not measured:
 * uniform between zero and the lesser of 0.1 mm and the least lost motion of the draw.
 *
 * @param measured readings of the end float, in millimetres
 * @param resolution graduation, in millimetres
 */
export function drawEndFloat(
  measured: readonly number[] | undefined,
  profile: ProfileDraws,
  resolution: number,
  random: Random,
): EndFloat {
  const { draws } = profile;
  if (measured === undefined || measured.length === 0) {
    return {
      measured: false,
      draws: Float64Array.from(draws, ({ tight }) =>
        Math.max(0, random() * Math.min(GREATEST_UNMEASURED, tight.backlash)),
      ),
    };
  }
  const posteriors = new Map<number, Posterior>();
  const posteriorAt = (repeatability: number): Posterior => {
    const known = posteriors.get(repeatability) ?? posteriorOf(measured, repeatability, resolution);
    posteriors.set(repeatability, known);
    return known;
  };
  return {
    measured: true,
    draws: Float64Array.from(draws, ({ repeatability }) => drawFrom(posteriorAt(repeatability), random)),
  };
}

/** The estimate of the end float; null if it was not measured. */
export function endFloatEstimate(endFloat: EndFloat): Estimate | null {
  return endFloat.measured ? estimateOf(endFloat.draws) : null;
}

/** Weights on a grid: first of exactly zero, then of cells of equal width starting at `from`. */
interface Posterior {
  readonly from: number;
  readonly width: number;
  readonly weights: Float64Array;
}

function posteriorOf(readings: readonly number[], repeatability: number, resolution: number): Posterior {
  const sigma = scatterOf(readings, repeatability, resolution);
  const half = resolution / 2;
  const from = Math.max(0, Math.min(...readings) - half - REACH * sigma);
  const to = Math.max(...readings) + half + REACH * sigma;
  const cells = Math.ceil((CELLS_PER_DEVIATION * (to - from)) / sigma);
  const width = (to - from) / cells;
  const logs = Float64Array.from({ length: cells + 1 }, (_, i) => {
    const endFloat = i === 0 ? 0 : from + (i - 0.5) * width;
    const prior = i === 0 ? CHANCE_OF_ZERO : ((1 - CHANCE_OF_ZERO) * width) / PRIOR_RANGE;
    return readings.reduce(
      (sum, reading) => sum + logChance(reading, endFloat, sigma, resolution),
      Math.log(prior),
    );
  });
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return { from, width, weights: logs.map((log) => Math.exp(log - greatest)) };
}

/** Own scatter counts above twice what repeatability and rounding explain (one case in twenty by chance, for two readings). */
function scatterOf(readings: readonly number[], repeatability: number, resolution: number): number {
  const own = readings.length < 2 ? 0 : sampleStandardDeviation([...readings]);
  const scatter = own > 2 * Math.hypot(repeatability, resolution / Math.sqrt(12)) ? own : repeatability;
  return Math.max(scatter, LEAST_SCATTER * resolution);
}

/** Logarithm of the chance of a reading given the end float; zero is read for all below half a graduation. */
function logChance(reading: number, endFloat: number, sigma: number, resolution: number): number {
  if (reading >= resolution / 2) return logChanceRounded(Math.abs(reading - endFloat), sigma, resolution);
  const above = (endFloat - reading - resolution / 2) / sigma;
  const chance = 0.5 * erfc(above / Math.SQRT2);
  return chance > 1e-300 ? Math.log(chance) : -0.5 * above * above;
}

function drawFrom({ from, width, weights }: Posterior, random: Random): number {
  const cell = drawIndex(weights, random);
  return cell === 0 ? 0 : from + (cell - 1 + random()) * width;
}
