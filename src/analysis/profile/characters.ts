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
type Worn = Omit<Wear, "engaged">;

export interface Character {
  readonly name: string;
  /** Prior chance. */
  readonly weight: number;
  readonly dimensions: number;
  readonly worn: (u: Float64Array) => Worn;
}

export const CHARACTERS: readonly Character[] = [
  { name: "bump", weight: 0.14, dimensions: 3, worn: (u) => ({ first: bump(u, 0) }) },
  { name: "plateau", weight: 0.12, dimensions: 5, worn: plateau },
  { name: "worn end", weight: 0.11, dimensions: 4, worn: wornEnd },
  { name: "taper", weight: 0.07, dimensions: 3, worn: taper },
  { name: "steep side and long tail", weight: 0.08, dimensions: 5, worn: steepAndTail },
  { name: "two bumps", weight: 0.07, dimensions: 7, worn: twoBumps },
  { name: "free patch", weight: 0.03, dimensions: 6, worn: (u) => ({ first: freePatch(u, 0) }) },
  { name: "two free patches", weight: 0.03, dimensions: 13, worn: twoFreePatches },
];

/** A nut is as stiff as its whole length in this share of cases, and gives by an unknown amount in the others. */
const STIFF = 0.75;

/** How many numbers make a shape of the character: its own, and the nut's stiffness. */
export function dimensionsOf({ dimensions }: Character): number {
  return dimensions + 1;
}

/** The shape that numbers between 0 and 1 stand for. */
export function wornBy({ worn, dimensions }: Character, u: Float64Array): Wear {
  const stiffness = u[dimensions];
  return { ...worn(u), engaged: stiffness < STIFF ? 1 : (1 - stiffness) / (1 - STIFF) };
}

/** Prior chance of a profile that is the same everywhere: what the characters leave. */
export const EVEN_CHANCE = 1 - CHARACTERS.reduce((sum, { weight }) => sum + weight, 0);

function evenly(u: number, low: number, high: number): number {
  return low + (high - low) * u;
}

function byRatio(u: number, low: number, high: number): number {
  return low * (high / low) ** u;
}

function oneOf(falls: readonly Fall[], u: number): Fall {
  return falls[Math.min(falls.length - 1, Math.floor(u * falls.length))];
}

/** Runs the other way where the number is in the upper half. */
function mirrored(u: number, patch: Patch): Patch {
  if (u < 0.5) return patch;
  const { from, to, before, after, rise, fall } = patch;
  return { from: 1 - to, to: 1 - from, before: after, after: before, rise: fall, fall: rise };
}

/** Deepest at one place, alike on both sides; the width is measured at half the depth. */
function bump(u: Float64Array, at: number): Patch {
  const centre = evenly(u[at], -0.05, 1.05);
  const half = byRatio(u[at + 1], 0.05, 0.7) / 2;
  const fall = oneOf([peaked, bell, bell, shouldered], u[at + 2]);
  return { from: centre, to: centre, before: half, after: half, rise: fall, fall };
}

function plateau(u: Float64Array): Worn {
  const half = byRatio(u[1], 0.08, 0.8) / 2;
  const centre = evenly(u[0], 0, 1);
  const before = byRatio(u[2], 0.004, 0.08);
  const after = byRatio(u[3], 0.004, 0.08);
  const fall = oneOf([bell, shouldered, straight], u[4]);
  return {
    first: { from: centre - half + before, to: centre + half - after, before, after, rise: fall, fall },
  };
}

/** Worn from beyond one end of the travel to some way along it. */
function wornEnd(u: Float64Array): Worn {
  const reach = evenly(u[0], 0.05, 0.65);
  const after = byRatio(u[1], 0.01, 0.25);
  const fall = oneOf([bell, shouldered, straight], u[2]);
  return { first: mirrored(u[3], { from: -2, to: reach - after, before: 1, after, rise: fall, fall }) };
}

/** Evenly deeper from one end to the other. */
function taper(u: Float64Array): Worn {
  const none = evenly(u[0], -0.15, 0.3);
  const full = evenly(u[1], 0.7, 1.15);
  const before = (full - none) / 2;
  return { first: mirrored(u[2], { from: full, to: 3, before, after: 1, rise: straight, fall: straight }) };
}

function steepAndTail(u: Float64Array): Worn {
  const deepest = evenly(u[0], -0.05, 0.95);
  const before = byRatio(u[1], 0.004, 0.05);
  const after = byRatio(u[2], 0.04, 0.5);
  const fall = oneOf([exponential, peaked, straight], u[3]);
  return { first: mirrored(u[4], { from: deepest, to: deepest, before, after, rise: shouldered, fall }) };
}

function twoBumps(u: Float64Array): Worn {
  return { first: bump(u, 0), second: bump(u, 3), share: evenly(u[6], 0.25, 1) };
}

function freePatch(u: Float64Array, at: number): Patch {
  const centre = evenly(u[at], -0.15, 1.15);
  const half = byRatio(u[at + 1], 0.002, 0.5);
  const falls = [exponential, peaked, bell, shouldered, straight];
  return {
    from: centre - half,
    to: centre + half,
    before: byRatio(u[at + 2], 0.005, 0.7),
    after: byRatio(u[at + 3], 0.005, 0.7),
    rise: oneOf(falls, u[at + 4]),
    fall: oneOf(falls, u[at + 5]),
  };
}

function twoFreePatches(u: Float64Array): Worn {
  return { first: freePatch(u, 0), second: freePatch(u, 6), share: byRatio(u[12], 0.1, 1) };
}
