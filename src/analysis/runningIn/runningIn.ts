import type { Estimate } from "../assessment.ts";
import type { TrendKind } from "./courses.ts";

/** One survey of a history. */
export interface HistoryPoint {
  readonly survey: string;
  readonly taken: string;
  /** Days since 1970-01-01, or hours of use. */
  readonly at: number;
  readonly uniform: Estimate;
}

/** The uniform part as the trend has it at a time, with its 95 % interval. */
export interface TrendPoint {
  readonly at: number;
  readonly uniform: number;
  readonly low: number;
  readonly high: number;
}

/** When the greatest lost motion over the working range is expected to reach the limit. */
export interface LimitReached {
  /** Median and equal-tailed 95 % interval in time; null where it lies beyond the horizon. */
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Chance that it is reached by the last survey, and by the horizon. */
  readonly chanceAlready: number;
  readonly chanceByHorizon: number;
  /** How far the trend is carried on; nothing is said of what comes after. */
  readonly horizon: number;
}

/** How the uniform part has changed since the last repair, and where that leads. Lengths are in millimetres. */
export interface RunningIn {
  /** Whether times are days since 1970-01-01 or hours of use. */
  readonly by: "date" | "hours";
  readonly surveys: readonly HistoryPoint[];
  /** How likely the readings make each way to grow. */
  readonly chances: Readonly<Record<TrendKind, number>>;
  readonly likeliest: TrendKind;
  /** Growth from the first survey to the last, as the trend has it. */
  readonly growth: Estimate;
  /** How much of the uniform part came or went from survey to survey beside trend and readings: one deviation. */
  readonly scatter: number;
  readonly trend: readonly TrendPoint[];
  readonly limit: number;
  /** What the last survey has lost motion at its greatest above the uniform part: taken not to change. */
  readonly uneven: Estimate;
  readonly limitReached: LimitReached;
  readonly lookAgain: { readonly at: number; readonly why: "now" | "limit" | "watched" };
  readonly resolution: number;
}

/** Why a history says nothing yet. */
export interface TooLittle {
  readonly surveys: number;
  readonly why: "surveys" | "times";
}
