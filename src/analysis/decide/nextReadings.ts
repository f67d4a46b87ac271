import type { Lengths } from "../../inspection/lengths.ts";
import type { NextReading } from "../assessment.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import type { Coverage } from "./coverage.ts";
import type { Settings } from "./settings.ts";

const MOST_READINGS = 3;

/** The question that the next readings should answer. */
export interface DecidingQuestion {
  /** Margin of the decision, draw by draw, in millimetres. */
  readonly margin: Float64Array;
  /** Draw by draw, in millimetres. */
  readonly endFloat: Float64Array;
  readonly endFloatMeasured: boolean;
  /** Only the end float is missing for a verdict. */
  readonly endFloatNeeded: boolean;
  /** Variance of one more reading, in mm². */
  readonly noise: number;
}

const END_FLOAT_FIRST: NextReading = {
  endFloat: true,
  why: "The end float was not measured, and it is what the verdict would rest on.",
};

interface Candidate {
  readonly position: number | "end-float";
  readonly values: Float64Array;
}

/**
 * What to read next: first the stations that a verdict requires, then the readings that reduce the variance of the
 * decision's margin most. The reduction expected of a reading is cov(reading, margin)² / (var reading + noise); each
 * further one is chosen given the ones before it.
 */
export function nextReadingsOf(
  profile: ProfileDraws,
  question: DecidingQuestion,
  coverage: Coverage,
  settings: Settings,
  lengths: Lengths,
): readonly NextReading[] {
  const required = requiredStations(coverage, settings, lengths);
  const positions = required.map(({ position }) => position);
  const room = Math.max(1, MOST_READINGS - required.length);
  const informative = mostInformative(profile, question, positions, room, settings, lengths);
  const hasEndFloat = informative.some((reading) => "endFloat" in reading);
  return question.endFloatNeeded && !hasEndFloat
    ? [END_FLOAT_FIRST, ...required, ...informative]
    : [...required, ...informative];
}

function requiredStations(
  coverage: Coverage,
  settings: Settings,
  lengths: Lengths,
): readonly { readonly position: number; readonly why: string }[] {
  const ends = coverage.unreadEnds.map((position) => ({
    position,
    why: `No reading was taken near this end of the travel (${lengths.position(position)}), and an unread end may be the tight spot.`,
  }));
  const gaps = coverage.gaps
    .map((gap) => (gap.from + gap.to) / 2)
    .filter((place) => ends.every((end) => Math.abs(end.position - place) > settings.engagedLength))
    .map((position) => ({
      position,
      why: `No reading was taken within the nut's length of ${lengths.spot(position)}.`,
    }));
  return [...ends, ...gaps];
}

function mostInformative(
  profile: ProfileDraws,
  question: DecidingQuestion,
  chosenPositions: readonly number[],
  count: number,
  settings: Settings,
  lengths: Lengths,
): readonly NextReading[] {
  let margin = centred(question.margin);
  const near = settings.engagedLength / 2;
  let candidates: Candidate[] = Array.from(profile.positions, (position, i) => ({
    position,
    values: centred(Float64Array.from(profile.draws, (draw) => draw.backlash[i])),
  })).filter(({ position }) => chosenPositions.every((place) => Math.abs(place - position) > near));
  if (!question.endFloatMeasured) {
    candidates.push({ position: "end-float", values: centred(question.endFloat) });
  }
  const chosen: NextReading[] = [];
  while (chosen.length < count && candidates.length > 0) {
    const best = candidates.reduce((a, b) =>
      expectedReduction(b, margin, question.noise) > expectedReduction(a, margin, question.noise) ? b : a,
    );
    if (expectedReduction(best, margin, question.noise) <= variance(margin) * 0.02) break;
    chosen.push(asNextReading(best, profile, question, settings, lengths));
    const given = best.values;
    const total = variance(given) + question.noise;
    margin = conditionedOn(margin, given, total);
    candidates = candidates
      .filter((other) => other !== best && isFarEnough(other, best, near))
      .map((other) => ({ ...other, values: conditionedOn(other.values, given, total) }));
  }
  return chosen;
}

function asNextReading(
  best: Candidate,
  profile: ProfileDraws,
  question: DecidingQuestion,
  settings: Settings,
  lengths: Lengths,
): NextReading {
  if (best.position === "end-float") {
    const spread = 2 * Math.sqrt(variance(centred(question.endFloat)));
    return {
      endFloat: true,
      why: `The end float is known only to within ${lengths.lostMotion(spread)}, and it decides what is left for the nut.`,
    };
  }
  const place = best.position;
  const known = 2 * Math.sqrt(variance(best.values));
  const share = (spot: "tight" | "loose"): number =>
    profile.draws.filter((draw) => Math.abs(draw[spot].position - place) <= settings.engagedLength / 2)
      .length / profile.draws.length;
  const tight = share("tight");
  const loose = share("loose");
  const role =
    Math.max(tight, loose) < 0.2
      ? ""
      : tight >= loose
        ? ", and the tight spot may be here"
        : ", and the loosest spot may be here";
  return {
    position: place,
    why: `Lost motion at ${lengths.spot(place)} is known to within ${lengths.lostMotion(known)}${role}.`,
  };
}

function isFarEnough(a: Candidate, b: Candidate, distance: number): boolean {
  if (a.position === "end-float" || b.position === "end-float") return a.position !== b.position;
  return Math.abs(a.position - b.position) > distance;
}

function expectedReduction(candidate: Candidate, margin: Float64Array, noise: number): number {
  return covariance(candidate.values, margin) ** 2 / (variance(candidate.values) + noise);
}

/** The values given a reading, of known total variance, of other ones: without what correlates with it. */
function conditionedOn(values: Float64Array, given: Float64Array, total: number): Float64Array {
  const slope = covariance(values, given) / total;
  return values.map((value, i) => value - slope * given[i]);
}

function centred(values: Float64Array): Float64Array {
  const average = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - average);
}

/** Covariance of values that are centred on zero, as all here are. */
function covariance(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum / a.length;
}

function variance(values: Float64Array): number {
  return covariance(values, values);
}
