import { type BrokenLine, leastOfLine, peaksOfLine } from "./brokenLine.ts";
import { between } from "./table.ts";

/**
 * A worn patch of the screw: a level stretch, deepest along its whole length, that falls off to either side. Places
 * and distances are shares of the travel.
 */
export interface Patch {
  readonly from: number;
  readonly to: number;
  /** Distance from the level stretch at which wear has fallen to a half, before it and after it. */
  readonly before: number;
  readonly after: number;
  readonly rise: Fall;
  readonly fall: Fall;
}

/**
 * How wear falls off with the distance, which is 1 where it has fallen to a half: shares of the deepest at evenly
 * spaced distances, the last of which is nothing. Read by straight lines, to two parts in a hundred thousand.
 */
export interface Fall {
  readonly perUnit: number;
  readonly shares: Float64Array;
}

/** Beyond the reach, where less than a ten-millionth is left, nothing is. */
function tabulated(reach: number, perUnit: number, share: (distance: number) => number): Fall {
  const last = reach * perUnit;
  const shares = Float64Array.from({ length: last + 1 }, (_, i) => (i < last ? share(i / perUnit) : 0));
  return { perUnit, shares };
}

export const exponential = tabulated(24, 64, (d) => 2 ** -d);
export const peaked = tabulated(9, 256, (d) => 2 ** -(d * Math.sqrt(d)));
export const bell = tabulated(5, 128, (d) => 2 ** -(d * d));
export const shouldered = tabulated(3, 128, (d) => 2 ** -(d * d * d));
export const straight = tabulated(2, 64, (d) => 1 - 0.5 * d);

/** The share that is left at a distance, which is not below 0. */
export function shareLeft({ perUnit, shares }: Fall, distance: number): number {
  const place = distance * perUnit;
  if (!(place < shares.length - 1)) return 0;
  return between(shares, place);
}

/**
 * How one flank has worn: along a broken line, or in patches of which the deepest counts wherever they meet, or which add up where they are
 * summed. A height is the depth of a patch as a share of the deepest wear.
 */
export interface Flank {
  readonly patches: readonly Patch[];
  readonly heights: readonly number[];
  readonly summed: boolean;
  /** Takes the place of the patches. */
  readonly line?: BrokenLine | undefined;
}

/** Wear of a screw: of both flanks alike where there is no second flank, else of each flank by itself. */
export interface Wear {
  readonly first: Flank;
  readonly second?: Flank | undefined;
  /** The first flank's share of the depth, where there is a second. */
  readonly share: number;
  /** Share of the nut's engaged length that stops it: less than 1 for a nut that gives. */
  readonly engaged: number;
}

/** A flank worn along straight lines between knots. */
export function alongLine(line: BrokenLine): Flank {
  return { patches: [], heights: [], summed: false, line };
}

/** One patch. */
export function onePatch(patch: Patch): Flank {
  return { patches: [patch], heights: [1], summed: false };
}

/**
 * Wear that a nut meets at each position: the sum over the flanks of the least over its engaged length.
 *
 * @param positions shares of the travel
 * @param halfNut half the engaged length as a share of the travel
 * @param into where the result is written, of the same length as the positions
 */
export function leastEngaged(wear: Wear, positions: Float64Array, halfNut: number, into: Float64Array): void {
  const { first, second, share } = wear;
  const reach = halfNut * wear.engaged;
  leastOfFlank(first, positions, reach, into);
  if (second === undefined) return;
  if (scratch.length < positions.length) scratch = new Float64Array(positions.length);
  leastOfFlank(second, positions, reach, scratch);
  for (let i = 0; i < positions.length; i++) into[i] = share * into[i] + (1 - share) * scratch[i];
}

let scratch = new Float64Array(256);

/** The least wear of one flank within reach of each position. */
export function leastOfFlank(flank: Flank, positions: Float64Array, reach: number, into: Float64Array): void {
  if (flank.line !== undefined) {
    leastOfLine(flank.line, positions, reach, into);
    return;
  }
  if (flank.patches.length === 1) {
    leastOf(flank.patches[0], positions, reach, into);
    return;
  }
  const { patches, heights, summed } = flank;
  const count = positions.length;
  if (behind.length < count) {
    behind = new Float64Array(count);
    ahead = new Float64Array(count);
  }
  behind.fill(0, 0, count);
  ahead.fill(0, 0, count);
  for (let k = 0; k < patches.length; k++) {
    join(patches[k], heights[k], summed, positions, -reach, behind);
    join(patches[k], heights[k], summed, positions, reach, ahead);
  }
  for (let i = 0; i < count; i++) into[i] = Math.min(behind[i], ahead[i]);
  const lows = lowsOf(flank);
  for (let k = 0; k < lows.length; k++) {
    const floor = wornAt(flank, lows[k]);
    for (let i = 0; i < count; i++) {
      if (floor < into[i] && Math.abs(positions[i] - lows[k]) < reach) into[i] = floor;
    }
  }
}

