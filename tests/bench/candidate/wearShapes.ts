import { type BrokenLine, brokenLine } from "./brokenLine.ts";
import {
  alongLine,
  bell,
  exponential,
  type Fall,
  type Flank,
  onePatch,
  type Patch,
  peaked,
  shouldered,
  straight,
  type Wear,
} from "./patch.ts";
import { STIFF_NUT } from "./priors.ts";

/**
 * The ways in which screws wear, before any reading is looked at. Each wear shape turns numbers that are evenly
 * spread between 0 and 1 into wear, so its prior is even over the unit cube.
 */
export interface WearShape {
  readonly name: string;
  /** Prior chance. */
  readonly weight: number;
  readonly dimensions: number;
  /** The wear for numbers from the cube, and for the share of the nut that is engaged. */
  readonly worn: (u: Float64Array, engaged: number) => Wear;
}

/**
 * The first six are what one job done over and over does to a screw; then several worn places, both ends, and steps
 * that lengths of work leave; then flanks that have worn each by itself, as slides pushed one way under load have; the
 * free patches catch what the others do not.
 */
export const WEAR_SHAPES: readonly WearShape[] = [
  { name: "bump", weight: 0.13, dimensions: 3, worn: (u, engaged) => alike(onePatch(bump(u, 0)), engaged) },
  {
    name: "plateau",
    weight: 0.1,
    dimensions: 5,
    worn: (u, engaged) => alike(onePatch(plateau(u, 0)), engaged),
  },
  {
    name: "worn end",
    weight: 0.09,
    dimensions: 4,
    worn: (u, engaged) => alike(onePatch(mirrored(u[3], wornEnd(u, 0))), engaged),
  },
  { name: "taper", weight: 0.05, dimensions: 3, worn: taper },
  { name: "steep side and long tail", weight: 0.06, dimensions: 5, worn: steepAndTail },
  {
    name: "two bumps",
    weight: 0.05,
    dimensions: 7,
    worn: (u, engaged) => alike(deepestOf([bump(u, 0), bump(u, 3)], [1, heightFrom(u[6])]), engaged),
  },
  { name: "three bumps", weight: 0.02, dimensions: 11, worn: threeBumps },
  { name: "both ends", weight: 0.025, dimensions: 8, worn: bothEnds },
  { name: "two steps", weight: 0.02, dimensions: 11, worn: twoSteps },
  { name: "three steps", weight: 0.015, dimensions: 17, worn: threeSteps },
  { name: "a bump on each flank", weight: 0.025, dimensions: 7, worn: bumpPerFlank },
  { name: "two bumps on each flank", weight: 0.015, dimensions: 15, worn: twoBumpsPerFlank },
  {
    name: "line of four knots",
    weight: 0.035,
    dimensions: 6,
    worn: (u, engaged) => alike(alongLine(line(u, 0, 4)), engaged),
  },
  {
    name: "line of six knots",
    weight: 0.025,
    dimensions: 10,
    worn: (u, engaged) => alike(alongLine(line(u, 0, 6)), engaged),
  },
  { name: "a line of four knots on each flank", weight: 0.02, dimensions: 13, worn: linePerFlank },
  {
    name: "free patch",
    weight: 0.015,
    dimensions: 6,
    worn: (u, engaged) => alike(onePatch(freePatch(u, 0)), engaged),
  },
  { name: "two free patches", weight: 0.015, dimensions: 13, worn: twoFreePatches },
  { name: "a free patch on each flank", weight: 0.02, dimensions: 13, worn: freePatchPerFlank },
];

/** Prior chance of a profile that is the same everywhere: what the wear shapes leave. */
export const EVEN_CHANCE = 1 - WEAR_SHAPES.reduce((sum, { weight }) => sum + weight, 0);

/** How many numbers make a wear of the shape: its own, and the nut's stiffness. */
export function dimensionsOf({ dimensions }: WearShape): number {
  return dimensions + 1;
}

