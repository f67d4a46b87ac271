/** Places and weights of Simpson's rule over a stretch, in an even number of steps. */
export function simpson(
  from: number,
  to: number,
  steps: number,
): readonly (readonly [at: number, weight: number])[] {
  const step = (to - from) / steps;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    return [from + i * step, (weight * step) / 3] as const;
  });
}

/** The integral of a function over a stretch, by Simpson's rule. */
export function integral(of: (at: number) => number, from: number, to: number, steps = 2000): number {
  return simpson(from, to, steps).reduce((sum, [at, weight]) => sum + weight * of(at), 0);
}

/** Density of the normal distribution of mean 0 and the given variance. */
export function normalDensity(distance: number, variance: number): number {
  return Math.exp((-0.5 * (distance * distance)) / variance) / Math.sqrt(2 * Math.PI * variance);
}

/** The standard normal probability between two values, by Simpson's rule over its density. */
export function normalChance(from: number, to: number): number {
  return integral((z) => normalDensity(z, 1), from, to, 200);
}

/** Mean and standard deviation of a density known to a factor, over a stretch. */
export function momentsOf(density: (at: number) => number, from: number, to: number, steps = 2000) {
  const points = simpson(from, to, steps).map(([at, weight]) => [at, weight * density(at)] as const);
  const total = points.reduce((sum, [, weight]) => sum + weight, 0);
  const mean = points.reduce((sum, [at, weight]) => sum + weight * at, 0) / total;
  const variance = points.reduce((sum, [at, weight]) => sum + weight * (at - mean) ** 2, 0) / total;
  return { mean, deviation: Math.sqrt(variance) };
}

/** Mean and standard deviation of numbers. */
export function momentsIn(numbers: readonly number[]) {
  const mean = numbers.reduce((sum, value) => sum + value, 0) / numbers.length;
  const variance = numbers.reduce((sum, value) => sum + (value - mean) ** 2, 0) / numbers.length;
  return { mean, deviation: Math.sqrt(variance) };
}

/** The quadratic form of a covariance's inverse, and the logarithm of its determinant, by Gaussian elimination. */
export function quadraticForm(matrix: readonly (readonly number[])[], side: readonly number[]) {
  const rows = matrix.map((row, i) => [...row, side[i]]);
  let squares = 0;
  let logDeterminant = 0;
  for (let k = 0; k < rows.length; k++) {
    const pivot = rows[k][k];
    logDeterminant += Math.log(pivot);
    squares += rows[k][rows.length] ** 2 / pivot;
    for (let i = k + 1; i < rows.length; i++) {
      const share = rows[i][k] / pivot;
      rows[i] = rows[i].map((value, j) => value - share * rows[k][j]);
    }
  }
  return { squares, logDeterminant };
}
