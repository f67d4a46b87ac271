import type { Station } from "../stations.ts";
import type { ProfileData } from "./draws.ts";
import { erfc } from "./evidence.ts";
import type { Scatter } from "./noise.ts";

/**
 * Logarithm of the chance of a station's readings, given the lost motion there: readings are true values with
 * normal scatter, rounded to the graduation. Tabulated once for each station and repeatability, read by straight
 * lines.
 *
 * A sweep is rounded once. The two readings of a pair are each rounded, from a place of the indicator that all
 * repeats at the station share and that is not known; it is summed over.
 */
export type RoundedLikelihood = (station: number, scatter: number, backlash: number) => number;

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
  return (station, scatter, backlash) => {
    let table = tables[station][scatter];
    if (table === undefined) {
      table = tabulate(data.stations[station], grid[scatter], data);
      tables[station][scatter] = table;
    }
    const place = (backlash - table.from) * table.perStep;
    const last = table.logs.length - 1;
    if (place <= 0 || place >= last) {
      const beyond = (place <= 0 ? -place : place - last) / table.perStep;
      return table.logs[place <= 0 ? 0 : last] - beyond * (table.slope + table.curve * beyond);
    }
    const before = place | 0;
    return table.logs[before] + (place - before) * (table.logs[before + 1] - table.logs[before]);
  };
}

function tabulate(station: Station, { sigma, tau }: Scatter, { resolution, roundings }: ProfileData): Table {
  const { readings } = station;
  const count = readings.length;
  const half = (roundings * resolution) / 2 + REACH * (sigma + tau);
  const sharp = Math.min(sigma / (4 * Math.max(1, Math.sqrt(count / 4))), resolution / 3);
  const fine = Math.max(sharp, tau / 20);
  const steps = Math.ceil((2 * half) / fine);
  const step = (2 * half) / steps;
  const from = station.mean - half;
  const logs =
    roundings === 1
      ? Float64Array.from({ length: steps + 1 }, (_, i) =>
          logChances(
            readings.map((reading) => reading.value),
            from + i * step,
            sigma,
            resolution,
          ),
        )
      : ofPairs(station, from, step, steps, sigma, resolution);
  return {
    from,
    perStep: 1 / step,
    logs: tau === 0 ? logs : blurred(logs, tau / step),
    slope: (count * REACH) / sigma,
    curve: count / (2 * sigma * sigma),
  };
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
  const chances = logs.map((log) => Math.exp(log - greatest));
  const last = logs.length - 1;
  return logs.map((_, at) => {
    let sum = 0;
    let single = Number.NEGATIVE_INFINITY;
    for (let i = 0; i < weights.length; i++) {
      const from = Math.min(last, Math.max(0, at + i - reach));
      sum += weights[i] * chances[from];
      single = Math.max(single, logWeights[i] + logs[from]);
    }
    return sum > 0 ? greatest + Math.log(sum / total) : single;
  });
}

function ofPairs(
  { readings }: Station,
  from: number,
  step: number,
  steps: number,
  sigma: number,
  resolution: number,
): Float64Array {
  const advancing = readings.map((reading) => reading.pair?.advancing ?? 0);
  const retracting = readings.map((reading) => reading.pair?.retracting ?? -reading.value);
  const each = sigma / Math.SQRT2;
  const middle = advancing.reduce((sum, value) => sum + value, 0) / advancing.length;
  const reach = Math.ceil((resolution / 2 + 3 * each) / step);
  const places = Array.from({ length: 2 * reach + 1 }, (_, i) => middle + (i - reach) * step);
  const ofAdvancing = places.map((place) => logChances(advancing, place, each, resolution));
  // With the indicator at a place, lost motion f leaves it at place − f when retracting.
  const first = places[0] - (from + steps * step);
  const ofRetracting = Float64Array.from({ length: steps + places.length }, (_, i) =>
    logChances(retracting, first + i * step, each, resolution),
  );
  // Every place within a graduation is as likely as another, so each counts by the step it stands for.
  const share = Math.log(step / resolution);
  return Float64Array.from({ length: steps + 1 }, (_, f) => {
    let sum = 0;
    for (let p = 0; p < places.length; p++) sum += Math.exp(ofAdvancing[p] + ofRetracting[steps - f + p]);
    return share + (sum > 0 ? Math.log(sum) : floorOf(ofAdvancing, ofRetracting, steps - f));
  });
}

/** The greatest single term, where the sum is too small for its logarithm. */
function floorOf(ofAdvancing: readonly number[], ofRetracting: Float64Array, offset: number): number {
  return Math.max(...ofAdvancing.map((log, p) => log + ofRetracting[offset + p]));
}

/** Logarithm of the chance that values scattered about a place are rounded to the given readings. */
function logChances(rounded: readonly number[], place: number, sigma: number, resolution: number): number {
  let sum = 0;
  for (const value of rounded) sum += logChance((value - place) / sigma, resolution / (2 * sigma));
  return sum;
}

/** Logarithm of the normal chance of the stretch from z − h to z + h. */
function logChance(z: number, h: number): number {
  const near = Math.abs(z) - h;
  const chance = 0.5 * (erfc(near / Math.SQRT2) - erfc((near + 2 * h) / Math.SQRT2));
  return chance > 1e-300 ? Math.log(chance) : -0.5 * near * near;
}