/** The wear that numbers between 0 and 1 stand for. */
export function wornBy({ worn, dimensions }: WearShape, u: Float64Array): Wear {
  const stiffness = u[dimensions];
  return worn(u, stiffness < STIFF_NUT ? 1 : (1 - stiffness) / (1 - STIFF_NUT));
}

function alike(first: Flank, engaged: number): Wear {
  return { first, share: 1, engaged };
}

function deepestOf(patches: readonly Patch[], heights: readonly number[]): Flank {
  return { patches, heights, summed: false };
}

function heightFrom(u: number): number {
  return evenly(u, 0.25, 1);
}

/** Runs the other way where the number is in the upper half. */
function mirrored(u: number, patch: Patch): Patch {
  return u < 0.5 ? patch : turned(patch);
}

function turned({ from, to, before, after, rise, fall }: Patch): Patch {
  return { from: 1 - to, to: 1 - from, before: after, after: before, rise: fall, fall: rise };
}

const bumpWidth = byRatio(0.08, 0.7);
const bumpFall = oneOf([peaked, bell, bell, shouldered]);

/** Deepest at one place, alike on both sides; the width is measured at half the depth. */
function bump(u: Float64Array, at: number): Patch {
  const centre = evenly(u[at], -0.05, 1.05);
  const half = bumpWidth(u[at + 1]) / 2;
  const fall = bumpFall(u[at + 2]);
  return { from: centre, to: centre, before: half, after: half, rise: fall, fall };
}

const plateauLength = byRatio(0.08, 0.8);
const plateauEdge = byRatio(0.004, 0.08);
const edgeFall = oneOf([bell, shouldered, straight]);

/** Level between two edges. */
function plateau(u: Float64Array, at: number): Patch {
  const half = plateauLength(u[at + 1]) / 2;
  const centre = evenly(u[at], 0, 1);
  const before = Math.min(half, plateauEdge(u[at + 2]));
  const after = Math.min(half, plateauEdge(u[at + 3]));
  const fall = edgeFall(u[at + 4]);
  return { from: centre - half + before, to: centre + half - after, before, after, rise: fall, fall };
}

const endEdge = byRatio(0.01, 0.25);

/** Worn from beyond one end of the travel to some way along it. */
function wornEnd(u: Float64Array, at: number): Patch {
  const reach = evenly(u[at], 0.05, 0.65);
  const after = endEdge(u[at + 1]);
  const fall = edgeFall(u[at + 2]);
  return { from: -2, to: reach - after, before: 1, after, rise: fall, fall };
}

/** Both ends, the one less than the other. */
function bothEnds(u: Float64Array, engaged: number): Wear {
  const first = wornEnd(u, 0);
  const second = turned(wornEnd(u, 3));
  const height = evenly(u[6], 0.15, 1);
  const heights = u[7] < 0.5 ? [1, height] : [height, 1];
  return alike(deepestOf([first, second], heights), engaged);
}

/** Evenly deeper from one end to the other. */
function taper(u: Float64Array, engaged: number): Wear {
  const none = evenly(u[0], -0.15, 0.3);
  const full = evenly(u[1], 0.7, 1.15);
  const before = (full - none) / 2;
  const patch = { from: full, to: 3, before, after: 1, rise: straight, fall: straight };
  return alike(onePatch(mirrored(u[2], patch)), engaged);
}

const steepSide = byRatio(0.004, 0.05);
const longTail = byRatio(0.04, 0.5);
const tailFall = oneOf([exponential, peaked, straight]);

function steepAndTail(u: Float64Array, engaged: number): Wear {
  const deepest = evenly(u[0], -0.05, 0.95);
  const before = steepSide(u[1]);
  const after = longTail(u[2]);
  const fall = tailFall(u[3]);
  const patch = { from: deepest, to: deepest, before, after, rise: shouldered, fall };
  return alike(onePatch(mirrored(u[4], patch)), engaged);
}

