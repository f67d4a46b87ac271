import type { Point } from "./linesAbove.ts";

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** A place for a label's left top corner. Reluctance is measured in square pixels of obstacle covered. */
export interface Candidate extends Point {
  readonly reluctance: number;
}

export interface LabelRequest {
  readonly width: number;
  readonly height: number;
  readonly candidates: readonly Candidate[];
}

/** Kept free around every label. */
const CLEARANCE = 3;

/**
 * Places labels one after another so that none overlaps another or leaves the bounds, over as little of the
 * obstacles as can be. A label that finds no room is null.
 */
export function placeLabels(
  requests: readonly LabelRequest[],
  obstacles: readonly Box[],
  bounds: Box,
): readonly (Box | null)[] {
  const placed: Box[] = [];
  return requests.map(({ width, height, candidates }) => {
    let best: Box | null = null;
    let least = Number.POSITIVE_INFINITY;
    for (const { x, y, reluctance } of candidates) {
      const box = { x, y, width, height };
      const kept = grown(box);
      if (!contains(bounds, box) || placed.some((other) => overlap(kept, other) > 0)) continue;
      const covered = obstacles.reduce((area, obstacle) => area + overlap(kept, obstacle), 0);
      if (covered + reluctance < least) {
        least = covered + reluctance;
        best = box;
      }
    }
    if (best !== null) placed.push(best);
    return best;
  });
}

function grown({ x, y, width, height }: Box): Box {
  return {
    x: x - CLEARANCE,
    y: y - CLEARANCE,
    width: width + 2 * CLEARANCE,
    height: height + 2 * CLEARANCE,
  };
}

function contains(outer: Box, inner: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.width <= outer.x + outer.width &&
    inner.y + inner.height <= outer.y + outer.height
  );
}

function overlap(one: Box, other: Box): number {
  const width = Math.min(one.x + one.width, other.x + other.width) - Math.max(one.x, other.x);
  const height = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
  return width > 0 && height > 0 ? width * height : 0;
}
