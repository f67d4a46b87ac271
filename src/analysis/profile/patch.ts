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

/** Worn patches of which the deeper one counts wherever they meet; the second may be shallower than the first. */
export interface Wear {
  readonly first: Patch;
  readonly second?: Patch | undefined;
  /** Depth of the second patch as a share of the first's. */
  readonly share?: number | undefined;
  /** Share of the nut's engaged length that stops it: less than 1 for a nut that gives. */
  readonly engaged: number;
}

/**
 * Wear that a nut meets at each position: the least over its engaged length.
 *
 * The least of a patch over a stretch lies at one of the stretch's ends; of the deeper of two patches, at an end or
 * in the valley between them.
 *
 * @param positions shares of the travel
 * @param halfNut half the engaged length as a share of the travel
 * @param into where the result is written, of the same length as the positions
 */
export function leastEngaged(wear: Wear, positions: Float64Array, halfNut: number, into: Float64Array): void {
  const { first, second, share = 1 } = wear;
  const reach = halfNut * wear.engaged;
  if (second === undefined) {
    leastOf(first, positions, reach, into);
    return;
  }
  const valley = valleyBetween(first, second, share);
  const floor = Math.max(worn(first, valley), share * worn(second, valley));
  for (let i = 0; i < positions.length; i++) {
    const from = positions[i] - reach;
    const to = positions[i] + reach;
    const ends = Math.min(
      Math.max(worn(first, from), share * worn(second, from)),
      Math.max(worn(first, to), share * worn(second, to)),
    );
    into[i] = from < valley && valley < to ? Math.min(ends, floor) : ends;
  }
}

/**
 * Where lost motion may be greatest: for each patch, the position at which both ends of the nut meet the same wear.
 * It can stand as a narrow peak that evenly spaced positions miss.
 */
export function peaksOf({ first, second, engaged }: Wear, halfNut: number): readonly number[] {
  const reach = halfNut * engaged;
  return second === undefined ? [peakOf(first, reach)] : [peakOf(first, reach), peakOf(second, reach)];
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

/** The place between two patches where the one falling meets the other rising, by halving. */
function valleyBetween(first: Patch, second: Patch, share: number): number {
  let towardsFirst = 0.5 * (first.from + first.to);
  let towardsSecond = 0.5 * (second.from + second.to);
  for (let i = 0; i < 14; i++) {
    const middle = 0.5 * (towardsFirst + towardsSecond);
    if (worn(first, middle) > share * worn(second, middle)) towardsFirst = middle;
    else towardsSecond = middle;
  }
  return 0.5 * (towardsFirst + towardsSecond);
}