function threeBumps(u: Float64Array, engaged: number): Wear {
  const patches = [bump(u, 0), bump(u, 3), bump(u, 6)];
  return alike(deepestOf(patches, [1, heightFrom(u[9]), heightFrom(u[10])]), engaged);
}

function twoSteps(u: Float64Array, engaged: number): Wear {
  return alike(
    { patches: [plateau(u, 0), plateau(u, 5)], heights: summing([1, u[10]]), summed: true },
    engaged,
  );
}

function threeSteps(u: Float64Array, engaged: number): Wear {
  const patches = [plateau(u, 0), plateau(u, 5), plateau(u, 10)];
  return alike({ patches, heights: summing([1, u[15], u[16]]), summed: true }, engaged);
}

/** Heights of patches that add up: the first is the tallest, and the tallest wear stays near 1. */
function summing(shares: readonly number[]): readonly number[] {
  return shares.map((share) => 0.15 + 0.85 * share);
}

const flankShare = (u: number): number => evenly(u, 0.15, 0.85);

function bumpPerFlank(u: Float64Array, engaged: number): Wear {
  return { first: onePatch(bump(u, 0)), second: onePatch(bump(u, 3)), share: flankShare(u[6]), engaged };
}

function twoBumpsPerFlank(u: Float64Array, engaged: number): Wear {
  return {
    first: deepestOf([bump(u, 0), bump(u, 3)], [1, heightFrom(u[12])]),
    second: deepestOf([bump(u, 6), bump(u, 9)], [1, heightFrom(u[13])]),
    share: flankShare(u[14]),
    engaged,
  };
}

/** Wear that rises and falls in any way: knots at both ends, just beyond the travel, and anywhere between. */
function line(u: Float64Array, at: number, knots: number): BrokenLine {
  const places = Array.from({ length: knots }, (_, k) =>
    k === 0 ? -0.05 : k === 1 ? 1.05 : evenly(u[at + knots + k - 2], -0.05, 1.05),
  );
  return brokenLine(places.map((place, k) => [place, u[at + k]] as const));
}

function linePerFlank(u: Float64Array, engaged: number): Wear {
  return {
    first: alongLine(line(u, 0, 4)),
    second: alongLine(line(u, 6, 4)),
    share: flankShare(u[12]),
    engaged,
  };
}

const freeHalfLength = byRatio(0.002, 0.5);
const freeEdge = byRatio(0.005, 0.7);
const anyFall = oneOf([exponential, peaked, bell, shouldered, straight]);

function freePatch(u: Float64Array, at: number): Patch {
  const centre = evenly(u[at], -0.15, 1.15);
  const half = freeHalfLength(u[at + 1]);
  return {
    from: centre - half,
    to: centre + half,
    before: freeEdge(u[at + 2]),
    after: freeEdge(u[at + 3]),
    rise: anyFall(u[at + 4]),
    fall: anyFall(u[at + 5]),
  };
}

const freeHeight = byRatio(0.1, 1);

function twoFreePatches(u: Float64Array, engaged: number): Wear {
  return alike(deepestOf([freePatch(u, 0), freePatch(u, 6)], [1, freeHeight(u[12])]), engaged);
}

function freePatchPerFlank(u: Float64Array, engaged: number): Wear {
  return {
    first: onePatch(freePatch(u, 0)),
    second: onePatch(freePatch(u, 6)),
    share: flankShare(u[12]),
    engaged,
  };
}

function evenly(u: number, low: number, high: number): number {
  return low + (high - low) * u;
}

/** Spread evenly in the logarithm. */
function byRatio(low: number, high: number): (u: number) => number {
  const span = Math.log(high / low);
  return (u) => low * Math.exp(span * u);
}

function oneOf(falls: readonly Fall[]): (u: number) => Fall {
  return (u) => falls[Math.min(falls.length - 1, Math.floor(u * falls.length))];
}
