import { mean } from "simple-statistics";
import { isPair, isPositioning } from "../../inspection/readingShapes.ts";
import type { Reading } from "../../inspection/schema.ts";
import type { Finding } from "../assessment.ts";
import type { Corrected } from "../correct/corrections.ts";
import {
  type PooledSquares,
  pooledSquares,
  repeatabilityPosterior,
  roundingVariance,
} from "../correct/repeatability.ts";
import { stationsOf } from "../correct/stations.ts";
import { erfc } from "../profile/evidence.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { CheckInput } from "./check.ts";

type Input = Pick<CheckInput, "survey" | "corrected" | "outliers">;

/**
 * The same rows twice, such as a block that was pasted twice: they are not repeats. Rows count as pasted if they have
 * the time of an earlier row, or if the last rows repeat a block of earlier ones that chance does not make identical (the
 * chance that rounded normal scatter comes out the same; one look for each place where a block as long could begin).
 */
export const duplicateRows = ({ survey, corrected, outliers }: Input): readonly Finding[] => {
  const duplicates = rowsWithSameTime(survey.readings) ?? repeatedBlock(survey.readings, corrected, outliers);
  if (duplicates.length === 0) return [];
  return [
    {
      check: "duplicate rows",
      severity: "warning",
      message: `${duplicates.length} ${duplicates.length === 1 ? "row is" : "rows are"} the same as ${duplicates.length === 1 ? "an earlier one" : "earlier ones"}, to the last digit. If they were pasted twice, strike them: they are not repeats.`,
      readings: duplicates,
    },
  ];
};

/** Rows with the time of an earlier one; undefined if times are missing or too coarse to distinguish rows. */
function rowsWithSameTime(readings: readonly Reading[]): readonly number[] | undefined {
  const rowAt = new Map<string, string>();
  const duplicates: number[] = [];
  for (const [index, reading] of readings.entries()) {
    if (reading.time === undefined) return undefined;
    const row = rowKey(reading);
    const earlier = rowAt.get(reading.time);
    if (earlier !== undefined && earlier !== row) return undefined;
    if (earlier === row) duplicates.push(index);
    rowAt.set(reading.time, row);
  }
  return duplicates;
}

/** The last rows, if they repeat a block of earlier ones that chance does not make identical. */
function repeatedBlock(
  readings: readonly Reading[],
  corrected: Corrected,
  outliers: Input["outliers"],
): readonly number[] {
  const rows = readings.map(rowKey);
  const places = readings.map(placeKey);
  const sameRows = commonEndings(rows);
  const samePlaces = commonEndings(places);
  const lengths = sameRows.map((common, lag) => Math.min(common, lag));
  const length = Math.max(0, ...lengths);
  if (length === 0) return [];
  const looks = samePlaces.filter((common, lag) => Math.min(common, lag) >= length).length;
  const first = readings.length - length;
  // A mistake would make the scatter so great that no two readings come out the same.
  const isOutlier = new Set(outliers.map(({ reading }) => reading));
  const before = corrected.readings.filter(
    (reading) => !isOutlier.has(reading) && reading.from.every((index) => index < first),
  );
  const chance = chanceOfIdentical(
    countsOf(places.slice(first)),
    pooledSquares(stationsOf(before)),
    corrected,
  );
  return isSignificant(chance, looks) ? places.slice(first).map((_, i) => first + i) : [];
}

function countsOf(places: readonly string[]): readonly number[] {
  const counts = new Map<string, number>();
  for (const place of places) counts.set(place, (counts.get(place) ?? 0) + 1);
  return [...counts.values()];
}

/** For every lag: how many of the last rows equal the rows that many rows earlier (Gusfield's Z algorithm). */
function commonEndings(rows: readonly string[]): readonly number[] {
  const reversed = rows.toReversed();
  const common = reversed.map(() => 0);
  let from = 0;
  let to = 0;
  for (let lag = 1; lag < reversed.length; lag++) {
    let count = lag < to ? Math.min(to - lag, common[lag - from]) : 0;
    while (lag + count < reversed.length && reversed[count] === reversed[lag + count]) count++;
    common[lag] = count;
    if (lag + count > to) [from, to] = [lag, lag + count];
  }
  return common;
}

function placeKey(reading: Reading): string {
  return isPositioning(reading)
    ? [reading.target, reading.direction, reading.run].join("|")
    : String(reading.position);
}

function rowKey(reading: Reading): string {
  if (isPositioning(reading)) return [placeKey(reading), reading.reading].join("|");
  const values = isPair(reading) ? [reading.advancing, reading.retracting] : [reading.backlash];
  return [placeKey(reading), ...values].join("|");
}

/** Distances of the true value from the nearest graduation, in graduations, all equally likely. */
const PHASES = Array.from({ length: 8 }, (_, i) => (i + 0.5) / 16);
/** With more graduations of scatter, the phase of the true value no longer matters. */
const COARSE = 1.5;

/**
 * Chance that readings taken a second time all fall on the same graduations as the first time. Readings at one place
 * share the phase of the true value between two graduations, so one identical reading makes the next more likely.
 *
 * @param counts number of readings taken a second time at each place
 * @param pooled squared deviations of other readings, in mm²
 */
export function chanceOfIdentical(
  counts: readonly number[],
  pooled: PooledSquares,
  corrected: Corrected,
): number {
  const { roundings, resolution } = corrected;
  const { deviations, weights } = repeatabilityPosterior(pooled, corrected);
  const rounding = roundingVariance(corrected);
  return deviations.reduce((sum, deviation, i) => {
    // Each reading of a pair has half the variance, and both must come out the same.
    const scatter = Math.sqrt((deviation ** 2 - rounding) / roundings) / resolution.step;
    const same = PHASES.map((phase) => sameGraduation(phase, scatter));
    const all = counts.map((count) => mean(same.map((chance) => chance ** count)) ** roundings);
    return sum + weights[i] * all.reduce((product, chance) => product * chance, 1);
  }, 0);
}

/** Chance that two readings fall on one graduation; phase and scatter in graduations. */
function sameGraduation(phase: number, scatter: number): number {
  if (scatter > COARSE) return 1 / (2 * Math.sqrt(Math.PI) * scatter);
  const reach = Math.ceil(5 * scatter) + 1;
  const above = (edge: number): number => 0.5 * erfc((edge - phase) / (scatter * Math.SQRT2));
  let chance = 0;
  let aboveEdge = above(-reach - 0.5);
  for (let mark = -reach; mark <= reach; mark++) {
    const aboveNext = above(mark + 0.5);
    chance += (aboveEdge - aboveNext) ** 2;
    aboveEdge = aboveNext;
  }
  return chance;
}
