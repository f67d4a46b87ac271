import { mean, sum } from "simple-statistics";
import type { LostMotion } from "../correct/corrections.ts";
import type { PooledSquares } from "../correct/repeatability.ts";
import type { Station } from "../correct/stations.ts";

/** The drift of repeats with the order they were taken in, and their scatter about it. */
export interface DriftRegression {
  /** Millimetres from one reading to the next. */
  readonly slope: number;
  /** Sum of squared deviations of the orders from their stations' means. */
  readonly spread: number;
  /** Scatter left at each station; the common slope takes one more degree of freedom. */
  readonly residuals: readonly PooledSquares[];
}

/**
 * A straight line through the readings against their order, by least squares within stations: order and value are taken
 * from their station's mean, so that each station is compared only with itself.
 *
 * @param readings all readings, in the order they were taken
 * @param stations the stations to fit
 */
export function driftRegression(
  readings: readonly LostMotion[],
  stations: readonly Station[],
): DriftRegression {
  const orderOf = new Map(readings.map((reading, order) => [reading, order]));
  const points = stations.map((station) => {
    const orders = station.readings.map((reading) => orderOf.get(reading) ?? 0);
    const middle = mean(orders);
    return station.readings.map(({ value }, i) => ({
      order: orders[i] - middle,
      deviation: value - station.mean,
    }));
  });
  const spread = sum(points.flat().map(({ order }) => order ** 2));
  const slope =
    spread === 0 ? 0 : sum(points.flat().map(({ order, deviation }) => order * deviation)) / spread;
  return {
    slope,
    spread,
    residuals: points.map((station) => ({
      squares: sum(station.map(({ order, deviation }) => (deviation - slope * order) ** 2)),
      freedom: station.length - 1,
    })),
  };
}

/** The squared deviations of several stations added up. */
export function combined(parts: readonly PooledSquares[]): PooledSquares {
  return {
    squares: sum(parts.map(({ squares }) => squares)),
    freedom: sum(parts.map(({ freedom }) => freedom)),
  };
}
