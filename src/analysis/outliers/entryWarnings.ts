import { median } from "simple-statistics";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { MetricSlide } from "../../inspection/metric.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { correct, type LostMotion } from "../correct/corrections.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { type Station, stationsOf } from "../correct/stations.ts";
import { slipIn } from "./slips.ts";

/** Why a reading looks mistaken while it is being entered. */
export interface EntryWarning {
  readonly kind: "outside" | "sign" | "slip" | "far" | "repeat";
  /** One sentence with the values compared. */
  readonly message: string;
}

/** A survey with more readings comes from a cable's log; the checks look at it instead. */
const MOST_READINGS = 1000;
/** Least standard deviation of a careful reading, in millimetres and as a share of the graduation. */
const USUAL_DEVIATION = 0.004;
const SHARE_OF_STEP = 0.4;
const FAR = 5;
/** A few readings can all lie on a coarse step by chance; no indicator for this job is coarser than 0.001 in. */
const COARSEST_STEP = 0.0254;
/** Least number of repeated stations to estimate the repeatability from. */
const LEAST_REPEATED = 3;
/** Stations to either side that a reading is compared with. */
const NEIGHBOURS = 2;
/** No wear makes neighbouring stations differ by this factor, however sharp the edge of the worn zone. */
const BEYOND_WEAR = 15;
/** Least ratio of a corrected slip to the value expected (the smaller of the ratio and its inverse). */
const NEAR = 0.86;
/** Median absolute deviation to standard deviation, for normal errors. */
const NORMAL = 1.4826;

interface Scale {
  readonly deviation: number;
  readonly step: number;
  readonly lengths: Lengths;
}

/**
 * Readings that look mistaken, by their index in the survey (0-based): outside the travel, of the opposite sign, ten or
 * 25.4 times too large or too small, far from their neighbours, or different from every repeat. It needs no profile, so
 * it is fast enough to run at every keystroke. The marks are for a person to look at and change no verdict.
 *
 * @param survey a survey with lengths in millimetres
 * @param units the unit of the messages
 */
export function entryWarnings(
  slide: MetricSlide,
  survey: Survey,
  units: Units,
): ReadonlyMap<number, EntryWarning> {
  const warnings = new Map<number, EntryWarning>();
  if (survey.readings.length > MOST_READINGS) return warnings;
  const { readings, resolution } = correct(survey, slide.screw.lead);
  const stations = stationsOf(withPositiveSign(readings));
  const step = resolution.stated ? resolution.step : Math.min(resolution.step, COARSEST_STEP);
  const deviation = Math.max(USUAL_DEVIATION, SHARE_OF_STEP * step, deviationIn(stations));
  const lengths = lengthsIn(units, step);
  const scale: Scale = { deviation, step, lengths };
  for (const [index, station] of stations.entries()) {
    for (const reading of station.readings) {
      const found =
        outside(reading, slide, lengths) ??
        negative(reading, scale) ??
        inconsistent(reading, index, stations, scale);
      if (found !== undefined) for (const place of reading.from) warnings.set(place, found);
    }
  }
  return warnings;
}

/** If as many pairs have one sign as the other, the sign of the first pair is the positive one. */
function withPositiveSign(readings: readonly LostMotion[]): readonly LostMotion[] {
  const balance = readings.reduce((sum, { value }) => sum + Math.sign(value), 0);
  const isReversed = balance === 0 && (readings[0]?.value ?? 0) < 0 && readings[0]?.pair !== undefined;
  return isReversed ? readings.map((reading) => ({ ...reading, value: -reading.value })) : readings;
}

/** One standard deviation of a reading from repeats, robust against a few mistakes among them. */
function deviationIn(stations: readonly Station[]): number {
  const repeated = stations.filter(({ readings }) => readings.length > 1);
  if (repeated.length < LEAST_REPEATED) return 0;
  const apart = repeated.flatMap(({ readings }) =>
    readings.map((reading) => Math.abs(reading.value - median(otherValues(reading, readings)))),
  );
  return (NORMAL * median(apart)) / Math.SQRT2;
}

