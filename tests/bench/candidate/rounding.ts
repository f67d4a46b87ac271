import { mean } from "simple-statistics";
import type { LostMotion } from "../../../src/analysis/correct/corrections.ts";
import type { Station } from "../../../src/analysis/correct/stations.ts";
import type { ProfileData } from "./draws.ts";
import type { Scatter } from "./noise.ts";
import { erfc } from "./special.ts";
import { between } from "./table.ts";

/**
 * Logarithm of the chance of a station's readings, given the lost motion there: readings are true values with
 * normal scatter, rounded to the graduation. Tabulated once for each station and repeatability, read by straight
 * lines.
 *
 * A sweep is rounded once. The two readings of a pair are each rounded, from a place of the indicator that all
 * repeats at the station share and that is not known; it is summed over.
 */
export interface RoundedLikelihood {
  /** Logarithm of the chance of a station's readings, given a scatter of the grid and the lost motion there, mm. */
  log(station: number, scatter: number, backlash: number): number;
  /** The normal curve with the same area, mean and variance over lost motion. */
  moments(station: number, scatter: number): Moments;
}

/** A likelihood of lost motion as a normal curve, in millimetres. */
export interface Moments {
  /** Logarithm of the area under the likelihood. */
  readonly logArea: number;
  readonly mean: number;
  readonly variance: number;
}

interface Table {
  readonly from: number;
  readonly perStep: number;
  readonly logs: Float64Array;
  /** Steepness and curvature of the logarithm beyond the table's ends. */
  readonly slope: number;
  readonly curve: number;
}

/** Standard deviations that a table reaches beyond the graduation. */
const REACH = 4.5;

export function roundedLikelihood(data: ProfileData, grid: readonly Scatter[]): RoundedLikelihood {
  const tables: Table[][] = data.stations.map(() => []);
  const kernels = new Map<number, Kernel>();
  const kernelFor = (sigma: number): Kernel => {
    const kernel = kernels.get(sigma) ?? kernelOf(sigma, data.resolution);
    kernels.set(sigma, kernel);
    return kernel;
  };
  const tableFor = (station: number, scatter: number): Table => {
    const { sigma } = grid[scatter];
    const kernel = kernelFor(data.roundings === 1 ? sigma : sigma / Math.SQRT2);
    const table = tabulate(data.stations[station], grid[scatter], data, kernel);
    tables[station][scatter] = table;
    return table;
  };
  const known = (station: number, scatter: number): Table =>
    tables[station][scatter] ?? tableFor(station, scatter);
  const log = (station: number, scatter: number, backlash: number): number => {
    const table = known(station, scatter);
    const place = (backlash - table.from) * table.perStep;
    const last = table.logs.length - 1;
    if (place <= 0 || place >= last) {
      const beyond = (place <= 0 ? -place : place - last) / table.perStep;
      return table.logs[place <= 0 ? 0 : last] - beyond * (table.slope + table.curve * beyond);
    }
    return between(table.logs, place);
  };
  const moments: Moments[][] = data.stations.map(() => []);
  return {
    log,
    moments: (station, scatter) => {
      const found = moments[station][scatter] ?? momentsOf(known(station, scatter));
      moments[station][scatter] = found;
      return found;
    },
  };
}

function momentsOf({ from, perStep, logs }: Table): Moments {
  const top = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  let area = 0;
  let first = 0;
  let second = 0;
  for (let i = 0; i < logs.length; i++) {
    const weight = Math.exp(logs[i] - top);
    area += weight;
    first += weight * i;
    second += weight * i * i;
  }
  const place = first / area;
  return {
    logArea: top + Math.log(area / perStep),
    mean: from + place / perStep,
    variance: (second / area - place * place) / (perStep * perStep),
  };
}

/**
 * Logarithm of the chance that a value scattered about a place is rounded to a reading so far from the place.
 *
 * @param distance 0 or more, in millimetres
 */
export function logChanceRounded(distance: number, sigma: number, resolution: number): number {
  const near = (distance - resolution / 2) / sigma;
  const chance = 0.5 * (erfc(near / Math.SQRT2) - erfc((near + resolution / sigma) / Math.SQRT2));
  return chance > 1e-300 ? Math.log(chance) : -0.5 * near * near;
}

/** The same for one scatter and graduation, from a table. */
type Kernel = (distance: number) => number;

/** Standard deviations beyond the graduation up to which the chance is tabulated. */
const KERNEL_REACH = 8;

function kernelOf(sigma: number, resolution: number): Kernel {
  const half = resolution / 2;
  const exact = (distance: number): number => logChanceRounded(distance, sigma, resolution);
  const step = Math.min(sigma / 8, half);
  const logs = Float64Array.from({ length: Math.ceil((half + KERNEL_REACH * sigma) / step) + 2 }, (_, i) =>
    exact(i * step),
  );
  return (distance) => {
    const place = Math.abs(distance) / step;
    return place < logs.length - 1 ? between(logs, place) : exact(Math.abs(distance));
  };
}

