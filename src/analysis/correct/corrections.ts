import { isPair, isPositioning } from "../../inspection/readingShapes.ts";
import type { PairReading, Reading, Survey } from "../../inspection/schema.ts";
import { pairsAt, targetsOf } from "./targets.ts";

/** One corrected lost motion in millimetres, with the reading or readings it came from (0-based, file order). */
export interface LostMotion {
  readonly position: number;
  readonly value: number;
  readonly from: readonly number[];
  /** The two readings of a pair, in millimetres, such that their difference is the value. */
  readonly pair?: { readonly advancing: number; readonly retracting: number };
}

export interface Corrected {
  readonly readings: readonly LostMotion[];
  /** Whether drive play is part of each value, as in every method but push–pull. */
  readonly asPairs: boolean;
  /** Smallest step between values, in millimetres, and whether it was stated or found from the readings. */
  readonly resolution: { readonly step: number; readonly stated: boolean };
  /** Number of roundings in one value: one for a sweep, two for a pair. */
  readonly roundings: 1 | 2;
}

/** The step assumed if the readings do not differ and so do not show one, in millimetres. */
const USUAL_STEP = 0.01;

/**
 * Turns readings into lost motion in millimetres: signed differences of pairs, dial divisions across the dial's zero, a
 * dial graduated on diameter, and the cosine of an indicator that is not in line with the travel. Struck readings are
 * left out.
 *
 * @param survey a survey with lengths in millimetres
 * @param lead travel for one turn of the screw, in millimetres; gives the number of divisions of a dial whose survey does
 * not state it
 */
export function correct(survey: Survey, lead: number): Corrected {
  const inDivisions = survey.method === "dial-pair";
  const divisions = divisionsOf(survey, lead);
  const cosine = inDivisions ? 1 : alignmentCosine(survey);
  const single: LostMotion[] = [];
  const pairs: (LostMotion & Pair)[] = [];

  survey.readings.forEach((item, index) => {
    if (item.excluded !== undefined) return;
    if (isPair(item)) {
      const pair = inDivisions
        ? acrossZero(item, survey, divisions)
        : scaled(item.advancing, item.retracting, cosine);
      pairs.push({ position: item.position, ...pair, from: [index] });
    } else if (!isPositioning(item)) {
      single.push({ position: item.position, value: item.backlash * cosine, from: [index] });
    }
  });
  for (const { advancing, retracting } of targetsOf(survey.readings).flatMap(pairsAt)) {
    pairs.push({
      position: advancing.item.target,
      ...scaled(advancing.item.reading, retracting.item.reading, cosine),
      from: [advancing.index, retracting.index].sort((a, b) => a - b),
    });
  }

  const sign = positiveSign(pairs);
  const readings = [...single, ...pairs.map((each) => withSign(each, sign))];
  readings.sort((a, b) => a.from[0] - b.from[0]);
  return {
    readings,
    asPairs: survey.method !== "push-pull",
    resolution: resolutionOf(survey, cosine),
    roundings: pairs.length > 0 ? 2 : 1,
  };
}

/** The factor that corrects a reading for an indicator or scale at an angle to the travel. */
export function alignmentCosine({ indicator }: Survey): number {
  return Math.cos(((indicator?.angleToTravel ?? 0) * Math.PI) / 180);
}

type Pair = Required<Pick<LostMotion, "value" | "pair">>;

function scaled(advancing: number, retracting: number, factor: number): Pair {
  return {
    value: (advancing - retracting) * factor,
    pair: { advancing: advancing * factor, retracting: retracting * factor },
  };
}

function withSign(each: LostMotion & Pair, sign: 1 | -1): LostMotion {
  const { advancing, retracting } = each.pair;
  return {
    ...each,
    value: sign * each.value,
    pair: { advancing: sign * advancing, retracting: sign * retracting },
  };
}

/** The difference of two dial readings the short way round the dial, in millimetres of slide travel. */
function acrossZero(item: PairReading, { dial }: Survey, divisions: number | undefined): Pair {
  if (dial === undefined) throw new Error("A survey in dial divisions needs its dial.");
  const turn = divisions ?? Number.POSITIVE_INFINITY;
  const turns = Math.round((item.advancing - item.retracting) / turn);
  const advancing = turns === 0 ? item.advancing : item.advancing - turns * turn;
  return scaled(advancing, item.retracting, divisionTravel(dial));
}

/** Number of divisions of the dial: as stated, else from the lead if that gives a whole number. */
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

/** The stated resolution, else the graduation that the readings lie on. */
function resolutionOf(survey: Survey, cosine: number): Corrected["resolution"] {
  const { dial } = survey;
  const inDivisions = survey.method === "dial-pair" ? survey.readings.filter(isPair) : [];
  if (dial !== undefined && inDivisions.length > 0) {
    const divisions = graduationOf(inDivisions.flatMap(valuesRead)) ?? 1;
    return { step: divisions * divisionTravel(dial), stated: false };
  }
  const ofIndicator = survey.indicator?.resolution;
  if (ofIndicator !== undefined) return { step: ofIndicator * cosine, stated: true };
  const step = graduationOf(survey.readings.flatMap(valuesRead)) ?? USUAL_STEP;
  return { step: step * cosine, stated: false };
}

function valuesRead(item: Reading): readonly number[] {
  if (item.excluded !== undefined) return [];
  if (isPair(item)) return [item.advancing, item.retracting];
  return isPositioning(item) ? [item.reading] : [item.backlash];
}

/** Smaller differences, in millimetres, come from averaging and are not graduations. */
const LEAST_STEP = 1e-4;
/** Readings are rounded to this fraction of their unit, so that floating-point errors do not grow. */
const PARTS = 1e9;

/**
 * The graduation that readings were rounded to: the greatest step of which every reading is a whole multiple. It is never
 * more than the smallest step between different readings.
 *
 * @param values readings in one unit, from the instrument's zero
 * @returns the step in the same unit, or undefined if the readings do not differ
 */
export function graduationOf(values: readonly number[]): number | undefined {
  const sizes = new Set(values.map((value) => Math.round(Math.abs(value) * PARTS)));
  if (sizes.size < 2) return undefined;
  const step = [...sizes].reduce(greatestCommonStep);
  return Math.max(step / PARTS, LEAST_STEP);
}

/** Euclid's algorithm, with remainders close to zero or to a whole step taken as zero. */
function greatestCommonStep(a: number, b: number): number {
  let greater = Math.max(a, b);
  let less = Math.min(a, b);
  while (less >= (LEAST_STEP * PARTS) / 2) {
    const remainder = Math.abs(greater - less * Math.round(greater / less));
    greater = less;
    less = remainder;
  }
  return greater;
}

/**
 * Struck readings, corrected like the others. They do not count; the page shows them as struck. A pair is struck if
 * either of its readings is.
 *
 * @param survey a survey with lengths in millimetres
 * @param lead travel for one turn of the screw, in millimetres
 */
export function struckReadings(survey: Survey, lead: number): readonly LostMotion[] {
  const { readings } = survey;
  if (readings.every(({ excluded }) => excluded === undefined)) return [];
  const restored = readings.map(({ excluded: _reason, ...reading }) => reading);
  return correct({ ...survey, readings: restored }, lead).readings.filter(({ from }) =>
    from.some((index) => readings[index]?.excluded !== undefined),
  );
}
