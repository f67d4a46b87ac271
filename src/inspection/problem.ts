/** A problem that the user can fix: where, what is wrong, and how to fix it. */
export interface Problem {
  /** The place: a row, a key (`slide.travel.from`), a line and column; empty for the whole input. */
  readonly where: string;
  readonly what: string;
  readonly cure: string;
}

/** A problem with the name of its file. */
export interface FileProblem {
  readonly file: string;
  readonly problem: Problem;
}

/** The result of an operation that may fail because of the user's input. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem };

/** A successful outcome. */
export function succeeded<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/** A failed outcome; the parameters are those of `Problem`. */
export function failed(where: string, what: string, cure: string): Outcome<never> {
  return { ok: false, problem: { where, what, cure } };
}

/** The problem in one sentence. */
export function inOneLine(problem: Problem): string {
  const place = problem.where === "" ? "" : `${problem.where}: `;
  return `${place}${problem.what}. ${problem.cure}`.trim();
}
