import type { Estimate, WornZone } from "../assessment.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { estimateOf, quantilesAlong } from "../statistics/estimate.ts";

/** Chance that the wear in a zone is at least the stated bound. */
const CONFIDENCE = 0.975;

/**
 * Where the screw has worn, and a lower bound on the wear, both flanks together.
 *
 * Where lost motion at x is d above the tight spot, all the thread from x − E/2 to x + E/2 has worn by d or more. So
 * the wear at s is at least the greatest rise over all x within E/2 of s. The bound is computed draw by draw. A zone is
 * an interval in which the bound is at least half of its greatest value there.
 *
 * @param engagedLength in millimetres
 * @param least smallest wear to report, in millimetres
 * @param thickness thickness of the new thread at the pitch line, in millimetres, if known
 */
export function wornZonesOf(
  profile: ProfileDraws,
  engagedLength: number,
  least: number,
  thickness?: number,
): readonly WornZone[] {
  const { positions, draws } = profile;
  const rises = draws.map(({ backlash, tight }) =>
    greatestRiseNearby(positions, backlash, engagedLength / 2, tight.backlash),
  );
  const bound = quantilesAlong(rises, positions.length, 1 - CONFIDENCE);
  const zones: WornZone[] = [];
  for (const [start, end] of intervalsReaching(bound, least)) {
    const peak = Math.max(...bound.slice(start, end + 1));
    const level = Math.max(least, peak / 2);
    for (const [from, to] of intervalsReaching(bound.slice(start, end + 1), level)) {
      const deepest = estimateOf(rises.map((rise) => greatestWithin(rise, start + from, start + to)));
      zones.push({
        from: positions[start + from],
        to: positions[start + to],
        atLeast: level,
        deepest,
        thicknessLeft: thickness === undefined ? null : thicknessLeft(thickness, deepest),
      });
    }
  }
  return zones;
}

function greatestWithin(rise: Float64Array, first: number, last: number): number {
  let greatest = rise[first];
  for (let i = first + 1; i <= last; i++) if (rise[i] > greatest) greatest = rise[i];
  return greatest;
}

/** The share of its thickness left to a thread; it has lost the wear of both flanks together. */
function thicknessLeft(thickness: number, { value, low, high }: Estimate): Estimate {
  const left = (wear: number): number => Math.max(0, 1 - wear / thickness);
  return { value: left(value), low: left(high), high: left(low) };
}

/** For each position, the greatest rise above `least` within reach of it (a sliding maximum). */
function greatestRiseNearby(
  positions: Float64Array,
  backlash: Float64Array,
  reach: number,
  least: number,
): Float64Array {
  const result = new Float64Array(positions.length);
  // Indices in the window whose values no later one in it reaches, greatest first.
  const leading = new Int32Array(positions.length);
  let first = 0;
  let end = 0;
  let next = 0;
  for (let i = 0; i < positions.length; i++) {
    for (; next < positions.length && positions[next] <= positions[i] + reach; next++) {
      while (end > first && backlash[leading[end - 1]] <= backlash[next]) end--;
      leading[end] = next;
      end++;
    }
    while (positions[leading[first]] < positions[i] - reach) first++;
    result[i] = Math.max(0, backlash[leading[first]] - least);
  }
  return result;
}

/** Runs of neighbouring values that reach the level, as first and last index. */
function intervalsReaching(values: readonly number[], level: number): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  values.forEach((value, i) => {
    if (value < level) return;
    const last = found.at(-1);
    if (last !== undefined && last[1] === i - 1) last[1] = i;
    else found.push([i, i]);
  });
  return found;
}
