import { median } from "simple-statistics";
import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import type { MetricSlide } from "../../inspection/metric.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { correct, type LostMotion } from "../correct/corrections.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { type Station, stationsOf } from "../correct/stations.ts";
import { slipIn } from "./slips.ts";

/** What makes a reading look mistaken at the moment it is entered. */
export interface EntryWarning {
  readonly kind: "outside" | "sign" | "slip" | "far" | "repeat";
  /** In a sentence, with the figures compared. */
  readonly message: string;
}

/** Surveys of more readings than these come from a cable's log, and are left to the checks. */
const MOST_READINGS = 1000;
/** One standard deviation of a careful reading: no less than this, nor than this share of the graduation. */
const USUAL_DEVIATION = 0.004;
const SHARE_OF_STEP = 0.4;
const FAR = 5;
/** Few readings seem to lie on a coarse graduation; no indicator for this job has one coarser than a thousandth of an inch. */
const COARSEST_STEP = 0.0254;
/** Repeats at fewer stations than these do not tell how well readings repeat. */
const LEAST_REPEATED = 3;
/** Stations to either side that a reading is held against. */
const NEIGHBOURS = 2;
/** Between neighbouring stations lost motion does not grow so many times, however sharp the edge of a worn patch. */
const BEYOND_WEAR = 15;
/** How near one, as a ratio to what is expected, a figure comes whose slip was put right. */
const NEAR = 0.86;
/** Turns a median absolute deviation into a standard deviation, for normal errors. */
const NORMAL = 1.4826;

interface Scale {
  readonly deviation: number;
  readonly step: number;
  readonly lengths: Lengths;
}

/**
 * The readings that look like slips beside the others, by their place in the survey (0-based): beyond the travel, of
 * the other sign, ten or 25.4 times too large or too small, far from everything near, at odds with every repeat. It
 * needs no profile, so it can answer at every key; what it marks is for a person to look at, and changes no verdict.
 *
 * @param survey a survey with lengths in millimetres
 * @param units what the messages are written in
 */
export function entryWarnings(
  slide: MetricSlide,
  survey: Survey,
  units: Units,
): ReadonlyMap<number, EntryWarning> {
  const suspicions = new Map<number, EntryWarning>();
  if (survey.readings.length > MOST_READINGS) return suspicions;
  const { readings, resolution } = correct(survey, slide.screw.lead);
  const turned = asFirstTaken(readings);
  const stations = stationsOf(turned);
  const step = resolution.stated ? resolution.step : Math.min(resolution.step, COARSEST_STEP);
  const deviation = Math.max(USUAL_DEVIATION, SHARE_OF_STEP * step, deviationIn(stations));
  const lengths = lengthsIn(units, step);
  const scale: Scale = { deviation, step, lengths };
  for (const [index, station] of stations.entries()) {
    for (const reading of station.readings) {
      const found =
        outside(reading, slide, lengths) ?? below(reading, scale) ?? atOdds(reading, index, stations, scale);
      if (found !== undefined) for (const place of reading.from) suspicions.set(place, found);
    }
  }
  return suspicions;
}

/** Where as many pairs have the one sign as the other, the first was read the right way round. */
function asFirstTaken(readings: readonly LostMotion[]): readonly LostMotion[] {
  const balance = readings.reduce((sum, { value }) => sum + Math.sign(value), 0);
  const isTurned = balance === 0 && (readings[0]?.value ?? 0) < 0 && readings[0]?.pair !== undefined;
  return isTurned ? readings.map((reading) => ({ ...reading, value: -reading.value })) : readings;
}

/** One standard deviation as the repeats show it, which a few mistakes among them do not move. */
function deviationIn(stations: readonly Station[]): number {
  const repeated = stations.filter(({ readings }) => readings.length > 1);
  if (repeated.length < LEAST_REPEATED) return 0;
  const apart = repeated.flatMap(({ readings }) =>
    readings.map((reading) => Math.abs(reading.value - median(valuesBut(reading, readings)))),
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

function below({ value, pair }: LostMotion, { deviation, step, lengths }: Scale): EntryWarning | undefined {
  if (value >= -3 * deviation - step / 2) return undefined;
  return {
    kind: "sign",
    message:
      pair === undefined
        ? `${lengths.lostMotion(value)} is below nothing: type lost motion without its sign.`
        : `The lost motion comes out as ${lengths.lostMotion(value)}, against the others: were advancing and retracting swapped?`,
  };
}

function atOdds(
  reading: LostMotion,
  index: number,
  stations: readonly Station[],
  scale: Scale,
): EntryWarning | undefined {
  const { readings } = stations[index];
  const repeats = valuesBut(reading, readings);
  const near = neighbours(index, stations);
  if (repeats.length === 0) {
    const isLater = near.length > 1 || near.every((station) => station.readings[0].from[0] < reading.from[0]);
    return near.length > 0 && isLater
      ? slipped(reading, median(near.map(({ mean }) => mean)), scale)
      : undefined;
  }
  const allowed = FAR * scale.deviation * Math.SQRT2 + scale.step;
  if (repeats.some((value) => Math.abs(value - reading.value) <= allowed)) return undefined;
  if (repeats.length === 1 && !isTheDoubtful(reading, readings, near)) return undefined;
  const expected = median(repeats);
  return (
    slipped(reading, expected, scale) ?? {
      kind: "repeat",
      message: `${scale.lengths.lostMotion(reading.value)} does not agree with the other reading here, ${scale.lengths.lostMotion(expected)}.`,
    }
  );
}

/** Of two that do not agree, the one further from the stations around; where there are none, the later one. */
function isTheDoubtful(reading: LostMotion, both: readonly LostMotion[], near: readonly Station[]): boolean {
  const [other] = both.filter((each) => each !== reading);
  if (near.length === 0) return reading.from[0] > other.from[0];
  const expected = median(near.map(({ mean }) => mean));
  return Math.abs(reading.value - expected) > Math.abs(other.value - expected);
}

function slipped({ value }: LostMotion, expected: number, scale: Scale): EntryWarning | undefined {
  const { deviation, step, lengths } = scale;
  if (expected <= 0 || Math.abs(value - expected) <= FAR * deviation + 2 * step) return undefined;
  const told = `${lengths.lostMotion(value)} is`;
  const around = `what the readings around it say (${lengths.lostMotion(expected)})`;
  const slip = slipIn(value, (each) => Math.min(each / expected, expected / each), NEAR);
  if (slip !== undefined) return { kind: "slip", message: `${told} ${slip.words} ${around}: ${slip.cause}?` };
  const isFar = value / expected > BEYOND_WEAR || value / expected < 1 / BEYOND_WEAR;
  return isFar ? { kind: "far", message: `${told} far from ${around}.` } : undefined;
}

function neighbours(index: number, stations: readonly Station[]): readonly Station[] {
  return [
    ...stations.slice(Math.max(0, index - NEIGHBOURS), index),
    ...stations.slice(index + 1, index + 1 + NEIGHBOURS),
  ];
}

function valuesBut(reading: LostMotion, readings: readonly LostMotion[]): readonly number[] {
  return readings.filter((other) => other !== reading).map(({ value }) => value);
}
