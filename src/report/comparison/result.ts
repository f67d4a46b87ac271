import type { Conformance, Estimate, ProfilePoint, Verdict } from "../../analysis/assessment.ts";
import type { ChangePoint, Comparison, Repair, Withheld } from "../../analysis/comparison/comparison.ts";
import type { RunningIn } from "../../analysis/runningIn/runningIn.ts";
import type { TrendKind } from "../../analysis/runningIn/trendShapes.ts";
import { dateOfDay } from "../../inspection/dates.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import type { Inspection, Stage } from "../../inspection/schema.ts";
import { fromMillimetres, type Units } from "../../inspection/units.ts";
import { cautionsOf } from "../cautions.ts";
import { finite, mapNumbers, throughout } from "../jsonNumbers.ts";
import { runningInSummary } from "./runningIn.ts";
import { comparisonSummary } from "./summary.ts";

export interface SurveyResult {
  readonly survey: string;
  readonly taken: string;
  readonly stage: Stage;
  readonly verdict: Verdict;
  readonly uniform: Estimate;
  readonly uneven: Estimate;
  readonly greatest: Estimate;
  readonly endFloat: Estimate | null;
  readonly profile: readonly ProfilePoint[];
}

/** What `compare` answers with `--json`, lengths in the inspection's units. Changes are `to` less `from`. */
export interface ComparisonResult {
  readonly file: string;
  readonly slide: { readonly id: string; readonly name: string };
  readonly units: Units;
  readonly from: SurveyResult;
  readonly to: SurveyResult;
  readonly done: Repair | null;
  readonly summary: string;
  readonly change: Comparison["change"];
  readonly difference: readonly ChangePoint[];
  readonly sameEverywhere: boolean;
  readonly acceptance: {
    readonly conformance: Conformance;
    readonly withheld: Withheld | null;
    readonly limit: number;
    readonly greatest: Estimate;
    readonly chance: number;
  };
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly assumed: readonly string[];
  readonly runningIn: RunningInResult | null;
}

/** A date where the trend is by date, a number where it is by hours of use. */
type Time = string | number;

/** The trend since the last repair. A time that is null lies beyond the horizon. */
export interface RunningInResult {
  readonly by: RunningIn["by"];
  readonly summary: string;
  readonly surveys: readonly {
    readonly survey: string;
    readonly taken: string;
    readonly at: Time;
    readonly uniform: Estimate;
  }[];
  readonly chances: Readonly<Record<TrendKind, number>>;
  readonly likeliest: TrendKind;
  readonly growth: Estimate;
  readonly scatter: number;
  readonly trend: readonly {
    readonly at: Time;
    readonly uniform: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly limit: number;
  readonly uneven: Estimate;
  readonly limitReached: {
    readonly value: Time | null;
    readonly low: Time | null;
    readonly high: Time | null;
    readonly chanceAlready: number;
    readonly chanceByHorizon: number;
    readonly horizon: Time;
  };
  readonly lookAgain: { readonly at: Time; readonly why: RunningIn["lookAgain"]["why"] };
}

/**
 * The result of a comparison.
 *
 * @param file the name that the inspection was read under
 * @param assumed what was taken for granted, in sentences
 * @param runningIn null where there are too few surveys for a trend
 */
export function comparisonResult(
  file: string,
  comparison: Comparison,
  runningIn: RunningIn | null,
  { slide }: Inspection,
  assumed: readonly string[],
): ComparisonResult {
  const { units } = slide;
  const length = (millimetres: number): number => finite(fromMillimetres(millimetres, units));
  const { acceptance } = comparison;
  return {
    file,
    slide: { id: slide.id, name: slide.name },
    units,
    from: surveyResult(comparison.from, length),
    to: surveyResult(comparison.to, length),
    done: comparison.done,
    summary: comparisonSummary(comparison, lengthsIn(units, comparison.resolution)),
    change: throughout(comparison.change, length),
    difference: throughout(comparison.difference, length),
    sameEverywhere: comparison.sameEverywhere,
    acceptance: {
      conformance: acceptance.conformance,
      withheld: acceptance.withheld,
      limit: length(acceptance.limit),
      greatest: mapNumbers(acceptance.greatest, length),
      chance: finite(acceptance.chance),
    },
    notes: comparison.notes,
    cautions: cautionsOf(comparison.to.assessment),
    assumed,
    runningIn: runningIn === null ? null : runningInResult(runningIn, units),
  };
}

function surveyResult(
  { id, taken, stage, assessment }: Comparison["from"],
  length: (millimetres: number) => number,
): SurveyResult {
  const { verdict, uniform, uneven, greatest, endFloat, profile } = assessment;
  const lengths = throughout({ uniform, uneven, greatest, endFloat, profile }, length);
  return { survey: id, taken, stage, verdict, ...lengths };
}

function runningInResult(runningIn: RunningIn, units: Units): RunningInResult {
  const length = (millimetres: number): number => finite(fromMillimetres(millimetres, units));
  const time = (at: number): Time => (runningIn.by === "date" ? dateOfDay(at) : finite(at));
  const timeOrNull = (at: number | null): Time | null => (at === null ? null : time(at));
  const { limitReached, lookAgain } = runningIn;
  return {
    by: runningIn.by,
    summary: runningInSummary(runningIn, lengthsIn(units, runningIn.resolution)),
    surveys: runningIn.surveys.map(({ survey, taken, at, uniform }) => ({
      survey,
      taken,
      at: time(at),
      uniform: mapNumbers(uniform, length),
    })),
    chances: mapNumbers(runningIn.chances, finite),
    likeliest: runningIn.likeliest,
    growth: mapNumbers(runningIn.growth, length),
    scatter: length(runningIn.scatter),
    trend: runningIn.trend.map(({ at, ...lengths }) => ({ at: time(at), ...mapNumbers(lengths, length) })),
    limit: length(runningIn.limit),
    uneven: mapNumbers(runningIn.uneven, length),
    limitReached: {
      value: timeOrNull(limitReached.value),
      low: timeOrNull(limitReached.low),
      high: timeOrNull(limitReached.high),
      chanceAlready: finite(limitReached.chanceAlready),
      chanceByHorizon: finite(limitReached.chanceByHorizon),
      horizon: time(limitReached.horizon),
    },
    lookAgain: { at: time(lookAgain.at), why: lookAgain.why },
  };
}
