/** A mistake that makes a value too large or too small by a known factor. */
export interface Slip {
  readonly factor: number;
  /** How the value compares, before "what the readings around it say". */
  readonly words: string;
  readonly cause: string;
}

const SLIPS: readonly Slip[] = [
  { factor: 10, words: "ten times", cause: "a slipped decimal point" },
  { factor: 0.1, words: "a tenth of", cause: "a slipped decimal point" },
  { factor: 25.4, words: "25.4 times", cause: "millimetres taken for inches" },
  { factor: 1 / 25.4, words: "1/25.4 of", cause: "inches taken for millimetres" },
];

/**
 * The slip that explains a lost motion best; undefined if none does.
 *
 * @param agreement how well a value agrees with the value expected there
 * @param least agreement that the corrected value must reach
 */
export function slipIn(value: number, agreement: (value: number) => number, least: number): Slip | undefined {
  const [best] = SLIPS.map((slip) => ({ slip, agreement: agreement(value / slip.factor) })).sort(
    (a, b) => b.agreement - a.agreement,
  );
  return best.agreement >= least ? best.slip : undefined;
}
