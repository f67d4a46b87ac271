import type { Outcome } from "../../inspection/problem.ts";
import type { Preview } from "../../intake/preview.ts";
import type { Unsettled } from "../../intake/question.ts";
import type { CsvReadings } from "../../intake/readCsv.ts";
import type { CsvOptions } from "../../intake/understanding.ts";

/** What the worker is given to read. */
export interface LogToRead {
  readonly content: Uint8Array | string;
  /** How it is to be read; null where only its columns are to be shown. */
  readonly options: CsvOptions | null;
}

/** A log as it can be taken in. */
export interface LogReadings extends CsvReadings {
  /** How many readings the log holds; more than there are where it is too long for a table of readings. */
  readonly count: number;
}

/** What it tells: first the columns as they stand in the log, then how far it has come, and what came of it. */
export type LogTold =
  | { readonly kind: "columns"; readonly preview: Outcome<Preview> }
  | { readonly kind: "progress"; readonly done: number }
  | { readonly kind: "read"; readonly outcome: Outcome<LogReadings> | Unsettled };
