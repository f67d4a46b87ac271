import { normals, type Random } from "../../../src/analysis/statistics/random.ts";
import { gridOf, type ProfileData } from "./draws.ts";
import { type Evidence, evidenceOf } from "./evidence.ts";
import type { Matern } from "./matern.ts";
import { type Scatter, scatterGrid } from "./noise.ts";
import { leastEngaged, type Wear } from "./patch.ts";
import { DISCREPANCY } from "./priors.ts";
import { type RoundedLikelihood, roundedLikelihood } from "./rounding.ts";
import { dimensionsOf, WEAR_SHAPES, wornBy } from "./wearShapes.ts";

/** Everything that does not change while one survey is fitted. */
export interface Posterior {
  readonly data: ProfileData;
  /** The stations' places, and half the engaged length, as shares of the travel. */
  readonly places: Float64Array;
  readonly reach: number;
  readonly grid: readonly Scatter[];
  /** The first is none; each of the others is as likely as another. */
  readonly discrepancies: readonly (Matern | undefined)[];
  readonly evidence: Evidence;
  readonly rounded: RoundedLikelihood;
  readonly random: Random;
  readonly normal: () => number;
  /** Positions at which profiles are kept, in millimetres and as shares of the travel. */
  readonly positions: Float64Array;
  readonly shares: Float64Array;
}

/** Index of the profile that is the same everywhere, after those of the wear shapes. */
export const EVEN = WEAR_SHAPES.length;

/** A worn screw but for level, depth and scatter: a wear shape, with where in its unit cube. */
export interface Particle {
  /** Index into the wear shapes, or `EVEN`. */
  readonly shape: number;
  /** The shape's numbers, the nut's stiffness, and which discrepancy. */
  readonly u: Float64Array;
}

export function posteriorOf(data: ProfileData, random: Random): Posterior {
  const { travel, stations, engagedLength } = data;
  const span = travel.to - travel.from;
  const grid = scatterGrid(data);
  const rounded = roundedLikelihood(data, grid);
  const discrepancies = discrepanciesFor(data);
  const positions = gridOf(data);
  return {
    data,
    places: Float64Array.from(stations, ({ position }) => (position - travel.from) / span),
    reach: engagedLength / (2 * span),
    grid,
    discrepancies,
    evidence: evidenceOf(data, grid, rounded, discrepancies),
    rounded,
    random,
    normal: normals(random),
    positions,
    shares: positions.map((at) => (at - travel.from) / span),
  };
}

function discrepanciesFor({ engagedLength, resolution }: ProfileData): readonly (Matern | undefined)[] {
  const { amplitudes, lengths, coarsest } = DISCREPANCY;
  if (resolution > coarsest) return [undefined];
  return [
    undefined,
    ...amplitudes.flatMap((amplitude) =>
      lengths.map((length) => ({ amplitude, length: length * engagedLength })),
    ),
  ];
}

/** How many numbers make a particle of a shape. */
export function numbersOf(shape: number, { discrepancies }: Pick<Posterior, "discrepancies">): number {
  return dimensionsOf(WEAR_SHAPES[shape]) + (discrepancies.length > 1 ? 1 : 0);
}

export function wearOf({ shape, u }: Particle): Wear | undefined {
  return shape === EVEN ? undefined : wornBy(WEAR_SHAPES[shape], u);
}

/** Which discrepancy a particle has: 0 for none. */
export function discrepancyOf(
  { shape, u }: Particle,
  { discrepancies }: Pick<Posterior, "discrepancies">,
): number {
  if (shape === EVEN || discrepancies.length === 1) return 0;
  const share = (u[u.length - 1] - DISCREPANCY.none) / (1 - DISCREPANCY.none);
  return share < 0
    ? 0
    : 1 + Math.min(discrepancies.length - 2, Math.floor(share * (discrepancies.length - 1)));
}

/** Wear that the nut meets at each station, as a share of the deepest. */
export function engagedAtStations(
  particle: Particle,
  { places, reach }: Posterior,
  into: Float64Array,
): void {
  const wear = wearOf(particle);
  if (wear === undefined) into.fill(0);
  else leastEngaged(wear, places, reach, into);
}