/** Adds a patch at the positions, moved by an offset, to what is there, or keeps the deeper of the two. */
function join(
  { from, to, before, after, rise, fall }: Patch,
  height: number,
  summed: boolean,
  positions: Float64Array,
  offset: number,
  into: Float64Array,
): void {
  const perBefore = rise.perUnit / before;
  const perAfter = fall.perUnit / after;
  const risen = rise.shares;
  const fallen = fall.shares;
  for (let i = 0; i < positions.length; i++) {
    const at = positions[i] + offset;
    const ahead = from - at;
    const beyond = at - to;
    let value = height;
    if (ahead > 0) {
      const place = ahead * perBefore;
      value = place < risen.length - 1 ? height * between(risen, place) : 0;
    } else if (beyond > 0) {
      const place = beyond * perAfter;
      value = place < fallen.length - 1 ? height * between(fallen, place) : 0;
    }
    if (summed) into[i] += value;
    else if (value > into[i]) into[i] = value;
  }
}

let behind = new Float64Array(256);
let ahead = new Float64Array(256);

/**
 * Where lost motion may be greatest: for each patch, the position at which both ends of the nut meet the same wear.
 * It can stand as a narrow peak that evenly spaced positions miss.
 */
export function peaksOf({ first, second, engaged }: Wear, halfNut: number): readonly number[] {
  const reach = halfNut * engaged;
  const flanks = second === undefined ? [first] : [first, second];
  return flanks.flatMap(({ patches, line }) =>
    line === undefined ? patches.map((patch) => peakOf(patch, reach)) : peaksOfLine(line, reach),
  );
}

function peakOf(patch: Patch, reach: number): number {
  let left = patch.from - reach;
  let right = patch.to + reach;
  for (let i = 0; i < 24; i++) {
    const middle = 0.5 * (left + right);
    if (worn(patch, middle - reach) < worn(patch, middle + reach)) left = middle;
    else right = middle;
  }
  return 0.5 * (left + right);
}

/** The least of a patch within reach of each place: wear at whichever end of that stretch lies further off the patch. */
function leastOf(patch: Patch, positions: Float64Array, reach: number, into: Float64Array): void {
  const { from, to, rise, fall } = patch;
  const perBefore = 1 / patch.before;
  const perAfter = 1 / patch.after;
  for (let i = 0; i < positions.length; i++) {
    const at = positions[i];
    const ahead = from - at + reach;
    const behind = at + reach - to;
    const offBefore = ahead > 0 ? ahead * perBefore : 0;
    const offAfter = behind > 0 ? behind * perAfter : 0;
    if (rise === fall) into[i] = shareLeft(fall, Math.max(offBefore, offAfter));
    else {
      const risen = shareLeft(rise, offBefore);
      const fallen = shareLeft(fall, offAfter);
      into[i] = Math.min(risen, fallen);
    }
  }
}

/** Wear of a patch at a place, as a share of its deepest. */
function worn(patch: Patch, at: number): number {
  if (at < patch.from) return shareLeft(patch.rise, (patch.from - at) / patch.before);
  return at > patch.to ? shareLeft(patch.fall, (at - patch.to) / patch.after) : 1;
}

/** Wear of a flank at a place, as a share of the deepest. */
function wornAt({ patches, heights, summed }: Flank, at: number): number {
  let result = 0;
  for (let k = 0; k < patches.length; k++) {
    const value = heights[k] * worn(patches[k], at);
    if (summed) result += value;
    else if (value > result) result = value;
  }
  return result;
}

/** Places between patches at which wear may be less than at both ends of a stretch that holds them. */
function lowsOf({ patches, heights, summed }: Flank): readonly number[] {
  const lows: number[] = [];
  for (let k = 1; k < patches.length; k++) {
    for (let other = 0; other < k; other++) {
      const isAfter = middleOf(patches[k]) > middleOf(patches[other]);
      const [before, after] = isAfter ? [other, k] : [k, other];
      if (summed) {
        // Where the edges of patches that add up lie apart: the feet of both, and half way between them.
        const [left, right] = [patches[before], patches[after]];
        lows.push(left.to + 2 * left.after, right.from - 2 * right.before, 0.5 * (left.to + right.from));
      } else lows.push(valleyBetween(patches[before], patches[after], heights[after] / heights[before]));
    }
  }
  return lows;
}

function middleOf({ from, to }: Patch): number {
  return 0.5 * (from + to);
}

/** The place between two patches where the one falling meets the other rising, by halving. */
function valleyBetween(first: Patch, second: Patch, share: number): number {
  const perAfter = first.fall.perUnit / first.after;
  const perBefore = second.rise.perUnit / second.before;
  const fallen = first.fall.shares;
  const risen = second.rise.shares;
  let left = middleOf(first);
  let right = middleOf(second);
  for (let i = 0; i < 12; i++) {
    const middle = 0.5 * (left + right);
    const beyond = Math.max(0, middle - first.to) * perAfter;
    const ahead = Math.max(0, second.from - middle) * perBefore;
    const ofFirst = beyond < fallen.length - 1 ? between(fallen, beyond) : 0;
    const ofSecond = ahead < risen.length - 1 ? share * between(risen, ahead) : 0;
    if (ofFirst > ofSecond) left = middle;
    else right = middle;
  }
  return 0.5 * (left + right);
}
