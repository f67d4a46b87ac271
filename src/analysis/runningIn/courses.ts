/** How lost motion may grow after a repair. */
export const TREND_KINDS = ["constant", "steady", "settling", "slowing", "settling-then-steady"] as const;
export type TrendKind = (typeof TREND_KINDS)[number];

/** What has grown by a time, as a share of what grows from the first survey (time 0) to the last (time 1). */
export type Growth = (time: number) => number;

/** A course that is weighed against others, with its chance before the surveys are looked at. */
export interface Course {
  readonly kind: TrendKind;
  /** Null where nothing grows. */
  readonly growth: Growth | null;
  readonly chance: number;
}

/**
 * What is known before any survey: parts wear in fast at first (asperities go, the nut beds in), then at a steady,
 * slower rate, if at all in the time watched. A logarithm is what slows without ever coming to rest.
 */
const CHANCES: Readonly<Record<TrendKind, number>> = {
  constant: 0.2,
  steady: 0.25,
  settling: 0.2,
  slowing: 0.15,
  "settling-then-steady": 0.2,
};

/** Time that the fast part takes for most of its growing, as shares of the time watched: each 1.5 times the last. */
const SETTLING_TIMES = Array.from({ length: 10 }, (_, i) => 0.04 * 1.5 ** i);
/** How much of the growth is steady where it settles and is then steady. */
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

/** The courses of a kind, none likelier than another. */
function coursesOf(kind: TrendKind, growths: readonly Growth[]): readonly Course[] {
  return growths.map((growth) => ({ kind, growth, chance: CHANCES[kind] / growths.length }));
}

/** Every course that is weighed. */
export const COURSES: readonly Course[] = [
  { kind: "constant", growth: null, chance: CHANCES.constant },
  ...coursesOf("steady", [steady]),
  ...coursesOf("settling", SETTLING_TIMES.map(settling)),
  ...coursesOf("slowing", SETTLING_TIMES.map(slowing)),
  ...coursesOf(
    "settling-then-steady",
    SETTLING_TIMES.flatMap((within) => STEADY_SHARES.map((share) => settlingThenSteady(within, share))),
  ),
];
