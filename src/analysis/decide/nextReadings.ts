import type { Lengths } from "../../inspection/lengths.ts";
import type { NextReading } from "../assessment.ts";
import type { ProfileDraws } from "../profile/draws.ts";
import type { Coverage } from "./coverage.ts";
import type { Settings } from "./settings.ts";

const MOST = 3;

export interface DecidingQuestion {
  /** The decision's margin, draw by draw, in millimetres. */
  readonly margin: Float64Array;
  readonly endFloat: Float64Array;
  readonly endFloatMeasured: boolean;
  /** The verdict waits for the end float alone. */
  readonly endFloatNeeded: boolean;
  /** Variance of one more reading. */
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
 * What to read next: first the places that a verdict cannot do without, then the readings that are expected to tell
 * most about the decision. A reading's worth is the drop in the margin's variance that it is expected to bring,
 * cov(reading, margin)² / (var reading + noise); each further one is judged after the ones before it.
 */
export function nextReadingsOf(
  profile: ProfileDraws,
  question: DecidingQuestion,
  coverage: Coverage,
  settings: Settings,
  lengths: Lengths,
): readonly NextReading[] {
  const needed = neededPlaces(coverage, settings, lengths);
  const taken = needed.map(({ position }) => position);
  const room = Math.max(1, MOST - needed.length);
  const telling = mostTelling(profile, question, taken, room, settings, lengths);
  const asked = telling.some((reading) => "endFloat" in reading);
  return question.endFloatNeeded && !asked
    ? [END_FLOAT_FIRST, ...needed, ...telling]
    : [...needed, ...telling];
}

function neededPlaces(
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

function mostTelling(
  profile: ProfileDraws,
  question: DecidingQuestion,
  taken: readonly number[],
  count: number,
  settings: Settings,
  lengths: Lengths,
): readonly NextReading[] {
  let margin = centred(question.margin);
  const near = settings.engagedLength / 2;
  let candidates: Candidate[] = Array.from(profile.positions, (position, i) => ({
    position,
    values: centred(Float64Array.from(profile.draws, (draw) => draw.backlash[i])),
  })).filter(({ position }) => taken.every((place) => Math.abs(place - position) > near));
  if (!question.endFloatMeasured) {
    candidates.push({ position: "end-float", values: centred(question.endFloat) });
  }
  const chosen: NextReading[] = [];
  while (chosen.length < count && candidates.length > 0) {
    const best = candidates.reduce((a, b) =>
      worth(b, margin, question.noise) > worth(a, margin, question.noise) ? b : a,
    );
    if (worth(best, margin, question.noise) <= variance(margin) * 0.02) break;
    chosen.push(asNextReading(best, profile, question, settings, lengths));
    const given = best.values;
    const total = variance(given) + question.noise;
    margin = without(margin, given, total);
    candidates = candidates
      .filter((other) => other !== best && apart(other, best, near))
      .map((other) => ({ ...other, values: without(other.values, given, total) }));
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
      why: `The end float is known only to ± ${lengths.lostMotion(spread)}, and it decides what is left for the nut.`,
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
    why: `Lost motion at ${lengths.spot(place)} is known to ± ${lengths.lostMotion(known)}${role}.`,
  };
}

function apart(a: Candidate, b: Candidate, distance: number): boolean {
  if (a.position === "end-float" || b.position === "end-float") return a.position !== b.position;
  return Math.abs(a.position - b.position) > distance;
}

function worth(candidate: Candidate, margin: Float64Array, noise: number): number {
  return covariance(candidate.values, margin) ** 2 / (variance(candidate.values) + noise);
}

/** What is left of the values when a reading of the given ones, with noise, is known. */
function without(values: Float64Array, given: Float64Array, total: number): Float64Array {
  const slope = covariance(values, given) / total;
  return values.map((value, i) => value - slope * given[i]);
}

function centred(values: Float64Array): Float64Array {
  const average = values.reduce((sum, value) => sum + value, 0) / values.length;
  return values.map((value) => value - average);
}

/** Of values that are centred on zero, as every one here is. */
function covariance(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum / a.length;
}

function variance(values: Float64Array): number {
  return covariance(values, values);
}
