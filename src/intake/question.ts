import type { Outcome, Problem } from "../inspection/problem.ts";

/** What the reader of a log can be asked, where it is in doubt. */
export type Asks = "columns" | "units" | "method" | "decimal mark";

/** Why a row or a cell cannot be read. */
export interface Fault {
  readonly fault: string;
  readonly cure: string;
  /** What the reader could be asked, for it to be read. */
  readonly asks?: Asks;
}

/** What cannot be read as it is, but could be if the reader answered a question. */
export interface Unsettled {
  readonly ok: false;
  readonly problem: Problem;
  readonly asks: Asks;
}

/** A failure that an answer would cure. */
export function asking(asks: Asks, failure: Outcome<never>): Outcome<never> | Unsettled {
  return failure.ok ? failure : { ...failure, asks };
}

/** What an answer would cure of a failure, if any. */
export function askedBy(outcome: Outcome<unknown> | Unsettled): Asks | undefined {
  return !outcome.ok && "asks" in outcome ? outcome.asks : undefined;
}
