import type { Point } from "./linesAbove.ts";

/** Marks whose middles are no farther apart than this, in pixels, are at one place. */
const TOGETHER = 1;

/**
 * Marks that would hide one another, set side by side about the place that they share, so that repeats that came to
 * the same can be counted. Pixels; the order stays.
 *
 * @param apart from one mark to the next
 */
export function sideBySide(marks: readonly Point[], apart: number): readonly Point[] {
  const key = ({ x, y }: Point): string => `${Math.round(x / TOGETHER)} ${Math.round(y / TOGETHER)}`;
  const counts = new Map<string, number>();
  for (const mark of marks) counts.set(key(mark), (counts.get(key(mark)) ?? 0) + 1);
  const placed = new Map<string, number>();
  return marks.map((mark) => {
    const count = counts.get(key(mark)) ?? 1;
    const before = placed.get(key(mark)) ?? 0;
    placed.set(key(mark), before + 1);
    return { x: mark.x + (before - (count - 1) / 2) * apart, y: mark.y };
  });
}
