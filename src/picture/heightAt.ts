import type { Point } from "./linesAbove.ts";

/** The height of a line at x, by linear interpolation; beyond its ends, the height of the end. Throws if it is empty. */
export function heightAt(line: readonly Point[], x: number): number {
  const next = line.findIndex((point) => point.x >= x);
  const after = line[next] ?? line.at(-1);
  const before = line[Math.max(0, next - 1)];
  if (after === undefined || before === undefined) throw new Error("A line has at least one point.");
  if (next < 1 || after.x === before.x) return after.y;
  return before.y + ((x - before.x) / (after.x - before.x)) * (after.y - before.y);
}
