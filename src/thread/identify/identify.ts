import { errorFunction } from "simple-statistics";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { type Candidate, candidatesWithin, rootOf } from "./candidates.ts";
import type { Measured } from "./measured.ts";
import { type TellApart, tellApart } from "./tellApart.ts";

export interface Ranked extends Candidate {
  readonly chance: number;
  /** How far the measured outside diameter is below that of the candidate, in millimetres. */
  readonly outsideShort: number;
  /** How far the measured pitch is from that of the candidate, in millimetres. */
  readonly pitchOff: number;
}

export interface Identification {
  readonly pitch: number;
  /** The likeliest first. */
  readonly ranked: readonly Ranked[];
  /** Of the first against the second: 12 is twelve to one. */
  readonly odds: number;
  /** Whether the odds are at least ten to one. */
  readonly isSettled: boolean;
  /** Whether the first one agrees with what was measured within the uncertainty. */
  readonly fits: boolean;
  /** What to measure to tell the first two apart; null where nothing that is measured here can. */
  readonly next: TellApart | null;
}

const SETTLED = 10;
/** Screws are made and worn under their nominal diameter: most by little, some by much. Means in millimetres. */
const SHORTFALLS = [
  { share: 0.7, mean: 0.08 },
  { share: 0.3, mean: 0.4 },
] as const;
/** Candidates reach so far above and below the outside diameter found, in millimetres. */
const ABOVE = 2.5;
const BELOW = 0.4;
/** Error of lead as made, as a share of the pitch. */
const LEAD_ERROR = 2e-4;
/** Roots are cut below their basic diameter by about so much, and differ by as much, in millimetres. */
const ROOT_BELOW = 0.1;
/** A candidate farther off than this many standard deviations does not agree. */
const AGREES = 3;
const LISTED = 10;
const LEAST_CHANCE = 0.005;

/** What a worn screw's thread may be, ranked, with the odds. */
export function identify(measured: Measured): Outcome<Identification> {
  const { outside, distance, turns } = measured;
  for (const [where, value] of [
    ["outside", outside],
    ["over", distance],
    ["turns", turns],
  ] as const) {
    if (!(value > 0)) return failed(where, "must be greater than zero", "Measure it again.");
  }
  const pitch = distance / turns;
  if (pitch >= outside)
    return failed(
      "over",
      "a thread from one turn to the next would be wider than the screw is thick",
      "Check the distance, the turns counted in it, and the units.",
    );
  const margin = measured.uncertainty.outside;
  const weighed = candidatesWithin(outside - BELOW - margin, outside + ABOVE + margin)
    .map((candidate) => ({ candidate, weight: candidate.weight * likelihood(candidate, measured, pitch) }))
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => b.weight - a.weight);
  const whole = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const ranked = weighed.slice(0, LISTED).map(({ candidate, weight }) => ({
    ...candidate,
    chance: weight / whole,
    outsideShort: candidate.diameter - outside,
    pitchOff: pitch - candidate.pitch,
  }));
  const [first, second] = ranked;
  if (first === undefined)
    return failed(
      "over",
      "no thread in either system is near to what was measured",
      "Measure over more turns, state a larger uncertainty with --uncertainty, or give pitch and diameter as they are.",
    );
  const odds = second === undefined ? Number.POSITIVE_INFINITY : first.chance / second.chance;
  return succeeded({
    pitch,
    ranked: ranked.filter(({ chance }, index) => index < 2 || chance >= LEAST_CHANCE),
    odds,
    isSettled: odds >= SETTLED,
    fits: agrees(first, measured, pitch),
    next: second === undefined ? null : tellApart(first, second, measured),
  });
}

function likelihood(candidate: Candidate, measured: Measured, pitch: number): number {
  const { outside, angle, root, uncertainty } = measured;
  const spread = uncertainty.outside / 2;
  const short = candidate.diameter - outside;
  const ofOutside = SHORTFALLS.reduce(
    (sum, { share, mean }) => sum + share * shortfallDensity(short, mean, spread),
    0,
  );
  const ofPitch = normalDensity(pitch - candidate.pitch, pitchSpread(candidate, measured));
  const ofAngle =
    angle === undefined ? 1 : normalDensity(angle - 2 * candidate.form.halfAngle, uncertainty.angle / 2);
  const ofRoot =
    root === undefined
      ? 1
      : normalDensity(root - (rootOf(candidate) - ROOT_BELOW), Math.hypot(spread, ROOT_BELOW));
  return ofOutside * ofPitch * ofAngle * ofRoot;
}

function agrees(candidate: Candidate, measured: Measured, pitch: number): boolean {
  const spread = measured.uncertainty.outside / 2;
  return (
    Math.abs(pitch - candidate.pitch) <= AGREES * pitchSpread(candidate, measured) &&
    candidate.diameter - measured.outside >= -AGREES * spread
  );
}

function pitchSpread({ pitch }: Candidate, { turns, uncertainty }: Measured): number {
  return Math.hypot(uncertainty.distance / 2 / turns, LEAD_ERROR * pitch);
}

/** Density of an exponential shortfall of the given mean, read with a normal error. */
function shortfallDensity(short: number, mean: number, spread: number): number {
  const exponent = (spread * spread) / (2 * mean * mean) - short / mean;
  const below = (1 + errorFunction((short / spread - spread / mean) / Math.SQRT2)) / 2;
  return (Math.exp(exponent) * Math.max(0, below)) / mean;
}

function normalDensity(off: number, spread: number): number {
  return Math.exp(-((off / spread) ** 2) / 2) / spread;
}
