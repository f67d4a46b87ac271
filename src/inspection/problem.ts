/** Something the user can cure: what is wrong, where, and how to put it right. */
export interface Problem {
  /** The place: a row, a key (`slide.travel.from`), a line and column; empty when it is the whole input. */
  readonly where: string;
  readonly what: string;
  readonly cure: string;
}

/** A problem with the name of the file that it is about. */
export interface FileProblem {
  readonly file: string;
  readonly problem: Problem;
}

/** The outcome of anything that may fail through the user's input. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

export function succeeded<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function failed(where: string, what: string, cure: string): Outcome<never> {
  return { ok: false, problem: { where, what, cure } };
}

/** The problem in one sentence. */
export function inOneLine(problem: Problem): string {
  const place = problem.where === "" ? "" : `${problem.where}: `;
  return `${place}${problem.what}. ${problem.cure}`.trim();
}
