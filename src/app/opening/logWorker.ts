import { succeeded } from "../../inspection/problem.ts";
import type { Reading } from "../../inspection/schema.ts";
import { previewOf } from "../../intake/preview.ts";
import { readingCsv } from "../../intake/readCsv.ts";
import { thinned } from "../../intake/thinned.ts";
import type { CsvOptions } from "../../intake/understanding.ts";
import type { LogTold, LogToRead } from "./logMessages.ts";

/** A table of more readings than this can neither be looked through nor typed in. */
const MOST_IN_A_TABLE = 1000;

/** Reads one log; it is stopped by ending the worker. */
self.onmessage = ({ data: { content, options } }: MessageEvent<LogToRead>) => {
  tell({ kind: "columns", preview: previewOf(content) });
  if (options !== null) tell({ kind: "read", outcome: readWhole(content, options) });
};

function readWhole(content: LogToRead["content"], options: CsvOptions) {
  const steps = readingCsv(content, options);
  const readings: Reading[] = [];
  for (;;) {
    const step = steps.next();
    if (step.done !== true) {
      for (const reading of step.value.readings) readings.push(reading);
      tell({ kind: "progress", done: step.value.done });
    } else if (step.value.ok) {
      const taken = thinned(readings, MOST_IN_A_TABLE);
      return succeeded({ ...step.value.value, readings: taken, count: readings.length });
    } else return step.value;
  }
}

function tell(told: LogTold): void {
  self.postMessage(told);
}
