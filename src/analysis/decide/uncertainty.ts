import { mean, sampleStandardDeviation } from "simple-statistics";
import type { Survey } from "../../inspection/schema.ts";
import type { Conformance, Spot, UncertaintyLine } from "../assessment.ts";
import type { Corrected } from "../correct/corrections.ts";
import type { Station } from "../correct/stations.ts";
import type { ProfileDraws } from "../profile/draws.ts";

/** An uncertainty budget after the GUM, in millimetres. */
export interface UncertaintyBudget {
  readonly lines: readonly UncertaintyLine[];
  /** Combined standard uncertainty, root of the sum of squares. */
  readonly combined: number;
  /** U = 2 u. */
  readonly expanded: number;
}

const COVERAGE_FACTOR = 2;
/** Guard band of ISO 14253-1 at 95 %, one-sided, in standard uncertainties. */
const GUARD_BAND = 1.65;

/**
 * The uncertainty budget of lost motion at the loosest spot after the GUM (JCGM 100): repeatability of the nearest
 * station's mean, rounding (rectangular, 4.3.7), the indicator's stated limit of error and its hysteresis
 * (rectangular), and interpolation between stations, which is the spread of the draws beyond the first two. End float
 * is part of lost motion as found, so its line is zero.
 */
export function uncertaintyBudget(
  profile: ProfileDraws,
  loosest: Spot,
  stations: readonly Station[],
  corrected: Corrected,
  survey: Survey,
): UncertaintyBudget {
  const nearest = stations.reduce((best, station) =>
    Math.abs(station.position - loosest.position) < Math.abs(best.position - loosest.position)
      ? station
      : best,
  );
  const repeatability =
    mean(profile.draws.map((draw) => draw.repeatability)) / Math.sqrt(nearest.readings.length);
  const rounding = corrected.resolution.step * Math.sqrt(corrected.roundings / 12);
  const spread = sampleStandardDeviation(profile.draws.map((draw) => draw.loose.backlash));
  const lines: UncertaintyLine[] = [
    { source: "repeatability", standard: repeatability, stated: true },
    { source: "rounding", standard: rounding, stated: true },
    indicatorLine("indicator's stated error", survey.indicator?.error, Math.sqrt(3)),
    indicatorLine("indicator's hysteresis", survey.indicator?.hysteresis, Math.sqrt(12)),
    { source: "end float (part of lost motion as found)", standard: 0, stated: true },
    {
      source: "interpolation between stations",
      standard: Math.sqrt(Math.max(0, spread ** 2 - repeatability ** 2 - rounding ** 2)),
      stated: true,
    },
  ];
  const combined = Math.hypot(...lines.map((line) => line.standard));
  return { lines, combined, expanded: COVERAGE_FACTOR * combined };
}

function indicatorLine(source: string, width: number | undefined, divisor: number): UncertaintyLine {
  return { source, standard: (width ?? 0) / divisor, stated: width !== undefined };
}

/** Conformance of the greatest lost motion with the limit, after ISO 14253-1. Millimetres. */
export function conformanceOf(worst: number, combined: number, limit: number): Conformance {
  const guard = GUARD_BAND * combined;
  if (worst + guard <= limit) return "proven";
  return worst - guard > limit ? "disproven" : "not proven";
}
