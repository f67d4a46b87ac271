import type { Random } from "../../../src/analysis/statistics/random.ts";
import type { Flank } from "../leastEngaged.ts";

/** A slide's screw and nut. Lengths in mm; the travel begins at 0. */
export interface Screw {
  readonly travel: number;
  readonly engaged: number;
  readonly lead: number;
}

/** One way for screws to wear, written from what wears them. */
export interface Kind {
  readonly name: string;
  /** Least and greatest travel, mm; 60 to 600 where it is not given. */
  readonly travel?: readonly [number, number];
  /** Least and greatest engaged length, mm; 15 to 70 where it is not given. */
  readonly engaged?: readonly [number, number];
  /** Greatest engaged length as a share of the travel; 0.45 where it is not given. */
  readonly engagedShare?: number;
  /** Draws the wear of flank 1, which is loaded while the slide advances, and of flank 2. */
  readonly wear: (random: Random, screw: Screw) => readonly [Flank, Flank];
}

const LOOKS = 400;

/** A curve scaled so that it is greatest at the given depth, over all thread that the nut can reach. */
export function scaledTo(depth: number, curve: Flank, { travel, engaged }: Screw): Flank {
  const length = travel + engaged;
  const greatest = Array.from({ length: LOOKS + 1 }, (_, i) =>
    curve((i / LOOKS) * length - engaged / 2),
  ).reduce((a, b) => Math.max(a, b));
  return greatest <= 0 ? () => 0 : (place) => (depth * curve(place)) / greatest;
}
