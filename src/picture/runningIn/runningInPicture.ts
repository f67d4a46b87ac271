import type { RunningIn } from "../../analysis/runningIn/runningIn.ts";
import { dateOfDay } from "../../inspection/dates.ts";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { fromMillimetres, type Units } from "../../inspection/units.ts";
import { type Axis, exactAxis, wideAxis } from "../axis.ts";
import { dateAxis } from "../dateAxis.ts";
import type { BandedLine } from "../plotParts.ts";

/** The uniform part of one survey, with its 95 % interval. */
export interface SurveyMark {
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

/** When the limit is expected to be reached; null beyond the picture's end. */
export interface ReachedMark {
  readonly from: number;
  readonly likeliest: number | null;
  readonly to: number | null;
}

/**
 * The picture of running in, in the reader's unit: the uniform part against time, its trend and the limit. Plain data for
 * any renderer.
 */
export interface RunningInPicture {
  readonly title: string;
  /** The picture in words, for a screen reader. */
  readonly description: string;
  /** Days since 1970-01-01, or hours of use. */
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  readonly surveys: readonly SurveyMark[];
  readonly trend: BandedLine;
  /** Time of the last survey; from there on the trend is extrapolated. */
  readonly lastSurveyAt: number;
  /** The uniform part at which the greatest lost motion reaches the limit; null if it always exceeds it. */
  readonly limit: { readonly y: number; readonly label: string } | null;
  readonly reached: ReachedMark | null;
  readonly lookAgain: { readonly x: number; readonly label: string };
}

const TIME_TICKS = 8;
const LOST_MOTION_TICKS = 5;
/** Room above the highest thing shown, for its label. */
const HEADROOM = 1.15;

/** Describes running in as a picture in the given unit. */
export function runningInPicture(runningIn: RunningIn, units: Units): RunningInPicture {
  const lengths = lengthsIn(units, runningIn.resolution);
  const length = (millimetres: number): number => fromMillimetres(millimetres, units);
  const { by, surveys, trend, lookAgain } = runningIn;
  const [start, end] = [trend[0]?.at ?? 0, trend.at(-1)?.at ?? 1];
  const limit = limitOf(runningIn, lengths);
  const marks = surveys.map(
    ({ at, uniform }): SurveyMark => ({
      x: at,
      y: length(uniform.value),
      low: length(uniform.low),
      high: length(uniform.high),
    }),
  );
  const line: BandedLine = {
    label: "trend, with 95 % band",
    points: trend.map(({ at, uniform }) => ({ x: at, y: length(uniform) })),
    band: trend.map(({ at, low, high }) => ({ x: at, low: length(low), high: length(high) })),
  };
  const amounts = [...marks, ...line.band].flatMap(({ low, high }) => [low, high]);
  const label = by === "date" ? "Date" : "Hours of use";
  const axis = by === "date" ? dateAxis : exactAxis;
  return {
    title: titleOf(runningIn, lengths),
    description: describe(runningIn, lengths),
    xAxis: axis(label, start, end, TIME_TICKS),
    yAxis: wideAxis(
      `Uniform part (${units})`,
      Math.min(...amounts),
      Math.max(limit?.y ?? 0, ...amounts) * HEADROOM,
      LOST_MOTION_TICKS,
    ),
    surveys: marks,
    trend: line,
    lastSurveyAt: surveys.at(-1)?.at ?? end,
    limit,
    reached: reachedOf(runningIn, end),
    lookAgain: { x: lookAgain.at, label: `look again, ${timeOf(lookAgain.at, by)}` },
  };
}

/** The limit applies to the greatest lost motion, so the uniform part may grow to the limit minus the uneven part. */
function limitOf({ limit, uneven }: RunningIn, lengths: Lengths): RunningInPicture["limit"] {
  const level = limit - uneven.value;
  if (level <= 0) return null;
  const label =
    lengths.figure(uneven.value) === lengths.figure(0)
      ? `limit ${lengths.position(limit)}`
      : `limit ${lengths.position(limit)}, less the uneven ${lengths.lostMotion(uneven.value)}`;
  return { y: fromMillimetres(level, lengths.units), label };
}

function reachedOf({ limitReached: { value, low, high } }: RunningIn, end: number): ReachedMark | null {
  if (low === null || low > end) return null;
  const within = (time: number | null): number | null => (time === null || time > end ? null : time);
  return { from: low, likeliest: within(value), to: within(high) };
}

function titleOf({ surveys, growth }: RunningIn, lengths: Lengths): string {
  const grown =
    lengths.figure(growth.low) === lengths.figure(0)
      ? "no growth shown"
      : `grown by ${lengths.lostMotion(growth.value)}`;
  return `Running in: the uniform part over ${surveys.length} surveys, ${grown}`;
}

function timeOf(at: number, by: RunningIn["by"]): string {
  return by === "date" ? dateOfDay(at) : `${Math.round(at)} h`;
}

function describe({ surveys, trend, by, limit, lookAgain }: RunningIn, lengths: Lengths): string {
  const last = trend.at(-1);
  const sentences = [
    `The uniform part of lost motion against ${by === "date" ? "the date" : "hours of use"}, with the trend through it`,
    ...surveys.map(({ at, uniform }) => `${timeOf(at, by)}: ${lengths.lostMotion(uniform.value)}`),
    ...(last === undefined
      ? []
      : [
          `Carried on to ${timeOf(last.at, by)} the trend comes to between ${lengths.lostMotion(last.low)} and ${lengths.lostMotion(last.high)}`,
        ]),
    `The limit is ${lengths.position(limit)}`,
    `Look again: ${timeOf(lookAgain.at, by)}`,
  ];
  return `${sentences.join(". ")}.`;
}