function tabulate(
  station: Station,
  { sigma, tau }: Scatter,
  { resolution, roundings }: ProfileData,
  kernel: Kernel,
): Table {
  const { readings } = station;
  const count = readings.length;
  const half = (roundings * resolution) / 2 + REACH * (sigma + tau);
  const sharp = Math.min(sigma / (4 * Math.max(1, Math.sqrt(count / 4))), resolution / 3);
  const fine = Math.max(sharp, tau / 8);
  const steps = Math.ceil((2 * half) / fine);
  const step = (2 * half) / steps;
  const from = station.mean - half;
  const logs =
    roundings === 1
      ? ofSweeps(readings, from, step, steps, kernel)
      : ofPairs(readings, from, step, steps, sigma, resolution, kernel);
  return {
    from,
    perStep: 1 / step,
    logs: tau === 0 ? logs : blurred(logs, tau / step),
    slope: (count * REACH) / sigma,
    curve: count / (2 * sigma * sigma),
  };
}

function ofSweeps(
  readings: readonly LostMotion[],
  from: number,
  step: number,
  steps: number,
  kernel: Kernel,
): Float64Array {
  const logs = new Float64Array(steps + 1);
  for (const { value } of readings) {
    for (let i = 0; i <= steps; i++) logs[i] += kernel(from + i * step - value);
  }
  return logs;
}

function ofPairs(
  readings: readonly LostMotion[],
  from: number,
  step: number,
  steps: number,
  sigma: number,
  resolution: number,
  kernel: Kernel,
): Float64Array {
  const middle = mean(readings.map((reading) => reading.pair?.advancing ?? 0));
  const reach = Math.ceil((resolution / 2 + (3 * sigma) / Math.SQRT2) / step);
  const first = middle - reach * step;
  const places = 2 * reach + 1;
  // With the indicator at a place, lost motion f leaves it at place − f when retracting.
  const firstRetracting = first - (from + steps * step);
  const ofAdvancing = new Float64Array(places);
  const ofRetracting = new Float64Array(steps + places);
  for (const { pair, value } of readings) {
    const advancing = pair?.advancing ?? 0;
    const retracting = pair?.retracting ?? -value;
    for (let p = 0; p < places; p++) ofAdvancing[p] += kernel(first + p * step - advancing);
    for (let i = 0; i < steps + places; i++) {
      ofRetracting[i] += kernel(firstRetracting + i * step - retracting);
    }
  }
  return summedOver(ofAdvancing, ofRetracting, steps).map((log) => log + Math.log(step / resolution));
}

/**
 * Logarithm, for each lost motion, of the sum over the indicator's places of both readings' chances. Every place
 * within a graduation is as likely as another.
 */
function summedOver(ofAdvancing: Float64Array, ofRetracting: Float64Array, steps: number): Float64Array {
  const top = (logs: Float64Array): number =>
    logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const [topAdvancing, topRetracting] = [top(ofAdvancing), top(ofRetracting)];
  const advancing = ofAdvancing.map((log) => Math.exp(log - topAdvancing));
  const retracting = ofRetracting.map((log) => Math.exp(log - topRetracting));
  const summed = new Float64Array(steps + 1);
  for (let f = 0; f <= steps; f++) {
    let sum = 0;
    for (let p = 0; p < advancing.length; p++) sum += advancing[p] * retracting[steps - f + p];
    summed[f] =
      sum > 1e-250
        ? topAdvancing + topRetracting + Math.log(sum)
        : greatestTerm(ofAdvancing, ofRetracting, steps - f);
  }
  return summed;
}

/** The greatest single term, where the sum is too small for its logarithm. */
function greatestTerm(ofAdvancing: Float64Array, ofRetracting: Float64Array, offset: number): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let p = 0; p < ofAdvancing.length; p++) {
    greatest = Math.max(greatest, ofAdvancing[p] + ofRetracting[offset + p]);
  }
  return greatest;
}

/** The chance averaged over a normal station effect, whose deviation is given in steps of the table. */
function blurred(logs: Float64Array, deviation: number): Float64Array {
  const reach = Math.ceil(3.5 * deviation);
  const logWeights = Float64Array.from(
    { length: 2 * reach + 1 },
    (_, i) => -0.5 * ((i - reach) / deviation) ** 2,
  );
  const weights = logWeights.map(Math.exp);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const last = logs.length - 1;
  // Beyond the ends, the chance at the end.
  const spread = new Float64Array(logs.length + 2 * reach);
  for (let i = 0; i < spread.length; i++) {
    spread[i] = Math.exp(logs[Math.min(last, Math.max(0, i - reach))] - greatest);
  }
  const result = new Float64Array(logs.length);
  for (let at = 0; at <= last; at++) {
    let sum = 0;
    for (let i = 0; i < weights.length; i++) sum += weights[i] * spread[at + i];
    result[at] = sum > 1e-250 ? greatest + Math.log(sum / total) : greatestProduct(at);
  }
  return result;

  /** The greatest single term, where the sum is too small for its logarithm. */
  function greatestProduct(at: number): number {
    return logWeights.reduce((most, weight, i) => {
      const from = Math.min(last, Math.max(0, at + i - reach));
      return Math.max(most, weight + logs[from]);
    }, Number.NEGATIVE_INFINITY);
  }
}
