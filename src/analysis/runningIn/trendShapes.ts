/** How lost motion may grow after a repair. */
export const TREND_KINDS = ["constant", "steady", "settling", "slowing", "settling-then-steady"] as const;
export type TrendKind = (typeof TREND_KINDS)[number];

/** Growth up to a time, as a share of the growth from the first survey (time 0) to the last (time 1). */
export type Growth = (time: number) => number;

/** One shape of trend with its prior chance. */
export interface TrendShape {
  readonly kind: TrendKind;
  /** Null for a constant. */
  readonly growth: Growth | null;
  readonly chance: number;
}

/**
 * Prior chances: parts wear in fast at first (asperities wear off, the nut beds in), then at a steady, slower rate, if at
 * all in the time observed. A logarithm slows down without ever stopping.
 */
const CHANCES: Readonly<Record<TrendKind, number>> = {
  constant: 0.2,
  steady: 0.25,
  settling: 0.2,
  slowing: 0.15,
  "settling-then-steady": 0.2,
};

/** Time constants of the fast part, as shares of the time observed: each 1.5 times the one before. */
const SETTLING_TIMES = Array.from({ length: 10 }, (_, i) => 0.04 * 1.5 ** i);
/** Share of the growth that is steady, in shapes that settle and are then steady. */
const STEADY_SHARES = Array.from({ length: 10 }, (_, i) => (i + 0.5) / 10);

const steady: Growth = (time) => time;

function settling(within: number): Growth {
  const whole = -Math.expm1(-1 / within);
  return (time) => -Math.expm1(-time / within) / whole;
}

function slowing(within: number): Growth {
  const whole = Math.log1p(1 / within);
  return (time) => Math.log1p(time / within) / whole;
}

function settlingThenSteady(within: number, share: number): Growth {
  const fast = settling(within);
  return (time) => (1 - share) * fast(time) + share * time;
}

/** The shapes of a kind, all equally likely. */
function shapesOf(kind: TrendKind, growths: readonly Growth[]): readonly TrendShape[] {
  return growths.map((growth) => ({ kind, growth, chance: CHANCES[kind] / growths.length }));
}

/** All shapes of trend. A new one is a function and a line here. */
export const TREND_SHAPES: readonly TrendShape[] = [
  { kind: "constant", growth: null, chance: CHANCES.constant },
  ...shapesOf("steady", [steady]),
  ...shapesOf("settling", SETTLING_TIMES.map(settling)),
  ...shapesOf("slowing", SETTLING_TIMES.map(slowing)),
  ...shapesOf(
    "settling-then-steady",
    SETTLING_TIMES.flatMap((within) => STEADY_SHARES.map((share) => settlingThenSteady(within, share))),
  ),
];
