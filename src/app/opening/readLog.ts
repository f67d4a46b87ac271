import { readingInUnits, slideLengths, surveyLengths } from "../../inspection/metric.ts";
import { type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Reading } from "../../inspection/schema.ts";
import { roundTo, type Units } from "../../inspection/units.ts";
import { type CsvReadings, readCsv } from "../../intake/readCsv.ts";
import type { Log } from "./readFile.ts";

/** Decimals beyond any indicator's, within which conversion leaves no traces of binary fractions. */
const DECIMALS = 9;

/**
 * Reads a log of readings into the unit that the slide is kept in.
 *
 * @param said the unit of what the log gives no unit for, as far as the reader said
 * @param kept the unit that the slide is kept in; null where it has none yet
 * @returns the readings; their `units` are undefined where the reader has to be asked
 */
export function readLog(log: Log, said: Units | null, kept: Units | null): Outcome<CsvReadings> {
  const units = said ?? log.units ?? null;
  const read = readCsv(log.content, units === null ? {} : { units });
  if (!read.ok || read.value.units === undefined || kept === null) return read;
  return succeeded(inUnits(read.value, read.value.units, kept));
}

function inUnits(csv: CsvReadings, from: Units, to: Units): CsvReadings {
  if (from === to) return csv;
  const { slide, survey, ...others } = csv.slideData;
  return {
    ...csv,
    units: to,
    readings: csv.readings.map((reading) => rounded(readingInUnits(reading, csv.method, from, to))),
    slideData: { ...others, slide: slideLengths(slide, from, to), survey: surveyLengths(survey, from, to) },
  };
}

function rounded(reading: Reading): Reading {
  const entries = Object.entries(reading).map(([key, value]): readonly [string, unknown] => [
    key,
    typeof value === "number" ? roundTo(value, DECIMALS) : value,
  ]);
  return Object.fromEntries(entries) as Reading;
}
