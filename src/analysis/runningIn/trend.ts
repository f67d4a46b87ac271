import { normals, type Random } from "../statistics/random.ts";
import { type LeastSquaresFit, leastSquaresFit, type Observation } from "./leastSquares.ts";
import { TREND_KINDS, TREND_SHAPES, type TrendKind, type TrendShape } from "./trendShapes.ts";

/** One draw of the trend. */
export interface TrendDraw {
  readonly kind: TrendKind;
  readonly scatter: number;
  /** Its value in millimetres at a time; time is 0 at the first survey and 1 at the last. */
  readonly at: (time: number) => number;
}

export interface Trend {
  readonly draws: readonly TrendDraw[];
  /** Posterior chance of each kind. */
  readonly chances: Readonly<Record<TrendKind, number>>;
}

/** Number of grid cells for the amount of growth, and the grid's reach in standard deviations. */
const CELLS = 80;
const REACH = 6;

/** Prior of the scatter from survey to survey beside trend and readings: standard deviations in millimetres. */
const SCATTERS = [
  { deviation: 0, chance: 0.4 },
  { deviation: 0.002, chance: 0.25 },
  { deviation: 0.004, chance: 0.2 },
  { deviation: 0.008, chance: 0.15 },
];

/** Scale of the half-Cauchy prior of growth over the time observed, in millimetres. */
const USUAL_GROWTH = 0.02;

/** A grid cell: an interval of growth in one shape with one scatter, and its log posterior weight. */
interface Cell {
  readonly shape: TrendShape;
  readonly scatter: number;
  readonly sums: LeastSquaresFit;
  readonly from: number;
  readonly width: number;
  readonly log: number;
}

/**
 * Draws the trend of a quantity that does not shrink: constant, steady, settling (exponential approach), slowing
 * (logarithm), or settling and then steady. Every shape is weighted by its evidence: the density of the observations
 * with the shape's parameters integrated over their priors (level: flat; growth: half-Cauchy; time constant, share and
 * scatter: grids). A shape with more parameters is penalised for them (MacKay, Information Theory, Inference, and
 * Learning Algorithms, 2003, chapter 28).
 *
 * @param observations from time 0 to time 1
 * @param count number of draws
 */
export function trendOf(observations: readonly Observation[], count: number, random: Random): Trend {
  const cells = TREND_SHAPES.flatMap((shape) =>
    SCATTERS.flatMap(({ deviation, chance }) =>
      cellsOf(
        shape,
        deviation,
        Math.log(shape.chance * chance),
        leastSquaresFit(observations, shape.growth, deviation),
      ),
    ),
  );
  const greatest = cells.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = cells.map(({ log }) => Math.exp(log - greatest));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const chances = Object.fromEntries(TREND_KINDS.map((kind) => [kind, 0])) as Record<TrendKind, number>;
  cells.forEach(({ shape }, i) => {
    chances[shape.kind] += weights[i] / total;
  });
  const normal = normals(random);
  const draws = systematicSample(cells, weights, total, count, random).map((cell) =>
    drawn(cell, random, normal),
  );
  return { draws, chances };
}

/** The grid cells of a shape. None is negative: wear does not grow back. */
function cellsOf(
  shape: TrendShape,
  scatter: number,
  logPrior: number,
  sums: LeastSquaresFit,
): readonly Cell[] {
  if (shape.growth === null) {
    return [{ shape, scatter, sums, from: 0, width: 0, log: logPrior + sums.logEvidence(0) }];
  }
  const { amount, amountDeviation } = sums;
  const start = Math.max(0, amount - REACH * amountDeviation);
  const width = (Math.max(amount, 0) + REACH * amountDeviation - start) / CELLS;
  return Array.from({ length: CELLS }, (_, i) => {
    const from = start + i * width;
    const middle = from + width / 2;
    return {
      shape,
      scatter,
      sums,
      from,
      width,
      log: logPrior + Math.log(width * growthDensity(middle)) + sums.logEvidence(middle),
    };
  });
}

/** The half-Cauchy prior density of growth. */
function growthDensity(amount: number): number {
  return 2 / (Math.PI * USUAL_GROWTH * (1 + (amount / USUAL_GROWTH) ** 2));
}

/** `count` cells, each as often as its weight requires, by systematic sampling. */
function systematicSample(
  cells: readonly Cell[],
  weights: readonly number[],
  total: number,
  count: number,
  random: Random,
): readonly Cell[] {
  const step = total / count;
  const first = random() * step;
  const drawn: Cell[] = [];
  let sum = 0;
  cells.forEach((cell, i) => {
    sum += weights[i];
    while (first + drawn.length * step < sum) drawn.push(cell);
  });
  return drawn;
}

function drawn({ shape, scatter, sums, from, width }: Cell, random: Random, normal: () => number): TrendDraw {
  const { kind, growth } = shape;
  const amount = from + width * random();
  const level = sums.levelAt(amount) + sums.levelDeviation * normal();
  return { kind, scatter, at: (time) => level + (growth === null ? 0 : amount * growth(time)) };
}
