import type { Action, Conformance, Estimate } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { roundTo } from "../inspection/units.ts";

/** What is done, as an instruction. */
export const ACTION_WORDS: Readonly<Record<Action, string>> = {
  "leave-alone": "leave it alone",
  "correct-end-float": "correct the end float",
  "adjust-nut": "adjust the nut",
  "replace-nuts": "fit new nuts",
  "remake-screw": "remake the screw, with nuts to match",
};

/** Both ends of an interval are given where one side of it is more than so many times the other. */
const LOPSIDED = 2.5;

/**
 * An estimate with its 95 % interval: `0.18 mm, give or take 0.02`; where that would mislead,
 * `between 0.10 and 0.16 mm, most likely 0.11`.
 */
export function estimateWords(estimate: Estimate, lengths: Lengths): string {
  const { value, low, high } = estimate;
  return isLopsided(estimate, lengths)
    ? `between ${lengths.figure(low)} and ${lengths.lostMotion(high)}, most likely ${lengths.figure(value)}`
    : `${lengths.lostMotion(value)}, ${intervalWords(estimate, lengths)}`;
}

/** The interval alone, to stand beside its value: `give or take 0.02`, or `between 0.10 and 0.16`. */
export function intervalWords(estimate: Estimate, lengths: Lengths): string {
  const { value, low, high } = estimate;
  if (isLopsided(estimate, lengths)) return `between ${lengths.figure(low)} and ${lengths.figure(high)}`;
  const nothing = lengths.figure(0);
  const tolerance = lengths.figure(Math.max(high - value, value - low));
  return `give or take ${tolerance === nothing ? `less than ${nothing.replace(/0$/, "1")}` : tolerance}`;
}

/** Clearly so: by more than a step of the figures that are shown. */
function isLopsided({ value, low, high }: Estimate, lengths: Lengths): boolean {
  const longer = Math.max(high - value, value - low);
  const shorter = Math.min(high - value, value - low);
  return longer > LOPSIDED * shorter && lengths.figure((longer - shorter) / 2) !== lengths.figure(0);
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

/** Whether lost motion keeps the limit, in the sense of ISO 14253-1: `over the limit of 0.15 mm, proven`. */
export function conformanceWords(conformance: Conformance, limit = "the limit"): string {
  switch (conformance) {
    case "proven":
      return `within ${limit}, proven`;
    case "disproven":
      return `over ${limit}, proven`;
    case "not proven":
      return `within or over ${limit}, not proven`;
  }
}

/** The text with its first letter large. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Finer than anything is read: what lies beyond it is a trace of binary fractions. */
const MOST_DECIMALS = 6;

/** Numbers as they were stated, each with as many decimals as the longest, so that they stand in a column. */
export function columnFigures(values: readonly number[]): readonly string[] {
  const decimals = values.map((value) => {
    const figure = String(roundTo(value, MOST_DECIMALS));
    return figure.includes("e") ? MOST_DECIMALS : (figure.split(".")[1] ?? "").length;
  });
  return values.map((value) => value.toFixed(Math.max(0, ...decimals)));
}

const AND = new Intl.ListFormat("en-GB", { type: "conjunction" });
const OR = new Intl.ListFormat("en-GB", { type: "disjunction" });

/** `a`, `a and b`, `a, b and c`. */
export function allOf(parts: readonly string[]): string {
  return AND.format(parts);
}

/** `a`, `a or b`, `a, b or c`. */
export function anyOf(parts: readonly string[]): string {
  return OR.format(parts);
}
