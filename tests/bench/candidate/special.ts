import { between } from "./table.ts";

const TAIL = 8;
const PER_UNIT = 64;
const UPPER_HALVES = Float64Array.from({ length: 2 * TAIL * PER_UNIT + 2 }, (_, i) => {
  const z = i / PER_UNIT - TAIL;
  return erfc(-z / Math.SQRT2) * (z < 0 ? Math.exp(0.5 * z * z) : 1);
});

/**
 * Twice the standard normal probability below z; for z below 0, over exp(−z²/2), beside which it does not vanish.
 * Read by straight lines from a table, to two parts in a hundred thousand.
 */
export function upperHalf(z: number): number {
  if (z >= TAIL) return 2;
  if (z <= -TAIL) return Math.sqrt(2 / Math.PI) / (-z * (1 + 1 / (z * z)));
  return between(UPPER_HALVES, (z + TAIL) * PER_UNIT);
}

/** Complementary error function (Numerical Recipes in C, 2nd edition, 6.2: erfcc; relative error below 1.2e-7). */
export function erfc(x: number): number {
  const z = Math.abs(x);
  const t = 1 / (1 + 0.5 * z);
  const value =
    t *
    Math.exp(
      -z * z -
        1.26551223 +
        t *
          (1.00002368 +
            t *
              (0.37409196 +
                t *
                  (0.09678418 +
                    t *
                      (-0.18628806 +
                        t *
                          (0.27886807 +
                            t * (-1.13520398 + t * (1.48851587 + t * (-0.82215223 + t * 0.17087277)))))))),
    );
  return x >= 0 ? value : 2 - value;
}

/** Logarithm of the sum of what the logarithms stand for. */
export function logSum(logs: Float64Array): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > greatest) greatest = log;
  let sum = 0;
  for (const log of logs) sum += Math.exp(log - greatest);
  return greatest + Math.log(sum);
}

/** An index drawn with chances whose logarithms are given, to a constant. */
export function drawLog(logs: Float64Array, random: () => number): number {
  const total = logSum(logs);
  let left = random();
  for (let i = 0; i < logs.length; i++) {
    left -= Math.exp(logs[i] - total);
    if (left < 0) return i;
  }
  return logs.length - 1;
}

/** A normal number that is not negative (rejection; for means far below zero Robert 1995, exponential proposal). */
export function drawPositive(
  mean: number,
  deviation: number,
  random: () => number,
  normal: () => number,
): number {
  const bound = -mean / deviation;
  if (bound < 1) {
    for (;;) {
      const z = normal();
      if (z >= bound) return mean + deviation * z;
    }
  }
  const rate = 0.5 * (bound + Math.sqrt(bound * bound + 4));
  for (;;) {
    const z = bound - Math.log(1 - random()) / rate;
    if (random() <= Math.exp(-0.5 * (z - rate) ** 2)) return mean + deviation * z;
  }
}
