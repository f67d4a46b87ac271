import type { Estimate } from "../assessment.ts";
import type { TrendKind } from "./trendShapes.ts";

/** One survey of a history. */
export interface HistoryPoint {
  readonly survey: string;
  readonly taken: string;
  /** Days since 1970-01-01, or hours of use. */
  readonly at: number;
  readonly uniform: Estimate;
}

/** The uniform part by the trend at a time, with its 95 % interval. */
export interface TrendPoint {
  readonly at: number;
  readonly uniform: number;
  readonly low: number;
  readonly high: number;
}

/** When the greatest lost motion over the working range is expected to reach the limit. */
export interface LimitReached {
  /** Median and equal-tailed 95 % interval in time; null beyond the horizon. */
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Chance that it is reached by the last survey, and by the horizon. */
  readonly chanceAlready: number;
  readonly chanceByHorizon: number;
  /** The end of the extrapolation. */
  readonly horizon: number;
}

/** The change of the uniform part since the last repair, and its extrapolation. Lengths are in millimetres. */
export interface RunningIn {
  /** Whether times are days since 1970-01-01 or hours of use. */
  readonly by: "date" | "hours";
  readonly surveys: readonly HistoryPoint[];
  /** Posterior chance of each kind of trend. */
  readonly chances: Readonly<Record<TrendKind, number>>;
  readonly likeliest: TrendKind;
  /** Growth from the first survey to the last by the trend. */
  readonly growth: Estimate;
  /** Scatter from survey to survey beside trend and readings: one standard deviation. */
  readonly scatter: number;
  readonly trend: readonly TrendPoint[];
  readonly limit: number;
  /** The uneven part by the last survey, assumed not to change. */
  readonly uneven: Estimate;
  readonly limitReached: LimitReached;
  readonly lookAgain: { readonly at: number; readonly why: "now" | "limit" | "watched" };
  readonly resolution: number;
}

/** Too few surveys, or surveys at too few times, for a trend. */
export interface TooFewSurveys {
  readonly surveys: number;
  readonly why: "surveys" | "times";
}
