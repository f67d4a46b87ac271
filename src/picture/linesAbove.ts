/** A point in a picture, in the reader's unit or in pixels. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * The parts of a line above a level, each from crossing to crossing, the crossings included.
 *
 * @param line points in order of x
 */
export function linesAbove(line: readonly Point[], level: number): readonly (readonly Point[])[] {
  const parts: Point[][] = [];
  let part: Point[] = [];
  line.forEach((point, index) => {
    const before = line[index - 1];
    if (before !== undefined && before.y > level !== point.y > level) {
      const share = (level - before.y) / (point.y - before.y);
      part.push({ x: before.x + share * (point.x - before.x), y: level });
    }
    if (point.y > level) {
      part.push(point);
    } else if (part.length > 0) {
      parts.push(part);
      part = [];
    }
  });
  if (part.length > 0) parts.push(part);
  return parts;
}
