import { isPair, isPositioning } from "../../inspection/readingShapes.ts";
import type { Reading } from "../../inspection/schema.ts";
import type { Finding } from "../assessment.ts";
import type { Corrected } from "../correct/corrections.ts";
import { pooledSquares } from "../correct/repeatability.ts";
import { stationsOf } from "../correct/stations.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Surveyed } from "./check.ts";
import { chanceOfIdentical } from "./identicalRepeats.ts";

type Seen = Pick<Surveyed, "survey" | "corrected" | "outliers">;

/**
 * The same rows twice, as when a block is pasted a second time: they would count as repeats that they are not. Rows
 * are taken for pasted where they carry the time of an earlier one, or where more of them than chance makes alike
 * repeat earlier rows in the same order: by the chance that normal scatter, rounded, comes out the same, at the rate
 * that `isTooRare` states for all the places where a block as long could begin.
 */
export const duplicateRows = ({ survey, corrected, outliers }: Seen): readonly Finding[] => {
  const twins = timedTwice(survey.readings) ?? pastedLast(survey.readings, corrected, outliers);
  if (twins.length === 0) return [];
  return [
    {
      check: "duplicate rows",
      severity: "warning",
      message: `${twins.length} ${twins.length === 1 ? "row is" : "rows are"} the same as ${twins.length === 1 ? "an earlier one" : "earlier ones"}, to the last digit. If they were pasted twice, strike them: they are not repeats.`,
      readings: twins,
    },
  ];
};

/** Rows with the time of an earlier one; undefined where times are missing, or too coarse to tell rows apart. */
function timedTwice(readings: readonly Reading[]): readonly number[] | undefined {
  const rowAt = new Map<string, string>();
  const twins: number[] = [];
  for (const [index, reading] of readings.entries()) {
    if (reading.time === undefined) return undefined;
    const row = keyOf(reading);
    const earlier = rowAt.get(reading.time);
    if (earlier !== undefined && earlier !== row) return undefined;
    if (earlier === row) twins.push(index);
    rowAt.set(reading.time, row);
  }
  return twins;
}

/** The last rows, as far as they repeat a block of as many earlier ones that chance does not make alike. */
function pastedLast(
  readings: readonly Reading[],
  corrected: Corrected,
  outliers: Seen["outliers"],
): readonly number[] {
  const rows = readings.map(keyOf);
  const places = readings.map(placeOf);
  const alike = lastInCommon(rows);
  const samePlaces = lastInCommon(places);
  const lengths = alike.map((common, lag) => Math.min(common, lag));
  const length = Math.max(0, ...lengths);
  if (length === 0) return [];
  const looks = samePlaces.filter((common, lag) => Math.min(common, lag) >= length).length;
  const first = readings.length - length;
  // A mistake would make scatter so great that nothing comes out the same twice.
  const mistaken = new Set(outliers.map(({ reading }) => reading));
  const before = corrected.readings.filter(
    (reading) => !mistaken.has(reading) && reading.from.every((index) => index < first),
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

/** By how many rows earlier: how many of the last rows are the same as those so much earlier (Gusfield's Z). */
function lastInCommon(rows: readonly string[]): readonly number[] {
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

function placeOf(reading: Reading): string {
  return isPositioning(reading)
    ? [reading.target, reading.direction, reading.run].join("|")
    : String(reading.position);
}

function keyOf(reading: Reading): string {
  if (isPositioning(reading)) return [placeOf(reading), reading.reading].join("|");
  const values = isPair(reading) ? [reading.advancing, reading.retracting] : [reading.backlash];
  return [placeOf(reading), ...values].join("|");
}
