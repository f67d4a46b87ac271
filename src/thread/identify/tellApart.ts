import { type Candidate, rootOf } from "./candidates.ts";
import type { Measured } from "./measured.ts";

/** What to measure to tell two candidates apart, and what each would give. Lengths in millimetres, angles in degrees. */
export interface TellApart {
  readonly measure: "distance" | "root" | "angle" | "outside";
  readonly first: number;
  readonly second: number;
  /** Turns to measure over, where it is a distance. */
  readonly turns?: number;
}

/** Two readings differ clearly when they are so many uncertainties apart. */
const CLEARLY = 3;
/** No screw is measured over more than this, in millimetres. */
const LONGEST = 300;
/** A template shows flanks that differ by so many degrees. */
const ANGLE_SHOWS = 3;

/** What tells the first from the second with the least trouble; null where nothing does so clearly. */
export function tellApart(first: Candidate, second: Candidate, measured: Measured): TellApart | null {
  const { uncertainty } = measured;
  const turns = turnsToTell(first.pitch, second.pitch, measured);
  if (turns !== null)
    return { measure: "distance", first: turns * first.pitch, second: turns * second.pitch, turns };
  const angles = [2 * first.form.halfAngle, 2 * second.form.halfAngle] as const;
  if (measured.angle === undefined && Math.abs(angles[0] - angles[1]) >= ANGLE_SHOWS)
    return { measure: "angle", first: angles[0], second: angles[1] };
  const roots = [rootOf(first), rootOf(second)] as const;
  if (measured.root === undefined && Math.abs(roots[0] - roots[1]) >= CLEARLY * uncertainty.outside)
    return { measure: "root", first: roots[0], second: roots[1] };
  if (Math.abs(first.diameter - second.diameter) >= CLEARLY * uncertainty.outside)
    return { measure: "outside", first: first.diameter, second: second.diameter };
  return null;
}

/** Turns over which two pitches come clearly apart; null where they are the same, or the screw is too short. */
function turnsToTell(first: number, second: number, { uncertainty, turns }: Measured): number | null {
  const apart = Math.abs(first - second);
  if (apart === 0) return null;
  const needed = Math.max(turns + 1, Math.ceil((CLEARLY * uncertainty.distance) / apart));
  return needed * Math.max(first, second) <= LONGEST ? needed : null;
}
