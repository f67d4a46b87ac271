import { normals, type Random } from "../statistics/random.ts";
import { COURSES, type Course, TREND_KINDS, type TrendKind } from "./courses.ts";
import { type Observation, type Sums, sumsOf } from "./sums.ts";

/** One course that the surveys allow. */
export interface TrendDraw {
  readonly kind: TrendKind;
  readonly scatter: number;
  /** Its value at a time, 0 at the first survey and 1 at the last. */
  readonly at: (time: number) => number;
}

export interface Trend {
  readonly draws: readonly TrendDraw[];
  /** How likely the observations make each kind. */
  readonly chances: Readonly<Record<TrendKind, number>>;
}

/** Cells of the grid of what may have grown, and how many standard deviations it reaches. */
const CELLS = 80;
const REACH = 6;

/** What a slide does from survey to survey beside trend and readings, in millimetres, with its chance. */
const SCATTERS = [
  { deviation: 0, chance: 0.4 },
  { deviation: 0.002, chance: 0.25 },
  { deviation: 0.004, chance: 0.2 },
  { deviation: 0.008, chance: 0.15 },
];

/** Growth over the time watched is of this order, in millimetres; the tail of its prior is long. */
const USUAL_GROWTH = 0.02;

/** A small range of what may have grown in one course with one scatter, with its posterior weight's logarithm. */
interface Cell {
  readonly course: Course;
  readonly scatter: number;
  readonly sums: Sums;
  readonly from: number;
  readonly width: number;
  readonly log: number;
}

/**
 * Draws of the course of a quantity that does not shrink: constant, steady, settling (exponential approach), slowing
 * (logarithm), or settling and then steady. Which it is stays open: each is weighed by its evidence, the density of
 * the observations under it with its numbers integrated over what they may be (level: flat; growth: half-Cauchy;
 * settling time, share and scatter: grids), so that a course with more numbers must earn them (MacKay, Information
 * Theory, Inference, and Learning Algorithms, 2003, chapter 28).
 *
 * @param observations from time 0 to time 1
 */
export function trendOf(observations: readonly Observation[], count: number, random: Random): Trend {
  const cells = COURSES.flatMap((course) =>
    SCATTERS.flatMap(({ deviation, chance }) =>
      cellsOf(
        course,
        deviation,
        Math.log(course.chance * chance),
        sumsOf(observations, course.growth, deviation),
      ),
    ),
  );
  const greatest = cells.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const weights = cells.map(({ log }) => Math.exp(log - greatest));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const chances = Object.fromEntries(TREND_KINDS.map((kind) => [kind, 0])) as Record<TrendKind, number>;
  cells.forEach(({ course }, i) => {
    chances[course.kind] += weights[i] / total;
  });
  const normal = normals(random);
  const draws = evenlyDrawn(cells, weights, total, count, random).map((cell) => drawn(cell, random, normal));
  return { draws, chances };
}

/** The course's cells: none below nothing, since what has worn does not grow back. */
function cellsOf(course: Course, scatter: number, logPrior: number, sums: Sums): readonly Cell[] {
  if (course.growth === null) {
    return [{ course, scatter, sums, from: 0, width: 0, log: logPrior + sums.logEvidence(0) }];
  }
  const { amount, amountDeviation } = sums;
  const start = Math.max(0, amount - REACH * amountDeviation);
  const width = (Math.max(amount, 0) + REACH * amountDeviation - start) / CELLS;
  return Array.from({ length: CELLS }, (_, i) => {
    const from = start + i * width;
    const middle = from + width / 2;
    return {
      course,
      scatter,
      sums,
      from,
      width,
      log: logPrior + Math.log(width * growthDensity(middle)) + sums.logEvidence(middle),
    };
  });
}

/** The half-Cauchy prior of what has grown. */
function growthDensity(amount: number): number {
  return 2 / (Math.PI * USUAL_GROWTH * (1 + (amount / USUAL_GROWTH) ** 2));
}

/** So many cells, each as often as its weight has it, as evenly as can be (systematic sampling). */
function evenlyDrawn(
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

function drawn(
  { course, scatter, sums, from, width }: Cell,
  random: Random,
  normal: () => number,
): TrendDraw {
  const { kind, growth } = course;
  const amount = from + width * random();
  const level = sums.levelAt(amount) + sums.levelDeviation * normal();
  return { kind, scatter, at: (time) => level + (growth === null ? 0 : amount * growth(time)) };
}
