import type { Action, Assessment, Estimate } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";

/** What is done, as an instruction. */
export const ACTION_WORDS: Readonly<Record<Action, string>> = {
  "leave-alone": "leave it alone",
  "correct-end-float": "correct the end float",
  "adjust-nut": "adjust the nut",
  "replace-nuts": "fit new nuts",
  "remake-screw": "remake the screw, with nuts to match",
};

/** An estimate with its 95 % interval: `0.18 mm, give or take 0.02`. */
export function estimateWords({ value, low, high }: Estimate, lengths: Lengths): string {
  return withTolerance(value, Math.max(high - value, value - low), lengths);
}

/** A length with half its 95 % interval: `0.18 mm, give or take 0.02`. */
export function withTolerance(value: number, tolerance: number, lengths: Lengths): string {
  const nothing = lengths.figure(0);
  const shown = lengths.figure(tolerance);
  const words = shown === nothing ? `less than ${nothing.replace(/0$/, "1")}` : shown;
  return `${lengths.lostMotion(value)}, give or take ${words}`;
}

const LIKELIHOODS = [
  { from: 0.995, words: "all but certain" },
  { from: 0.95, words: "very likely" },
  { from: 0.7, words: "likely" },
  { from: 0.4, words: "about as likely as not" },
  { from: 0.1, words: "possible" },
  { from: 0.01, words: "unlikely" },
] as const;

/** A chance in plain words with its figure: `likely (78 in 100)`. */
export function chanceWords(chance: number): string {
  const likelihood = LIKELIHOODS.find(({ from }) => chance >= from)?.words ?? "very unlikely";
  return `${likelihood} (${inAHundred(chance)})`;
}

/** A chance as so many in a hundred, never rounded to certainty or impossibility. */
export function inAHundred(chance: number): string {
  if (chance < 0.005) return "less than 1 in 100";
  if (chance > 0.995) return "more than 99 in 100";
  return `${Math.round(chance * 100)} in 100`;
}

/**
 * Whether the end float is more than a thrust bearing in order has, so that it comes first whatever follows: by more
 * than its own standard uncertainty, a quarter of the 95 % interval.
 */
export function endFloatComesFirst({ endFloat, settings }: Assessment): boolean {
  if (endFloat === null) return false;
  const standard = (endFloat.high - endFloat.low) / 4;
  return endFloat.value - standard > settings.endFloatAttainable;
}

/** The text with its first letter large. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
