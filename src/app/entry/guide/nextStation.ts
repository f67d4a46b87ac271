import { SAME_PLACE } from "../../../analysis/correct/samePlace.ts";
import type { Reading } from "../../../inspection/schema.ts";
import { toMillimetres, type Units } from "../../../inspection/units.ts";
import type { GuideState } from "../../../records/editorState.ts";

/** A station's turn to be read. */
export interface Turn {
  readonly position: number;
  /** Its number among the planned stations in order of position, from 1; null where it is none of them. */
  readonly station: number | null;
  readonly stations: number;
  /** Which reading of this station it is, from 1. */
  readonly reading: number;
  /** Planned readings still to come after it. */
  readonly left: number;
}

/** What is to be read next: the station chosen out of turn, else the first planned one that lacks a reading. */
export function nextTurn(guide: GuideState, readings: readonly Reading[], units: Units): Turn | null {
  const read = positionsRead(readings);
  const open = openTurns(guide.stations, read, units);
  const position = guide.chosen ?? open[0]?.position;
  if (position === undefined) return null;
  const stations = stationsAmong(guide.stations, units);
  const at = stations.findIndex((other) => isSamePlace(other, position, units));
  const isPlanned = open.some((turn) => isSamePlace(turn.position, position, units));
  return {
    position,
    station: at === -1 ? null : at + 1,
    stations: stations.length,
    reading: read.filter((other) => isSamePlace(other, position, units)).length + 1,
    left: open.length - (isPlanned ? 1 : 0),
  };
}

/** The planned stations without the turn that comes next. */
export function withoutNextTurn(
  guide: GuideState,
  readings: readonly Reading[],
  units: Units,
): readonly number[] {
  const [next] = openTurns(guide.stations, positionsRead(readings), units);
  return next === undefined ? guide.stations : guide.stations.toSpliced(next.index, 1);
}

/** The different stations, in order of position. */
export function stationsAmong(positions: readonly number[], units: Units): readonly number[] {
  return positions
    .filter(
      (position, index) => !positions.slice(0, index).some((other) => isSamePlace(other, position, units)),
    )
    .sort((a, b) => a - b);
}

/** How many readings of a survey count at a position. */
export function timesRead(position: number, readings: readonly Reading[], units: Units): number {
  return positionsRead(readings).filter((other) => isSamePlace(other, position, units)).length;
}

/** Planned turns that no reading has answered: each reading answers the first one at its place. */
function openTurns(
  stations: readonly number[],
  read: readonly number[],
  units: Units,
): readonly { readonly index: number; readonly position: number }[] {
  const unused = [...read];
  return stations.flatMap((position, index) => {
    const found = unused.findIndex((other) => isSamePlace(other, position, units));
    if (found === -1) return [{ index, position }];
    unused.splice(found, 1);
    return [];
  });
}

function positionsRead(readings: readonly Reading[]): readonly number[] {
  return readings.flatMap(({ excluded, position }) =>
    excluded === undefined && typeof position === "number" ? [position] : [],
  );
}

function isSamePlace(one: number, other: number, units: Units): boolean {
  return toMillimetres(Math.abs(one - other), units) <= SAME_PLACE;
}
