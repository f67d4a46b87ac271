import type { Random } from "../../../src/analysis/statistics/random.ts";
import { logSum } from "./special.ts";

/** A sample from the posterior over a unit cube, with the logarithm of the evidence. */
export interface Population {
  readonly points: readonly Float64Array[];
  /** Logarithm of the likelihood of each. */
  readonly logs: Float64Array;
  readonly logEvidence: number;
  /** How many inverse temperatures it took. */
  readonly steps: number;
}

/**
 * Logarithm of the likelihood of a point of the cube.
 *
 * @param least what is surely less than this may be given as −∞
 */
export type LogLikelihood = (u: Float64Array, least: number) => number;

/** Prior draws looked at for each particle. */
const SCREENED = 4;
/** Share of the particles that must still count when the inverse temperature rises. */
const KEPT = 0.5;
/** Moves go on at each inverse temperature until so many were accepted for each particle, or until so many sweeps. */
const ACCEPTED = 1;
const MOST_SWEEPS = 4;

/**
 * Sequential Monte Carlo from prior to posterior over rising inverse temperatures (Del Moral, Doucet and Jasra 2006),
 * which are chosen so that a set share of the particles still counts; then Metropolis moves.
 *
 * @param size number of particles
 */
export function sample(
  dimensions: number,
  size: number,
  likelihood: LogLikelihood,
  random: Random,
  normal: () => number,
): Population {
  let points: Float64Array[] = Array.from({ length: SCREENED * size }, () => {
    const u = new Float64Array(dimensions);
    for (let i = 0; i < dimensions; i++) u[i] = random();
    return u;
  });
  let logs = Float64Array.from(points, (u) => likelihood(u, Number.NEGATIVE_INFINITY));
  let inverseTemperature = 0;
  let logEvidence = 0;
  let steps = 0;
  const scratch = new Float64Array(dimensions);
  while (inverseTemperature < 1) {
    const step = nextStep(logs, 1 - inverseTemperature, KEPT * size);
    const weights = logs.map((log) => step * log);
    logEvidence += logSum(weights) - Math.log(weights.length);
    inverseTemperature += step;
    const top = greatestOf(weights);
    const chosen = resample(
      weights.map((log) => Math.exp(log - top)),
      size,
      random,
    );
    points = Array.from(chosen, (i) => points[i]);
    logs = Float64Array.from(chosen, (i) => logs[i]);
    steps++;
    let accepted = 0;
    for (let sweep = 0; sweep < MOST_SWEEPS && accepted < ACCEPTED * size; sweep++) {
      for (let i = 0; i < size; i++) {
        if (!propose(points[i], points, scratch, random, normal)) continue;
        const least = logs[i] + Math.log(1 - random()) / inverseTemperature;
        const log = likelihood(scratch, least);
        if (log < least) continue;
        points[i] = scratch.slice();
        logs[i] = log;
        accepted++;
      }
    }
  }
  return { points, logs, logEvidence, steps };
}

function greatestOf(logs: Float64Array): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < logs.length; i++) if (logs[i] > greatest) greatest = logs[i];
  return greatest;
}

/**
 * How far the inverse temperature can rise so that enough particles still count (effective sample size of the
 * weights, Kong, Liu and Wong 1994).
 */
export function nextStep(logs: Float64Array, left: number, wanted: number): number {
  const greatest = greatestOf(logs);
  const enough = (step: number): boolean => {
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < logs.length; i++) {
      const weight = Math.exp(step * (logs[i] - greatest));
      sum += weight;
      squares += weight * weight;
    }
    return sum * sum >= wanted * squares;
  };
  if (enough(left)) return left;
  let low = 0;
  let high = left;
  // Steps may be a small part of what is left, so the halving is in the logarithm first.
  while (high > 1e-6 && !enough(high)) high *= 0.5;
  low = high;
  high = Math.min(left, 2 * high);
  for (let i = 0; i < 5; i++) {
    const middle = 0.5 * (low + high);
    if (enough(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Systematic resampling: indices, in order, of what is kept. */
export function resample(weights: ArrayLike<number>, size: number, random: Random): Int32Array {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i];
  const chosen = new Int32Array(size);
  let at = 0;
  let sum = weights[0];
  const offset = random();
  for (let i = 0; i < size; i++) {
    const mark = ((i + offset) / size) * total;
    while (sum < mark && at < weights.length - 1) {
      at++;
      sum += weights[at];
    }
    chosen[i] = at;
  }
  return chosen;
}

/** Share of moves that draw one number afresh. */
const AFRESH = 0.2;
/** Furthest that a number is moved besides, so that particles which are all alike still move. */
const BLUR = 0.0035;

/**
 * A symmetric proposal: one number drawn afresh, or a random subset of the numbers moved along the difference of two
 * other particles (ter Braak 2006; subsets as in Vrugt et al. 2009), now and then by the whole difference.
 *
 * @param into where the proposal is written
 * @returns false if it leads outside the cube
 */
export function propose(
  from: Float64Array,
  others: readonly Float64Array[],
  into: Float64Array,
  random: Random,
  normal: () => number,
): boolean {
  into.set(from);
  const count = from.length;
  if (random() < AFRESH) {
    into[Math.floor(random() * count)] = random();
    return true;
  }
  const a = others[Math.floor(random() * others.length)];
  const b = others[Math.floor(random() * others.length)];
  const chance = SUBSETS[Math.floor(random() * SUBSETS.length)];
  const sure = Math.floor(random() * count);
  const moved = 1 + chance * (count - 1);
  const size = random() < 0.1 ? 1 : (2.38 / Math.sqrt(2 * moved)) * Math.exp(0.7 * normal() - 0.5);
  for (let i = 0; i < count; i++) {
    if (i !== sure && random() >= chance) continue;
    const value = from[i] + size * (a[i] - b[i]) + BLUR * (2 * random() - 1);
    if (value < 0 || value >= 1) return false;
    into[i] = value;
  }
  return true;
}

/** Chances of each number to move with the others, one of which is picked for every move. */
const SUBSETS = [0.25, 0.5, 1];
