import { mean } from "simple-statistics";
import { type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { type Assess, type AssessedSurvey, assessWithDraws } from "../assess.ts";
import type { Estimate } from "../assessment.ts";
import { drawError, type ReadingError, sameIndicator, withoutError } from "../comparison/indicatorError.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { type Random, seededRandom } from "../statistics/random.ts";
import type { Observation } from "./leastSquares.ts";
import { limitReachedOf, nextSurveyTime, reachingTimes } from "./limitReached.ts";
import type { RunningIn, TooFewSurveys, TrendPoint } from "./runningIn.ts";
import { sinceLastRepair, timesOf } from "./sinceLastRepair.ts";
import { type TrendDraw, trendOf } from "./trend.ts";
import { TREND_KINDS } from "./trendShapes.ts";

/** Least number of surveys, and of different times, for a trend. */
export const LEAST_SURVEYS = 3;

const SEED = 20260417;
const DRAWS = 2000;
/** Half the width of a 95 % interval, in standard deviations of a normal distribution. */
const HALF_WIDTH = 1.96;
/** Number of steps in the trend shown, which runs from the first survey for twice the time observed. */
const STEPS = 40;
const SHOWN_TO = 2;

/**
 * The trend of the uniform part over the surveys since the last repair, and when the limit is expected to be reached.
 * Returns the number of surveys if they are too few; fails if a survey has no readings.
 */
export function runningInOf(
  inspection: Inspection,
  assess: Assess = assessWithDraws,
): Outcome<RunningIn | TooFewSurveys> {
  const series = sinceLastRepair(inspection);
  if (series.length < LEAST_SURVEYS) return succeeded({ surveys: series.length, why: "surveys" });
  const { by, times } = timesOf(series);
  if (new Set(times).size < LEAST_SURVEYS) return succeeded({ surveys: series.length, why: "times" });
  const assessed: AssessedSurvey[] = [];
  for (const { id } of series) {
    const one = assess(inspection, id);
    if (!one.ok) return one;
    assessed.push(one.value);
  }
  return succeeded(runningInFrom(assessed, by, times));
}

function runningInFrom(
  surveys: readonly AssessedSurvey[],
  by: RunningIn["by"],
  times: readonly number[],
): RunningIn {
  const random = seededRandom(SEED);
  const [first, last] = [times[0], times[times.length - 1]];
  const timeOf = (trendTime: number): number => first + trendTime * (last - first);
  const latest = surveys[surveys.length - 1];
  const shared = surveys.every(({ survey }) => sameIndicator(survey, latest.survey));
  const observations = surveys.map((each, i) =>
    observationOf(each, (times[i] - first) / (last - first), shared),
  );
  const { draws: uncorrected, chances } = trendOf(observations, DRAWS, random);
  const errors = commonErrors(surveys, shared, random);
  const draws = uncorrected.map(
    ({ at, ...rest }, i): TrendDraw => ({
      ...rest,
      at: (time) => withoutError(at(time), errors[i]),
    }),
  );
  const { limit } = latest.assessment.settings;
  const uneven = unevenOf(latest, errors, random);
  const reaching = reachingTimes(draws, uneven, limit);
  return {
    by,
    surveys: surveys.map(({ survey, assessment }, i) => ({
      survey: survey.id,
      taken: survey.taken,
      at: times[i],
      uniform: assessment.uniform,
    })),
    chances,
    likeliest: TREND_KINDS.reduce((best, kind) => (chances[kind] > chances[best] ? kind : best)),
    growth: estimateOf(draws.map(({ at }) => at(1) - at(0))),
    scatter: mean(draws.map(({ scatter }) => scatter)),
    trend: trendPoints(draws, timeOf),
    limit,
    uneven: estimateOf(uneven),
    limitReached: limitReachedOf(reaching, timeOf),
    lookAgain: nextSurveyTime(reaching, timeOf),
    resolution: Math.max(...surveys.map(({ assessment }) => assessment.resolution)),
  };
}

/** If the indicator is not the same in every survey, its error adds to each survey's own uncertainty. */
function observationOf({ assessment, survey }: AssessedSurvey, time: number, shared: boolean): Observation {
  const { uniform, greatest } = assessment;
  const ownDeviation = deviationOf(uniform);
  const { error = 0, hysteresis = 0 } = survey.indicator ?? {};
  const scale = greatest.value > 0 ? (error * uniform.value) / greatest.value : 0;
  const indicatorDeviation = shared ? 0 : Math.hypot(scale / Math.sqrt(3), hysteresis / Math.sqrt(12));
  return { time, value: uniform.value, deviation: Math.hypot(ownDeviation, indicatorDeviation) };
}

/** Lower bound on the standard deviation, in millimetres. */
const LEAST_DEVIATION = 1e-5;

function deviationOf({ low, high }: Estimate): number {
  return Math.max((high - low) / (2 * HALF_WIDTH), LEAST_DEVIATION);
}

/** An indicator used in all surveys has one error, which shifts the whole trend. */
function commonErrors(
  surveys: readonly AssessedSurvey[],
  shared: boolean,
  random: Random,
): readonly ReadingError[] {
  const latest = surveys[surveys.length - 1];
  const greatest = Math.max(...surveys.map(({ assessment }) => assessment.greatest.value));
  return Array.from({ length: DRAWS }, () =>
    shared ? drawError(latest.survey, greatest, random) : { factor: 1, offset: 0 },
  );
}

/** Draws of the uneven part by the last survey, in millimetres. */
function unevenOf(
  { profile }: AssessedSurvey,
  errors: readonly ReadingError[],
  random: Random,
): readonly number[] {
  return errors.map(({ factor }) => {
    const { loose, tight } = profile.draws[Math.floor(random() * profile.draws.length)];
    return (loose.backlash - tight.backlash) / factor;
  });
}

function trendPoints(
  draws: readonly TrendDraw[],
  timeOf: (trendTime: number) => number,
): readonly TrendPoint[] {
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const time = (SHOWN_TO * step) / STEPS;
    const { value, low, high } = estimateOf(draws.map(({ at }) => at(time)));
    return { at: timeOf(time), uniform: value, low, high };
  });
}