function outside(
  { position }: LostMotion,
  { travel }: MetricSlide,
  lengths: Lengths,
): EntryWarning | undefined {
  if (position >= travel.from - SAME_PLACE && position <= travel.to + SAME_PLACE) return undefined;
  return {
    kind: "outside",
    message: `${lengths.position(position)} lies outside the travel from ${lengths.position(travel.from)} to ${lengths.position(travel.to)}.`,
  };
}

function negative(
  { value, pair }: LostMotion,
  { deviation, step, lengths }: Scale,
): EntryWarning | undefined {
  if (value >= -3 * deviation - step / 2) return undefined;
  return {
    kind: "sign",
    message:
      pair === undefined
        ? `${lengths.lostMotion(value)} is negative: enter lost motion without its sign.`
        : `The lost motion comes out as ${lengths.lostMotion(value)}, against the others: were advancing and retracting swapped?`,
  };
}

function inconsistent(
  reading: LostMotion,
  index: number,
  stations: readonly Station[],
  scale: Scale,
): EntryWarning | undefined {
  const { readings } = stations[index];
  const repeats = otherValues(reading, readings);
  const near = neighbours(index, stations);
  if (repeats.length === 0) {
    const isLater = near.length > 1 || near.every((station) => station.readings[0].from[0] < reading.from[0]);
    return near.length > 0 && isLater
      ? farFromNeighbours(reading, median(near.map(({ mean }) => mean)), scale)
      : undefined;
  }
  const allowed = FAR * scale.deviation * Math.SQRT2 + scale.step;
  if (repeats.some((value) => Math.abs(value - reading.value) <= allowed)) return undefined;
  if (repeats.length === 1 && !isLessPlausible(reading, readings, near)) return undefined;
  const expected = median(repeats);
  return (
    farFromNeighbours(reading, expected, scale) ?? {
      kind: "repeat",
      message: `${scale.lengths.lostMotion(reading.value)} does not agree with the other reading here, ${scale.lengths.lostMotion(expected)}.`,
    }
  );
}

/** Of two readings that disagree, the one farther from the neighbours; without neighbours, the later one. */
function isLessPlausible(
  reading: LostMotion,
  both: readonly LostMotion[],
  near: readonly Station[],
): boolean {
  const [other] = both.filter((each) => each !== reading);
  if (near.length === 0) return reading.from[0] > other.from[0];
  const expected = median(near.map(({ mean }) => mean));
  return Math.abs(reading.value - expected) > Math.abs(other.value - expected);
}

function farFromNeighbours({ value }: LostMotion, expected: number, scale: Scale): EntryWarning | undefined {
  const { deviation, step, lengths } = scale;
  if (expected <= 0 || Math.abs(value - expected) <= FAR * deviation + 2 * step) return undefined;
  const subject = `${lengths.lostMotion(value)} is`;
  const around = `what the readings around it say (${lengths.lostMotion(expected)})`;
  const slip = slipIn(value, (each) => Math.min(each / expected, expected / each), NEAR);
  if (slip !== undefined)
    return { kind: "slip", message: `${subject} ${slip.words} ${around}: ${slip.cause}?` };
  const isFar = value / expected > BEYOND_WEAR || value / expected < 1 / BEYOND_WEAR;
  return isFar ? { kind: "far", message: `${subject} far from ${around}.` } : undefined;
}

function neighbours(index: number, stations: readonly Station[]): readonly Station[] {
  return [
    ...stations.slice(Math.max(0, index - NEIGHBOURS), index),
    ...stations.slice(index + 1, index + 1 + NEIGHBOURS),
  ];
}

function otherValues(reading: LostMotion, readings: readonly LostMotion[]): readonly number[] {
  return readings.filter((other) => other !== reading).map(({ value }) => value);
}
