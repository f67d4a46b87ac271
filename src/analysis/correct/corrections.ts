import { isPair, isPositioning } from "../../inspection/readingShapes.ts";
import type { PairReading, Reading, Survey } from "../../inspection/schema.ts";
import { graduationOf } from "./graduation.ts";
import { partnersAt, targetsOf } from "./targets.ts";

/** One lost motion, corrected, in millimetres, with the reading or readings it came from (0-based, file order). */
export interface LostMotion {
  readonly position: number;
  readonly value: number;
  readonly from: readonly number[];
  /** The two readings of a pair, in millimetres, such that their difference is the value. */
  readonly pair?: { readonly advancing: number; readonly retracting: number };
}

export interface Corrected {
  readonly readings: readonly LostMotion[];
  /** Whether drive play is part of each value. */
  readonly asPairs: boolean;
  /** Smallest step a value can change by, in millimetres, and whether it was stated or found. */
  readonly resolution: { readonly step: number; readonly stated: boolean };
  /** Roundings that one value carries: one for a sweep, two for a pair. */
  readonly roundings: 1 | 2;
}

/** The smallest step assumed where a survey is too short or too even to show one. */
const USUAL_STEP = 0.01;

/**
 * Turns readings as they were read into lost motion in millimetres: differences of pairs with their sign, dial
 * divisions across the dial's zero, a dial graduated on diameter, and the cosine of an indicator out of line with
 * the travel. Struck readings are left out.
 *
 * @param survey a survey with lengths in millimetres
 * @param lead travel for one turn of the screw, in millimetres, which tells how many divisions a dial has where the
 * survey does not
 */
export function correct(survey: Survey, lead: number): Corrected {
  const inDivisions = survey.method === "dial-pair";
  const divisions = divisionsOf(survey, lead);
  const cosine = inDivisions ? 1 : lineCosine(survey);
  const taken: LostMotion[] = [];
  const pairs: (LostMotion & Pair)[] = [];

  survey.readings.forEach((item, index) => {
    if (item.excluded !== undefined) return;
    if (isPair(item)) {
      const pair = inDivisions
        ? acrossZero(item, survey, divisions)
        : scaled(item.advancing, item.retracting, cosine);
      pairs.push({ position: item.position, ...pair, from: [index] });
    } else if (!isPositioning(item)) {
      taken.push({ position: item.position, value: item.backlash * cosine, from: [index] });
    }
  });
  for (const { advancing, retracting } of targetsOf(survey.readings).flatMap(partnersAt)) {
    pairs.push({
      position: advancing.item.target,
      ...scaled(advancing.item.reading, retracting.item.reading, cosine),
      from: [advancing.index, retracting.index].sort((a, b) => a - b),
    });
  }

  const sign = positiveSign(pairs);
  const readings = [...taken, ...pairs.map((each) => turned(each, sign))];
  readings.sort((a, b) => a.from[0] - b.from[0]);
  return {
    readings,
    asPairs: survey.method !== "push-pull",
    resolution: resolutionOf(survey, cosine),
    roundings: pairs.length > 0 ? 2 : 1,
  };
}

/** What an indicator's or a scale's reading is multiplied by for standing out of line with the travel. */
export function lineCosine({ indicator }: Survey): number {
  return Math.cos(((indicator?.angleToTravel ?? 0) * Math.PI) / 180);
}

type Pair = Required<Pick<LostMotion, "value" | "pair">>;

function scaled(advancing: number, retracting: number, factor: number): Pair {
  return {
    value: (advancing - retracting) * factor,
    pair: { advancing: advancing * factor, retracting: retracting * factor },
  };
}

function turned(each: LostMotion & Pair, sign: 1 | -1): LostMotion {
  const { advancing, retracting } = each.pair;
  return {
    ...each,
    value: sign * each.value,
    pair: { advancing: sign * advancing, retracting: sign * retracting },
  };
}

/** The difference of two dial readings the short way round the dial, as travel of the slide. */
function acrossZero(item: PairReading, { dial }: Survey, divisions: number | undefined): Pair {
  if (dial === undefined) throw new Error("A survey in dial divisions needs its dial.");
  const turn = divisions ?? Number.POSITIVE_INFINITY;
  const turns = Math.round((item.advancing - item.retracting) / turn);
  const advancing = turns === 0 ? item.advancing : item.advancing - turns * turn;
  return scaled(advancing, item.retracting, divisionTravel(dial));
}

/** Divisions of the whole dial: as stated, else what the lead comes to where that is a whole number. */
function divisionsOf({ dial }: Survey, lead: number): number | undefined {
  if (dial === undefined || dial.divisions !== undefined) return dial?.divisions;
  const divisions = lead / divisionTravel(dial);
  const whole = Math.round(divisions);
  return whole > 0 && Math.abs(divisions - whole) < 0.01 ? whole : undefined;
}

function divisionTravel(dial: NonNullable<Survey["dial"]>): number {
  return dial.travelPerDivision * (dial.graduatedOnDiameter === true ? 0.5 : 1);
}

/** The sign that most pairs have is the positive one. */
function positiveSign(pairs: readonly LostMotion[]): 1 | -1 {
  const balance = pairs.reduce((sum, pair) => sum + Math.sign(pair.value), 0);
  return balance < 0 ? -1 : 1;
}

/** The stated resolution, else the graduation that the readings as they were taken lie on. */
function resolutionOf(survey: Survey, cosine: number): Corrected["resolution"] {
  const { dial } = survey;
  const inDivisions = survey.method === "dial-pair" ? survey.readings.filter(isPair) : [];
  if (dial !== undefined && inDivisions.length > 0) {
    const divisions = graduationOf(inDivisions.flatMap(asRead)) ?? 1;
    return { step: divisions * divisionTravel(dial), stated: false };
  }
  const ofIndicator = survey.indicator?.resolution;
  if (ofIndicator !== undefined) return { step: ofIndicator * cosine, stated: true };
  const step = graduationOf(survey.readings.flatMap(asRead)) ?? USUAL_STEP;
  return { step: step * cosine, stated: false };
}

function asRead(item: Reading): readonly number[] {
  if (item.excluded !== undefined) return [];
  if (isPair(item)) return [item.advancing, item.retracting];
  return isPositioning(item) ? [item.reading] : [item.backlash];
}
