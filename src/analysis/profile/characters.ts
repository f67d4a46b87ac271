import {
  bell,
  exponential,
  type Fall,
  type Patch,
  peaked,
  shouldered,
  straight,
  type Wear,
} from "./patch.ts";

/**
 * The ways in which screws wear, before any reading is looked at. Each character turns numbers that are evenly
 * spread between 0 and 1 into a shape, so its prior is even over the unit cube.
 *
 * The first six are what use does to a screw; the last two are free patches, which catch what the others do not.
 */
export interface Character {
  readonly name: string;
  /** Prior chance. */
  readonly weight: number;
  readonly dimensions: number;
  /** The shape for numbers from the cube, and for the share of the nut that is engaged. */
  readonly worn: (u: Float64Array, engaged: number) => Wear;
}

export const CHARACTERS: readonly Character[] = [
  { name: "bump", weight: 0.16, dimensions: 3, worn: (u, engaged) => ({ first: bump(u, 0), engaged }) },
  { name: "plateau", weight: 0.15, dimensions: 5, worn: plateau },
  { name: "worn end", weight: 0.12, dimensions: 4, worn: wornEnd },
  { name: "taper", weight: 0.08, dimensions: 3, worn: taper },
  { name: "steep side and long tail", weight: 0.08, dimensions: 5, worn: steepAndTail },
  { name: "two bumps", weight: 0.07, dimensions: 7, worn: twoBumps },
  {
    name: "free patch",
    weight: 0.02,
    dimensions: 6,
    worn: (u, engaged) => ({ first: freePatch(u, 0), engaged }),
  },
  { name: "two free patches", weight: 0.02, dimensions: 13, worn: twoFreePatches },
];

/** A nut is as stiff as its whole length in this share of cases, and gives by an unknown amount in the others. */
const STIFF = 0.9;

/** How many numbers make a shape of the character: its own, and the nut's stiffness. */
export function dimensionsOf({ dimensions }: Character): number {
  return dimensions + 1;
}

/** The shape that numbers between 0 and 1 stand for. */
export function wornBy({ worn, dimensions }: Character, u: Float64Array): Wear {
  const stiffness = u[dimensions];
  return worn(u, stiffness < STIFF ? 1 : (1 - stiffness) / (1 - STIFF));
}

/** Prior chance of a profile that is the same everywhere: what the characters leave. */
export const EVEN_CHANCE = 1 - CHARACTERS.reduce((sum, { weight }) => sum + weight, 0);

/** Runs the other way where the number is in the upper half. */
function mirrored(u: number, patch: Patch): Patch {
  if (u < 0.5) return patch;
  const { from, to, before, after, rise, fall } = patch;
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

function plateau(u: Float64Array, engaged: number): Wear {
  const half = plateauLength(u[1]) / 2;
  const centre = evenly(u[0], 0, 1);
  const before = Math.min(half, plateauEdge(u[2]));
  const after = Math.min(half, plateauEdge(u[3]));
  const fall = edgeFall(u[4]);
  const first = { from: centre - half + before, to: centre + half - after, before, after, rise: fall, fall };
  return { first, engaged };
}

const endEdge = byRatio(0.01, 0.25);

/** Worn from beyond one end of the travel to some way along it. */
function wornEnd(u: Float64Array, engaged: number): Wear {
  const reach = evenly(u[0], 0.05, 0.65);
  const after = endEdge(u[1]);
  const fall = edgeFall(u[2]);
  const first = mirrored(u[3], { from: -2, to: reach - after, before: 1, after, rise: fall, fall });
  return { first, engaged };
}

/** Evenly deeper from one end to the other. */
function taper(u: Float64Array, engaged: number): Wear {
  const none = evenly(u[0], -0.15, 0.3);
  const full = evenly(u[1], 0.7, 1.15);
  const before = (full - none) / 2;
  const first = mirrored(u[2], { from: full, to: 3, before, after: 1, rise: straight, fall: straight });
  return { first, engaged };
}

const steepSide = byRatio(0.004, 0.05);
const longTail = byRatio(0.04, 0.5);
const tailFall = oneOf([exponential, peaked, straight]);

function steepAndTail(u: Float64Array, engaged: number): Wear {
  const deepest = evenly(u[0], -0.05, 0.95);
  const before = steepSide(u[1]);
  const after = longTail(u[2]);
  const fall = tailFall(u[3]);
  const first = mirrored(u[4], { from: deepest, to: deepest, before, after, rise: shouldered, fall });
  return { first, engaged };
}

function twoBumps(u: Float64Array, engaged: number): Wear {
  return { first: bump(u, 0), second: bump(u, 3), share: evenly(u[6], 0.25, 1), engaged };
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

const freeShare = byRatio(0.1, 1);

function twoFreePatches(u: Float64Array, engaged: number): Wear {
  return { first: freePatch(u, 0), second: freePatch(u, 6), share: freeShare(u[12]), engaged };
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
