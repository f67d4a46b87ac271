import type { Point } from "./linesAbove.ts";

/** A rectangle by its top left corner and size, in pixels. */
export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** A position for a label's top left corner. Reluctance is its penalty, in square pixels of obstacle covered. */
export interface Candidate extends Point {
  readonly reluctance: number;
}

/** A label's size in pixels, and the positions it may take. */
export interface LabelRequest {
  readonly width: number;
  readonly height: number;
  readonly candidates: readonly Candidate[];
}

/** Free space around every label, in pixels. */
const CLEARANCE = 3;
/** Width of the columns that obstacles are indexed by, in pixels. */
const COLUMN = 16;

/**
 * Places labels one after another, each where it covers least of the obstacles without overlapping another label or
 * leaving the bounds.
 *
 * @returns one box for each request; null for a label without room
 */
export function placeLabels(
  requests: readonly LabelRequest[],
  obstacles: readonly Box[],
  bounds: Box,
): readonly (Box | null)[] {
  const placed: Box[] = [];
  const columns = inColumns(obstacles, bounds);
  return requests.map(({ width, height, candidates }) => {
    let best: Box | null = null;
    let least = Number.POSITIVE_INFINITY;
    // In order of reluctance, so that the search can stop when no later candidate can be better.
    for (const { x, y, reluctance } of candidates.toSorted((a, b) => a.reluctance - b.reluctance)) {
      if (reluctance >= least) break;
      const box = { x, y, width, height };
      const spaced = grown(box);
      if (!contains(bounds, box) || placed.some((other) => overlap(spaced, other) > 0)) continue;
      const covered = coveredBy(spaced, columns, least - reluctance);
      if (covered + reluctance < least) {
        least = covered + reluctance;
        best = box;
      }
    }
    if (best !== null) placed.push(best);
    return best;
  });
}

/** Obstacles by the column their left edge is in; those outside the bounds are in the first or last column. */
interface Columns {
  readonly left: number;
  readonly columns: readonly (readonly Box[])[];
}

function inColumns(obstacles: readonly Box[], { x: left, width }: Box): Columns {
  const columns: Box[][] = Array.from({ length: Math.max(1, Math.ceil(width / COLUMN)) }, () => []);
  for (const piece of obstacles.flatMap(cut)) columns[columnOf(piece.x, left, columns.length)]?.push(piece);
  return { left, columns };
}

/** A box cut into pieces no wider than a column. */
function cut(box: Box): readonly Box[] {
  if (box.width <= COLUMN) return [box];
  const count = Math.ceil(box.width / COLUMN);
  const width = box.width / count;
  return Array.from({ length: count }, (_, index) => ({ ...box, x: box.x + index * width, width }));
}

function columnOf(x: number, left: number, count: number): number {
  return Math.min(count - 1, Math.max(0, Math.floor((x - left) / COLUMN)));
}

/** The area of obstacles under a box; stops counting at `atMost`. */
function coveredBy(box: Box, { left, columns }: Columns, atMost: number): number {
  const last = columnOf(box.x + box.width, left, columns.length);
  let area = 0;
  for (let at = columnOf(box.x - COLUMN, left, columns.length); at <= last && area < atMost; at++)
    for (const obstacle of columns[at] ?? []) area += overlap(box, obstacle);
  return area;
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
