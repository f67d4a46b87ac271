import {
  isPair,
  isPositioning,
  type PairReading,
  type PositioningReading,
  type Survey,
} from "../inspection/schema.ts";

/** One lost motion, corrected, in millimetres, with the reading or readings it came from (0-based, file order). */
export interface LostMotion {
  readonly position: number;
  readonly value: number;
  readonly from: readonly number[];
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
 */
export function correct(survey: Survey): Corrected {
  const inDivisions = survey.method === "dial-pair";
  const cosine = inDivisions ? 1 : Math.cos(((survey.indicator?.angleToTravel ?? 0) * Math.PI) / 180);
  const taken: LostMotion[] = [];
  const pairs: LostMotion[] = [];
  const runs = new Map<string, { up?: number; down?: number; item: PositioningReading; index: number }>();

  survey.readings.forEach((item, index) => {
    if (item.excluded !== undefined) return;
    if (isPair(item)) {
      const value = inDivisions ? acrossZero(item, survey) : (item.advancing - item.retracting) * cosine;
      pairs.push({ position: item.position, value, from: [index] });
    } else if (isPositioning(item)) {
      const key = `${item.target}|${item.run}`;
      const run = runs.get(key) ?? { item, index };
      if (item.direction === "advancing") run.up = item.reading;
      else run.down = item.reading;
      runs.set(key, run);
      if (run.up !== undefined && run.down !== undefined) {
        const from = run.index === index ? [index] : [run.index, index];
        pairs.push({ position: item.target, value: (run.up - run.down) * cosine, from });
      }
    } else {
      taken.push({ position: item.position, value: item.backlash * cosine, from: [index] });
    }
  });

  const sign = positiveSign(pairs);
  const readings = [...taken, ...pairs.map((pair) => ({ ...pair, value: pair.value * sign }))];
  readings.sort((a, b) => (a.from[0] ?? 0) - (b.from[0] ?? 0));
  return {
    readings,
    asPairs: survey.method !== "push-pull",
    resolution: resolutionOf(survey, cosine, readings),
    roundings: pairs.length > 0 ? 2 : 1,
  };
}

/** The difference of two dial readings the short way round the dial, as travel of the slide. */
function acrossZero(item: PairReading, survey: Survey): number {
  const dial = survey.dial;
  if (dial === undefined) throw new Error("A survey in dial divisions needs its dial.");
  let divisions = item.advancing - item.retracting;
  if (dial.divisions !== undefined) {
    divisions -= dial.divisions * Math.round(divisions / dial.divisions);
  }
  return divisions * divisionTravel(dial);
}

function divisionTravel(dial: NonNullable<Survey["dial"]>): number {
  return dial.travelPerDivision * (dial.graduatedOnDiameter === true ? 0.5 : 1);
}

/** The sign that most pairs have is the positive one. */
function positiveSign(pairs: readonly LostMotion[]): 1 | -1 {
  const balance = pairs.reduce((sum, pair) => sum + Math.sign(pair.value), 0);
  return balance < 0 ? -1 : 1;
}

/** The stated resolution, else the smallest step between different readings. */
function resolutionOf(
  survey: Survey,
  cosine: number,
  readings: readonly LostMotion[],
): Corrected["resolution"] {
  if (survey.method !== "dial-pair" && survey.indicator?.resolution !== undefined) {
    return { step: survey.indicator.resolution * cosine, stated: true };
  }
  const values = [...new Set(readings.map((reading) => Math.round(reading.value * 1e7) / 1e7))].sort(
    (a, b) => a - b,
  );
  const steps = values
    .slice(1)
    .map((value, index) => value - (values[index] ?? 0))
    .filter((step) => step > 1e-5);
  const least = steps.length === 0 ? USUAL_STEP : Math.min(...steps);
  return { step: least, stated: false };
}
