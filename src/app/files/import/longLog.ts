import type { Outcome } from "../../../inspection/problem.ts";
import { succeeded } from "../../../inspection/problem.ts";
import type { Unsettled } from "../../../intake/question.ts";
import { type CsvReadings, readingCsv } from "../../../intake/readCsv.ts";
import { thinned } from "../../../intake/thinned.ts";
import type { CsvOptions } from "../../../intake/understanding.ts";
import type { LogReadings } from "./logMessages.ts";

/** A table of more readings than this can neither be looked through nor typed in. */
const MOST_IN_A_TABLE = 1000;

/** Reads a log of any length, telling how far it has come; of one that no table can hold, what stands for it. */
export function readLongLog(
  content: Uint8Array | string,
  options: CsvOptions,
  told: (done: number) => void,
): Outcome<LogReadings> | Unsettled {
  const steps = readingCsv(content, options);
  for (;;) {
    const step = steps.next();
    if (step.done !== true) told(step.value);
    else return step.value.ok ? succeeded(asTaken(step.value.value)) : step.value;
  }
}

function asTaken(log: CsvReadings): LogReadings {
  const { readings } = log;
  const taken = thinned(readings, MOST_IN_A_TABLE);
  if (taken === readings) return { ...log, thinned: null };
  const struck = readings.reduce((count, { excluded }) => count + (excluded === undefined ? 0 : 1), 0);
  const all = (count: number): string => count.toLocaleString("en");
  const leftOut = struck === 0 ? "" : ` The ${all(struck)} that are struck in it are left out.`;
  const how = `${all(taken.length)} of the ${all(readings.length)} readings of the log: of every short stretch of the travel the same number, from the smallest to the largest.${leftOut}`;
  const { survey, ...others } = log.slideData;
  const before = typeof survey.note === "string" ? `${survey.note} ` : "";
  return {
    ...log,
    readings: taken,
    slideData: { ...others, survey: { ...survey, note: `${before}${how}` } },
    thinned: { count: readings.length, how },
  };
}
