import {
  linearRegression,
  linearRegressionLine,
  mean,
  quantile,
  sumNthPowerDeviations,
} from "simple-statistics";
import { normals, type Random } from "../statistics/random.ts";

/** Deviations from the targets in one direction, in millimetres: at each position those of all runs. */
export interface DirectionCurve {
  readonly positions: readonly number[];
  readonly deviations: readonly (readonly number[])[];
}

/** How far the mean deviations of one direction leave a straight line. In millimetres. */
export interface Unevenness {
  /** Range of the means after the best straight line is removed. */
  readonly range: number;
  /** The range that scatter and rounding alone do not exceed in 99 of 100 surveys. */
  readonly byChance: number;
}

/** Which flank of the screw has worn unevenly, if its lead was even when made: each direction loads one flank. */
export interface Flanks {
  readonly advancing: Unevenness;
  readonly retracting: Unevenness;
  /** The direction that loads the worn flank; both if both curves are uneven, as an uneven lead also makes them. */
  readonly worn: "advancing" | "retracting" | "both" | "not proven";
}

const CONFIDENCE = 0.99;
const DRAWS = 2000;
/** Two targets always lie on a straight line. */
const FEWEST_TARGETS = 3;
/** Floating-point error of lengths that are equal, in millimetres. */
const TOLERANCE = 1e-9;

/**
 * Finds the worn flank from the two directions' curves. A flank is named if its curve is more uneven than the other's by
 * more than chance explains.
 *
 * @param resolution graduation of the readings, in millimetres
 * @returns null if there are too few targets, or one side has no repeats
 */
export function flanksOf(
  advancing: DirectionCurve,
  retracting: DirectionCurve,
  resolution: number,
  random: Random,
): Flanks | null {
  if (!showsScatter(advancing) || !showsScatter(retracting)) return null;
  const ahead = unevennessOf(advancing, resolution, random);
  const back = unevennessOf(retracting, resolution, random);
  return { advancing: ahead, retracting: back, worn: wornFlank(ahead, back) };
}

function showsScatter({ deviations }: DirectionCurve): boolean {
  return deviations.length >= FEWEST_TARGETS && deviations.some((runs) => runs.length > 1);
}

function wornFlank(advancing: Unevenness, retracting: Unevenness): Flanks["worn"] {
  if (isSignificantlyUneven(advancing) && isSignificantlyUneven(retracting)) return "both";
  if (isMoreUneven(advancing, retracting)) return "advancing";
  return isMoreUneven(retracting, advancing) ? "retracting" : "not proven";
}

function isSignificantlyUneven({ range, byChance }: Unevenness): boolean {
  return range > byChance + TOLERANCE;
}

function isMoreUneven(one: Unevenness, other: Unevenness): boolean {
  return one.range - other.range > Math.max(one.byChance, other.byChance) + TOLERANCE;
}

/**
 * The range by chance is simulated: a standard deviation from its posterior (the pooled sum of squares over a
 * chi-squared), then the mean of as many readings at each target. Rounding is added as one whole graduation: repeats
 * share it, and it can move a target by that much against its neighbours.
 */
function unevennessOf(
  { positions, deviations }: DirectionCurve,
  resolution: number,
  random: Random,
): Unevenness {
  const normal = normals(random);
  const squares = deviations.reduce((sum, runs) => sum + sumNthPowerDeviations([...runs], 2), 0);
  const freedom = deviations.reduce((sum, runs) => sum + runs.length - 1, 0);
  const drawn = Array.from({ length: DRAWS }, () => {
    const scatter = Math.sqrt(squares / chiSquared(freedom, normal));
    const means = deviations.map((runs) => (scatter * normal()) / Math.sqrt(runs.length));
    return rangeAboutLine(positions, means);
  });
  const means = deviations.map((runs) => mean([...runs]));
  return { range: rangeAboutLine(positions, means), byChance: quantile(drawn, CONFIDENCE) + resolution };
}

function chiSquared(freedom: number, normal: () => number): number {
  let sum = 0;
  for (let i = 0; i < freedom; i++) sum += normal() ** 2;
  return sum;
}

function rangeAboutLine(positions: readonly number[], values: readonly number[]): number {
  const line = linearRegressionLine(linearRegression(positions.map((position, i) => [position, values[i]])));
  const residuals = values.map((value, i) => value - line(positions[i]));
  return Math.max(...residuals) - Math.min(...residuals);
}
