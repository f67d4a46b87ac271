import type { Estimate, WornZone } from "../assessment.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import { estimateOf, quantilesAlong } from "../statistics/estimate.ts";

/** Zones are told where the screw has worn by at least so much with this chance. */
const SURE = 0.975;

/**
 * Where the screw has worn, and by how much at least, both flanks together.
 *
 * Where lost motion at x is d above the tight spot, all the thread from x − E/2 to x + E/2 has worn by d or more; so
 * the wear at s is at least the greatest rise over all x within E/2 of s. The bound is taken draw by draw. A zone is
 * a stretch where the bound is at least half of what it reaches within the stretch; what is below the readings'
 * graduation is not told.
 *
 * @param engagedLength in millimetres
 * @param least smallest wear worth telling, in millimetres
 * @param thickness of the thread at the pitch line when it was new, in millimetres, where it is known
 */
export function wornZonesOf(
  profile: ProfileDraws,
  engagedLength: number,
  least: number,
  thickness?: number,
): readonly WornZone[] {
  const { positions, draws } = profile;
  const risen = draws.map(({ backlash, tight }) =>
    widened(positions, backlash, engagedLength / 2, tight.backlash),
  );
  const bound = quantilesAlong(risen, positions.length, 1 - SURE);
  const zones: WornZone[] = [];
  for (const [start, end] of stretches(bound, least)) {
    const peak = Math.max(...bound.slice(start, end + 1));
    const level = Math.max(least, peak / 2);
    for (const [from, to] of stretches(bound.slice(start, end + 1), level)) {
      const deepest = estimateOf(risen.map((rise) => greatestWithin(rise, start + from, start + to)));
      zones.push({
        from: positions[start + from],
        to: positions[start + to],
        atLeast: level,
        deepest,
        thicknessLeft: thickness === undefined ? null : leftOf(thickness, deepest),
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

/** Wear of both flanks together is what the thread has lost of its thickness. */
function leftOf(thickness: number, { value, low, high }: Estimate): Estimate {
  const left = (wear: number): number => Math.max(0, 1 - wear / thickness);
  return { value: left(value), low: left(high), high: left(low) };
}

/** The greatest rise above the least value within reach of each position. */
function widened(
  positions: Float64Array,
  backlash: Float64Array,
  reach: number,
  least: number,
): Float64Array {
  const result = new Float64Array(positions.length);
  // Those of the stretch that nothing later in it exceeds, greatest first.
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
function stretches(values: readonly number[], level: number): readonly (readonly [number, number])[] {
  const found: [number, number][] = [];
  values.forEach((value, i) => {
    if (value < level) return;
    const last = found.at(-1);
    if (last !== undefined && last[1] === i - 1) last[1] = i;
    else found.push([i, i]);
  });
  return found;
}
