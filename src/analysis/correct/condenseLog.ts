import { median } from "simple-statistics";
import type { Settings } from "../decide/settings.ts";
import type { Corrected, LostMotion } from "./corrections.ts";
import { SAME_PLACE } from "./samePlace.ts";

/** No hand reads more stations than this; a cable does. */
const MOST_STATIONS = 120;
const STRETCHES = 60;
/** Stretches are at most this share of the engaged length, so that no peak is smoothed away that a nut would meet. */
const SHARE_OF_NUT = 0.25;

/**
 * A log from an indicator's cable, condensed: every short stretch of the travel counts as one reading, its median.
 * Neighbouring readings of a log share the same oil, the same speed and the same thread, so they are not independent,
 * and an interval must not shrink as if they were. Surveys by hand are left as they are.
 */
export function condenseLog(corrected: Corrected, settings: Settings): Corrected {
  const { readings } = corrected;
  const places = new Set(readings.map(({ position }) => Math.round(position / SAME_PLACE)));
  if (places.size <= MOST_STATIONS) return corrected;
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
    readings: [...stretches.values()].map(asOne),
  };
}

function asOne(all: readonly LostMotion[]): LostMotion {
  const value = median(all.map((reading) => reading.value));
  const advancing = all.flatMap(({ pair }) => (pair === undefined ? [] : [pair.advancing]));
  return {
    position: median(all.map(({ position }) => position)),
    value,
    from: all.flatMap(({ from }) => from),
    ...(advancing.length === 0
      ? {}
      : { pair: { advancing: median(advancing), retracting: median(advancing) - value } }),
  };
}
