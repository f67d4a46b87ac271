/**
 * A Matérn process of smoothness 3/2 along the travel, as a state-space model with two states, so that what readings
 * make of it costs time in proportion to their number (Särkkä and Solin, Applied Stochastic Differential Equations,
 * 2019, section 12.3). The second state is the slope times length / √3.
 */
export interface Matern {
  /** One standard deviation, mm. */
  readonly amplitude: number;
  /** Length scale, in the unit of the places. */
  readonly length: number;
}

/** Covariance of the process at two places that lie a distance apart. */
export function covarianceAt({ amplitude, length }: Matern, distance: number): number {
  const r = (Math.sqrt(3) * Math.abs(distance)) / length;
  return amplitude * amplitude * (1 + r) * Math.exp(-r);
}

/** How many numbers of a filter's table belong to one place. */
const ROW = 7;

/** The Kalman filter of the process with independent normal errors, for places in order. */
export interface Filter {
  /** Seven numbers for each place: both gains, one over the innovation's deviation, and the way to the next place. */
  readonly table: Float64Array;
  /** Sum of the logarithms of the innovations' deviations. */
  readonly logDeviations: number;
}

/**
 * @param places in order, n of them
 * @param variances of the errors, mm², n of them
 */
export function filterOf(
  { amplitude, length }: Matern,
  places: ArrayLike<number>,
  variances: ArrayLike<number>,
): Filter {
  const table = new Float64Array(ROW * places.length);
  const stationary = amplitude * amplitude;
  let p11 = stationary;
  let p12 = 0;
  let p22 = stationary;
  let logDeviations = 0;
  for (let i = 0; i < places.length; i++) {
    const innovation = p11 + variances[i];
    const gain = p11 / innovation;
    const slopeGain = p12 / innovation;
    logDeviations += 0.5 * Math.log(innovation);
    p22 -= slopeGain * p12;
    p12 -= gain * p12;
    p11 -= gain * p11;
    const step = i + 1 < places.length ? (Math.sqrt(3) * (places[i + 1] - places[i])) / length : 0;
    const fall = Math.exp(-step);
    const [a11, a12, a21, a22] = [fall * (1 + step), fall * step, -fall * step, fall * (1 - step)];
    const at = ROW * i;
    table[at] = 1 / Math.sqrt(innovation);
    table[at + 1] = a11;
    table[at + 2] = a12;
    table[at + 3] = a21;
    table[at + 4] = a22;
    table[at + 5] = a11 * gain + a12 * slopeGain;
    table[at + 6] = a21 * gain + a22 * slopeGain;
    const q11 = stationary * (1 - a11 * a11 - a12 * a12);
    const q12 = -stationary * (a11 * a21 + a12 * a22);
    const q22 = stationary * (1 - a21 * a21 - a22 * a22);
    const n11 = a11 * a11 * p11 + 2 * a11 * a12 * p12 + a12 * a12 * p22 + q11;
    const n12 = a11 * a21 * p11 + (a11 * a22 + a12 * a21) * p12 + a12 * a22 * p22 + q12;
    const n22 = a21 * a21 * p11 + 2 * a21 * a22 * p12 + a22 * a22 * p22 + q22;
    p11 = n11;
    p12 = n12;
    p22 = n22;
  }
  return { table, logDeviations };
}

/** Values as independent standard normal numbers would be if they were the process with its errors. */
export function whitened({ table }: Filter, values: ArrayLike<number>, into: Float64Array): void {
  let level = 0;
  let slope = 0;
  for (let i = 0, at = 0; i < into.length; i++, at += ROW) {
    const innovation = values[i] - level;
    into[i] = innovation * table[at];
    const next = table[at + 1] * level + table[at + 2] * slope + table[at + 5] * innovation;
    slope = table[at + 3] * level + table[at + 4] * slope + table[at + 6] * innovation;
    level = next;
  }
}

/** A path of the process at places in order, before any reading is looked at. */
export function drawPath(
  { amplitude, length }: Matern,
  places: ArrayLike<number>,
  normal: () => number,
): Float64Array {
  const path = new Float64Array(places.length);
  let level = amplitude * normal();
  let slope = amplitude * normal();
  for (let i = 0; i < path.length; i++) {
    path[i] = level;
    if (i + 1 === path.length) break;
    const step = (Math.sqrt(3) * (places[i + 1] - places[i])) / length;
    const fall = Math.exp(-step);
    const [a11, a12, a21, a22] = [fall * (1 + step), fall * step, -fall * step, fall * (1 - step)];
    const q11 = 1 - a11 * a11 - a12 * a12;
    const q12 = -(a11 * a21 + a12 * a22);
    const q22 = 1 - a21 * a21 - a22 * a22;
    const deviation = Math.sqrt(Math.max(0, q11));
    const first = normal();
    const shared = deviation > 0 ? q12 / deviation : 0;
    const rest = Math.sqrt(Math.max(0, q22 - shared * shared));
    const next = a11 * level + a12 * slope + amplitude * deviation * first;
    slope = a21 * level + a22 * slope + amplitude * (shared * first + rest * normal());
    level = next;
  }
  return path;
}
