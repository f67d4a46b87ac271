import type { Point } from "./linesAbove.ts";

/** Marks whose centres are at most this far apart, in pixels, are at one place. */
const TOGETHER = 1;

/**
 * Marks at one place set side by side about it, so that equal repeats can be counted. The order stays the same.
 *
 * @param apart distance from one mark to the next, in pixels
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
