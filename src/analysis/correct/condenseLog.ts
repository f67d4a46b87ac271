import { median } from "simple-statistics";
import type { Settings } from "../decide/settings.ts";
import type { Corrected, LostMotion } from "./corrections.ts";
import { SAME_PLACE } from "./samePlace.ts";

/** A survey with more stations was logged by cable, not read by hand. */
const MOST_STATIONS = 120;
const STRETCHES = 60;
/** Stretches are at most this share of the engaged length, so that no peak that a nut would meet is smoothed away. */
const SHARE_OF_NUT = 0.25;

/**
 * Condenses a log from an indicator's cable: every short stretch of the travel counts as one reading, its median.
 * Neighbouring readings of a log share oil film, speed and thread, so they are not independent, and intervals must not
 * shrink as if they were. Surveys read by hand are returned unchanged.
 */
export function condenseLog(corrected: Corrected, settings: Settings): Corrected {
  const { readings } = corrected;
  const positions = new Set(readings.map(({ position }) => Math.round(position / SAME_PLACE)));
  if (positions.size <= MOST_STATIONS) return corrected;
  const { travel, engagedLength } = settings;
  const width = Math.min((travel.to - travel.from) / STRETCHES, engagedLength * SHARE_OF_NUT);
  const stretches = new Map<number, LostMotion[]>();
  for (const reading of readings) {
    const stretch = Math.floor((reading.position - travel.from) / width);
    const others = stretches.get(stretch);
    if (others === undefined) stretches.set(stretch, [reading]);
    else others.push(reading);
  }
  return {
    ...corrected,
    readings: [...stretches.values()].map(medianOf),
  };
}

function medianOf(stretch: readonly LostMotion[]): LostMotion {
  const value = median(stretch.map((reading) => reading.value));
  const advancing = stretch.flatMap(({ pair }) => (pair === undefined ? [] : [pair.advancing]));
  return {
    position: median(stretch.map(({ position }) => position)),
    value,
    from: stretch.flatMap(({ from }) => from),
    ...(advancing.length === 0
      ? {}
      : { pair: { advancing: median(advancing), retracting: median(advancing) - value } }),
  };
}
