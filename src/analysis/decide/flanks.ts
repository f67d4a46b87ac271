import {
  linearRegression,
  linearRegressionLine,
  mean,
  quantile,
  sumNthPowerDeviations,
} from "simple-statistics";
import { normals, type Random } from "../statistics/random.ts";

/** One direction's deviations from the targets, in millimetres: at each position those of all runs. */
export interface Curve {
  readonly positions: readonly number[];
  readonly deviations: readonly (readonly number[])[];
}

/** How far the means along one direction's curve leave a straight line. In millimetres. */
export interface Unevenness {
  /** From the least to the greatest, the straight line that fits best taken off. */
  readonly range: number;
  /** What scatter and rounding alone would not exceed in 99 of 100 surveys. */
  readonly byChance: number;
}

/** Which flank of the screw has worn unevenly, each direction loading one, as far as the lead as made was even. */
export interface Flanks {
  readonly advancing: Unevenness;
  readonly retracting: Unevenness;
  /** The direction that loads the worn flank; both where both curves are uneven, as an uneven lead makes them too. */
  readonly worn: "advancing" | "retracting" | "both" | "not proven";
}

const SURE = 0.99;
const DRAWS = 2000;
/** Fewer targets lie on a straight line whatever they are. */
const FEWEST_TARGETS = 3;
/** What binary fractions make of lengths that are equal, in millimetres. */
const NOTHING = 1e-9;

/**
 * Tells the worn flank from the shapes of the two curves: a flank is named where its curve is clearly uneven, the
 * other is not, and the one exceeds the other by more than chance gives either.
 *
 * @param resolution graduation of the readings, in millimetres
 * @returns null where there are too few targets, or no repeats from one of the sides, to judge by
 */
export function flanksOf(
  advancing: Curve,
  retracting: Curve,
  resolution: number,
  random: Random,
): Flanks | null {
  if (!showsScatter(advancing) || !showsScatter(retracting)) return null;
  const ahead = unevennessOf(advancing, resolution, random);
  const back = unevennessOf(retracting, resolution, random);
  return { advancing: ahead, retracting: back, worn: wornOf(ahead, back) };
}

function showsScatter({ deviations }: Curve): boolean {
  return deviations.length >= FEWEST_TARGETS && deviations.some((runs) => runs.length > 1);
}

function wornOf(advancing: Unevenness, retracting: Unevenness): Flanks["worn"] {
  if (isClear(advancing) && isClear(retracting)) return "both";
  if (exceeds(advancing, retracting)) return "advancing";
  return exceeds(retracting, advancing) ? "retracting" : "not proven";
}

function isClear({ range, byChance }: Unevenness): boolean {
  return range > byChance + NOTHING;
}

function exceeds(one: Unevenness, other: Unevenness): boolean {
  return one.range - other.range > Math.max(one.byChance, other.byChance) + NOTHING;
}

/**
 * What scatter gives is drawn: a standard deviation that the pooled one allows (the sum of squares over a
 * chi-squared), then the mean of as many readings at each target. Rounding is not drawn: readings that repeat share
 * it, and it can set a target off from its neighbours by a whole graduation.
 */
function unevennessOf({ positions, deviations }: Curve, resolution: number, random: Random): Unevenness {
  const normal = normals(random);
  const squares = deviations.reduce((sum, runs) => sum + sumNthPowerDeviations([...runs], 2), 0);
  const freedom = deviations.reduce((sum, runs) => sum + runs.length - 1, 0);
  const drawn = Array.from({ length: DRAWS }, () => {
    const scatter = Math.sqrt(squares / chiSquared(freedom, normal));
    const means = deviations.map((runs) => (scatter * normal()) / Math.sqrt(runs.length));
    return rangeAboutLine(positions, means);
  });
  const means = deviations.map((runs) => mean([...runs]));
  return { range: rangeAboutLine(positions, means), byChance: quantile(drawn, SURE) + resolution };
}

function chiSquared(freedom: number, normal: () => number): number {
  let sum = 0;
  for (let i = 0; i < freedom; i++) sum += normal() ** 2;
  return sum;
}

function rangeAboutLine(positions: readonly number[], values: readonly number[]): number {
  const line = linearRegressionLine(linearRegression(positions.map((position, i) => [position, values[i]])));
  const left = values.map((value, i) => value - line(positions[i]));
  return Math.max(...left) - Math.min(...left);
}
