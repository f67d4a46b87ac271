import { normals, type Random } from "../../../../src/analysis/statistics/random.ts";
import type { Flank } from "../../leastEngaged.ts";
import { between, logBetween } from "../../wear.ts";
import { type Kind, type Screw, scaledTo } from "../kind.ts";

/** One movement of the slide, mm, and the force that it is done against, in any unit. */
export interface Stroke {
  readonly from: number;
  readonly to: number;
  readonly load: number;
}

const STROKES = 120;

/**
 * Sliding distance × load at a place along the screw, the load shared evenly by the engaged thread: wear goes with it
 * (Archard 1953). A stroke slides over a place for as long as the nut is there.
 */
export function worked(strokes: readonly Stroke[], engaged: number): Flank {
  return (place) =>
    strokes.reduce((sum, { from, to, load }) => {
      const overlap = Math.min(to, place + engaged / 2) - Math.max(from, place - engaged / 2);
      return sum + (overlap > 0 ? (load * overlap) / engaged : 0);
    }, 0);
}

/** Short strokes about a few places where the work is held, with a rapid over the whole travel now and then. */
export function strokesOf(random: Random, { travel }: Screw, places: number): readonly Stroke[] {
  const normal = normals(random);
  const jobs = Array.from({ length: places }, () => ({
    centre: between(random, 0.08, 0.92) * travel,
    length: between(random, 0.04, 0.35) * travel,
    spread: between(random, 0.01, 0.08) * travel,
    share: between(random, 0.1, 1),
  }));
  const all = jobs.reduce((sum, { share }) => sum + share, 0);
  const cuts = jobs.flatMap(({ centre, length, spread, share }) =>
    Array.from({ length: Math.ceil((STROKES * share) / all) }, () => {
      const middle = centre + spread * normal();
      const half = (length / 2) * between(random, 0.6, 1.2);
      return {
        from: Math.max(0, middle - half),
        to: Math.min(travel, middle + half),
        load: between(random, 0.5, 1.5),
      };
    }),
  );
  const rapids = between(random, 0, 0.12) * STROKES;
  return [...cuts, { from: 0, to: travel, load: rapids }].filter(({ from, to }) => from < to);
}

/** Abrasive wear of short strokes at habitual places; the return stroke loads the other flank less. */
export const habitualStrokes: Kind = {
  name: "habitual strokes",
  wear: (random, screw) => {
    const curve = worked(strokesOf(random, screw, 2 + Math.floor(random() * 3)), screw.engaged);
    const depth = logBetween(random, 0.02, 0.4);
    const cut = between(random, 0.5, 0.95);
    return [scaledTo(cut * depth, curve, screw), scaledTo((1 - cut) * depth, curve, screw)];
  },
};
