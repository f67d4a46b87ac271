import { mean } from "simple-statistics";
import type { LostMotion } from "../correct/corrections.ts";
import type { PooledSquares } from "../correct/repeatability.ts";
import type { Station } from "../correct/stations.ts";

/** How repeats at the same stations wander with the order they were taken in, and how they scatter about that. */
export interface DriftRegression {
  /** Millimetres from one reading to the next. */
  readonly slope: number;
  /** Sum of squares of the orders about the means of their stations. */
  readonly spread: number;
  /** What scatter is left, station by station; wandering together takes one degree of freedom more. */
  readonly left: readonly PooledSquares[];
}

/**
 * A straight line through the readings against their order, by least squares within stations: both are taken from
 * their station's mean, so that stations are compared with themselves alone.
 *
 * @param readings all of them, in the order in which they were taken
 * @param stations those that count
 */
export function driftRegression(
  readings: readonly LostMotion[],
  stations: readonly Station[],
): DriftRegression {
  const orderOf = new Map(readings.map((reading, order) => [reading, order]));
  const points = stations.map((station) => {
    const orders = station.readings.map((reading) => orderOf.get(reading) ?? 0);
    const middle = mean(orders);
    return station.readings.map(({ value }, i) => ({ order: orders[i] - middle, off: value - station.mean }));
  });
  const spread = sum(points.flat(), ({ order }) => order ** 2);
  const slope = spread === 0 ? 0 : sum(points.flat(), ({ order, off }) => order * off) / spread;
  return {
    slope,
    spread,
    left: points.map((station) => ({
      squares: sum(station, ({ order, off }) => (off - slope * order) ** 2),
      freedom: station.length - 1,
    })),
  };
}

/** Squares of several stations together. */
export function together(parts: readonly PooledSquares[]): PooledSquares {
  return {
    squares: sum(parts, ({ squares }) => squares),
    freedom: sum(parts, ({ freedom }) => freedom),
  };
}

function sum<Item>(items: readonly Item[], of: (item: Item) => number): number {
  return items.reduce((total, item) => total + of(item), 0);
}
