import { sampleStandardDeviation } from "simple-statistics";
import type { Estimate } from "../assessment.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { erfc } from "../profile/evidence.ts";
import { logChanceRounded } from "../profile/rounding.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { drawIndex, type Random } from "../statistics/random.ts";

/** End float is not thought to exceed this where it was not measured, in millimetres. */
const GREATEST_UNMEASURED = 0.1;

/**
 * What is known of end float before it is read: a thrust bearing under preload has none; any other may have as much
 * as nobody has yet put right, every amount as likely as another, in millimetres.
 */
const CHANCE_OF_NONE = 0.4;
const USUAL_SPAN = 0.12;

/** Cells of end float for each standard deviation of a reading. */
const FINENESS = 6;
/** Readings that scatter by less than this share of a graduation cannot be told from ones that do not scatter. */
const LEAST_SCATTER = 0.1;
/** Standard deviations from the readings beyond which end float is ruled out. */
const REACH = 5;

export interface EndFloat {
  readonly measured: boolean;
  /** One value for each draw of the profile, in millimetres. */
  readonly draws: Float64Array;
}

/**
 * End float, draw by draw. Measured: its posterior given that draw's repeatability, with readings rounded to the
 * graduation as they really are; a reading of nothing is all that is less than half a graduation. Where the readings
 * disagree by far more than the survey's repeatability explains, their own scatter counts. Not measured: anywhere
 * between nothing and the lesser of 0.1 mm and the least lost motion of the draw.
 */
export function endFloatOf(
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
    draws: Float64Array.from(draws, ({ repeatability }) => drawnFrom(posteriorAt(repeatability), random)),
  };
}

/** What is known of the end float, or null where it was not measured. */
export function endFloatEstimate(endFloat: EndFloat): Estimate | null {
  return endFloat.measured ? estimateOf(endFloat.draws) : null;
}

/** Weights of none, which comes first, and of cells of one width from nothing up. */
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
  const cells = Math.ceil((FINENESS * (to - from)) / sigma);
  const width = (to - from) / cells;
  const logs = Float64Array.from({ length: cells + 1 }, (_, i) => {
    const place = i === 0 ? 0 : from + (i - 0.5) * width;
    const prior = i === 0 ? CHANCE_OF_NONE : ((1 - CHANCE_OF_NONE) * width) / USUAL_SPAN;
    return readings.reduce(
      (sum, reading) => sum + logChance(reading, place, sigma, resolution),
      Math.log(prior),
    );
  });
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return { from, width, weights: logs.map((log) => Math.exp(log - greatest)) };
}

/** Twice what repeatability and rounding explain is more than chance explains (one case in twenty, for two readings). */
function scatterOf(readings: readonly number[], repeatability: number, resolution: number): number {
  const own = readings.length < 2 ? 0 : sampleStandardDeviation([...readings]);
  const scatter = own > 2 * Math.hypot(repeatability, resolution / Math.sqrt(12)) ? own : repeatability;
  return Math.max(scatter, LEAST_SCATTER * resolution);
}

/** Logarithm of the chance of a reading, given the end float: nothing is read of all that is below half a graduation. */
function logChance(reading: number, place: number, sigma: number, resolution: number): number {
  if (reading >= resolution / 2) return logChanceRounded(Math.abs(reading - place), sigma, resolution);
  const above = (place - reading - resolution / 2) / sigma;
  const chance = 0.5 * erfc(above / Math.SQRT2);
  return chance > 1e-300 ? Math.log(chance) : -0.5 * above * above;
}

function drawnFrom({ from, width, weights }: Posterior, random: Random): number {
  const cell = drawIndex(weights, random);
  return cell === 0 ? 0 : from + (cell - 1 + random()) * width;
}
