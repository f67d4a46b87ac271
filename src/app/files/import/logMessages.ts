import type { Outcome } from "../../../inspection/problem.ts";
import type { Preview } from "../../../intake/preview.ts";
import type { Unsettled } from "../../../intake/question.ts";
import type { CsvReadings } from "../../../intake/readCsv.ts";
import type { CsvOptions } from "../../../intake/understanding.ts";

/** What the worker is given to read. */
export interface LogToRead {
  readonly content: Uint8Array | string;
  /** How it is to be read; null where only its columns are to be shown. */
  readonly options: CsvOptions | null;
}

/** A log as it can be taken in. */
export interface LogReadings extends CsvReadings {
  /** Where the log is too long for a table of readings: how many it holds, and which of them were taken, in words. */
  readonly thinned: { readonly count: number; readonly how: string } | null;
}

/** What it tells: first the columns as they stand in the log, then how far it has come, and what came of it. */
export type LogTold =
  | { readonly kind: "columns"; readonly preview: Outcome<Preview> }
  | { readonly kind: "progress"; readonly done: number }
  | { readonly kind: "read"; readonly outcome: Outcome<LogReadings> | Unsettled };
