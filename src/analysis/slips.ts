/** A mistake that makes a figure a known number of times too large or too small. */
export interface Slip {
  readonly factor: number;
  /** How the figure compares, before "what the readings around it say". */
  readonly words: string;
  readonly cause: string;
}

export const SLIPS: readonly Slip[] = [
  { factor: 10, words: "ten times", cause: "a slipped decimal point" },
  { factor: 0.1, words: "a tenth of", cause: "a slipped decimal point" },
  { factor: 25.4, words: "25.4 times", cause: "millimetres taken for inches" },
  { factor: 1 / 25.4, words: "1/25.4 of", cause: "inches taken for millimetres" },
];
/** How near the ratio must come to the factor. */
const NEAR = 0.15;

/** The slip that a lost motion shows against what is expected there; undefined where it shows none. */
export function slipIn(value: number, expected: number): Slip | undefined {
  return SLIPS.find(({ factor }) => Math.abs(Math.log(value / expected / factor)) < NEAR);
}
