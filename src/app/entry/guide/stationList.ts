import { type Outcome, succeeded } from "../../../inspection/problem.ts";
import type { Units } from "../../../inspection/units.ts";
import { readTypedFigures } from "../../../intake/typedFigure.ts";

/** Stations as they are typed: along the travel once, or also back. */
export interface StationList {
  readonly positions: readonly number[];
  readonly isBackToo: boolean;
}

/** The list that an order of reading stands for: what reads the same from both ends goes out and back. */
export function listOf(stations: readonly number[]): StationList {
  const half = stations.slice(0, stations.length / 2);
  const isBackToo = stations.length > 1 && stations.join() === [...half, ...half.toReversed()].join();
  return { positions: isBackToo ? half : stations, isBackToo };
}

/** The order of reading that a list stands for. */
export function orderOf({ positions, isBackToo }: StationList): readonly number[] {
  return isBackToo ? [...positions, ...positions.toReversed()] : positions;
}

/** Reads positions with spaces, semicolons or line ends between them; none at all is no mistake. */
export function readPositions(text: string, units: Units): Outcome<readonly number[]> {
  return text.trim() === "" ? succeeded([]) : readTypedFigures(text, units);
}
