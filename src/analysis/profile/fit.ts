import { normals, type Random } from "../statistics/random.ts";
import type { ProfileData } from "./draws.ts";
import { type Evidence, evidenceOf, logDepthPrior } from "./evidence.ts";
import { type Scatter, scatterGrid } from "./noise.ts";
import { leastEngaged } from "./patch.ts";
import { type RoundedLikelihood, roundedLikelihood } from "./rounding.ts";
import { EVEN, type Particle, wearOf } from "./temper.ts";

/** Everything that does not change while one survey is fitted. */
export interface Fit {
  readonly data: ProfileData;
  /** The stations' places, and half the engaged length, as shares of the travel. */
  readonly places: Float64Array;
  readonly reach: number;
  readonly grid: readonly Scatter[];
  readonly evidence: Evidence;
  readonly rounded: RoundedLikelihood;
  readonly random: Random;
  readonly normal: () => number;
}

/** A worn screw with all its numbers: lost motion is level + depth × shape. */
export interface State extends Omit<Particle, "log"> {
  /** Wear that the nut meets at each station, as a share of the deepest. */
  readonly shape: Float64Array;
  readonly level: number;
  readonly depth: number;
  /** Index into the grid of repeatabilities. */
  readonly scatter: number;
}

export function fitOf(data: ProfileData, random: Random): Fit {
  const { travel, stations } = data;
  const span = travel.to - travel.from;
  const grid = scatterGrid(data);
  return {
    data,
    places: Float64Array.from(stations, ({ position }) => (position - travel.from) / span),
    reach: data.engagedLength / (2 * span),
    grid,
    evidence: evidenceOf(data, grid),
    rounded: roundedLikelihood(data, grid),
    random,
    normal: normals(random),
  };
}

/** Wear that the nut meets at each station. */
export function shapeOf(particle: Pick<Particle, "character" | "u">, fit: Fit): Float64Array {
  const shape = new Float64Array(fit.places.length);
  const wear = wearOf(particle);
  if (wear !== undefined) leastEngaged(wear, fit.places, fit.reach, shape);
  return shape;
}

/** Logarithm of the posterior, to a constant, with readings rounded as they really are. */
export function logPosterior({ character, shape, level, depth, scatter }: State, fit: Fit): number {
  const { sigma, logPrior } = fit.grid[scatter];
  let sum = logPrior + (character === EVEN ? 0 : logDepthPrior(depth));
  // Lost motion is not below nothing; readings that are must still be fitted, to be told of.
  if (level < 0) sum -= 0.5 * (level / sigma) ** 2;
  for (let i = 0; i < shape.length; i++) sum += fit.rounded(i, scatter, level + depth * shape[i]);
  return sum;
}

/** The same with rounding as a normal error that repeats at a station share, as in the evidence. */
export function logNormalPosterior({ character, shape, level, depth, scatter }: State, fit: Fit): number {
  const { sigma, tau, logPrior } = fit.grid[scatter];
  const { stations, resolution, roundings } = fit.data;
  const rounding = (roundings * resolution ** 2) / 12;
  const variance = sigma ** 2 + rounding / 4;
  let sum = logPrior + (character === EVEN ? 0 : logDepthPrior(depth));
  stations.forEach(({ readings, mean, squares }, i) => {
    const spread = sigma ** 2 / readings.length + rounding + tau ** 2;
    sum -= 0.5 * ((mean - level - depth * shape[i]) ** 2 / spread + Math.log(spread));
    sum -= 0.5 * ((readings.length - 1) * Math.log(variance) + squares / variance);
  });
  return sum;
}
