import { mean, median } from "simple-statistics";
import type { Corrected, LostMotion } from "./corrected.ts";
import { isTooRare } from "./falseAlarms.ts";
import type { Judgement } from "./judgement.ts";
import type { ProfileDraws } from "./profile/draws.ts";
import { chanceOf, roundingVariance, type Scatter } from "./scatter.ts";
import type { Settings } from "./settings.ts";
import type { Station } from "./stations.ts";
import type { Repeats, Stray } from "./strays.ts";

/** Readings of stations read once that lie apart from the stations beside them, and what the others come to. */
export interface LoneReadings {
  /**
   * Those to be read again should they decide the verdict: those that have stations to either side, and those that
   * the profile through the other readings cannot account for. At an end, a step that it can account for is wear.
   */
  readonly toConfirm: readonly LostMotion[];
  /** Those that the profile through the other readings cannot account for. */
  readonly strays: readonly Stray[];
}

/** How many stations to either side count as beside one. */
const BESIDE = 2;

/**
 * Looks for readings of stations read once that stand out, and weighs each against the profile through the others.
 *
 * @param judged what some of the readings come to
 */
export function loneReadingsOf(
  { profile }: Pick<Judgement, "profile">,
  { sound }: Pick<Repeats, "sound">,
  corrected: Corrected,
  { travel }: Pick<Settings, "travel">,
  judged: (readings: readonly LostMotion[]) => Pick<Judgement, "profile">,
): LoneReadings {
  const within = sound.filter(({ position }) => position >= travel.from && position <= travel.to);
  const lone = within.filter(({ readings }) => readings.length === 1);
  const scatter = scatterIn(profile, corrected);
  const apart = lone.filter((station) => standsOut(station, within, scatter, lone.length));
  if (apart.length === 0) return { toConfirm: [], strays: [] };
  const suspects = new Set(apart.flatMap(({ readings }) => readings));
  const others = sound.flatMap(({ readings }) => readings.filter((reading) => !suspects.has(reading)));
  const strays =
    others.length === 0 ? [] : straysFrom(judged(others).profile, [...suspects], corrected, lone.length);
  const astray = strays.map(({ reading }) => reading);
  const atEnds = [within[0], within.at(-1)].flatMap((station) => station?.readings ?? []);
  return {
    toConfirm: [...suspects].filter((reading) => astray.includes(reading) || !atEnds.includes(reading)),
    strays,
  };
}

/** Above, or below, everything at the stations beside it, by more than scatter brings about. */
function standsOut(station: Station, stations: readonly Station[], scatter: Scatter, looks: number): boolean {
  const at = stations.indexOf(station);
  const beside = [
    ...stations.slice(Math.max(0, at - BESIDE), at),
    ...stations.slice(at + 1, at + 1 + BESIDE),
  ];
  if (beside.length < BESIDE) return false;
  const further = beside.map((other) => ({
    difference: station.mean - other.mean,
    variances: 1 + 1 / other.readings.length,
  }));
  const rare = (sign: 1 | -1): boolean =>
    further.every(({ difference, variances }) =>
      isTooRare(2 * chanceOf(sign * difference, scatter, variances), looks),
    );
  return rare(1) || rare(-1);
}

function straysFrom(
  profile: ProfileDraws,
  readings: readonly LostMotion[],
  corrected: Corrected,
  looks: number,
): readonly Stray[] {
  return readings.flatMap((reading) => {
    const stray = against(profile, reading, corrected);
    return isTooRare(stray.agreement(reading.value), looks) ? [stray] : [];
  });
}

/** A reading against the profile without it: its chance is the mean over the profile's draws. */
function against(profile: ProfileDraws, reading: LostMotion, corrected: Corrected): Stray {
  const { positions, draws } = profile;
  const predicted = draws.map(({ backlash }) => heightAt(positions, backlash, reading.position));
  const { deviations } = scatterIn(profile, corrected);
  const above = (value: number): number =>
    mean(
      predicted.map((backlash, i) =>
        chanceOf(value - backlash, { deviations: [deviations[i]], weights: [1] }),
      ),
    );
  const expected = median(predicted);
  return {
    reading,
    expected,
    // High places can be narrow, so that no other station meets them; low ones are as wide as the nut.
    mayBeWear: reading.value > expected,
    agreement: (value) => {
      const chance = above(value);
      return 2 * Math.min(chance, 1 - chance);
    },
  };
}

/** The scatter of single readings about the profile, draw by draw, with what stations add and rounding. */
function scatterIn({ draws }: ProfileDraws, corrected: Corrected): Scatter {
  const rounding = roundingVariance(corrected);
  return {
    deviations: draws.map(({ repeatability, stationEffect }) =>
      Math.sqrt(repeatability ** 2 + stationEffect ** 2 + rounding),
    ),
    weights: draws.map(() => 1 / draws.length),
  };
}

/** The profile at a position between those at which it is kept. */
function heightAt(positions: Float64Array, backlash: Float64Array, position: number): number {
  const after = positions.findIndex((at) => at >= position);
  if (after <= 0) return backlash[after === 0 ? 0 : positions.length - 1];
  const share = (position - positions[after - 1]) / (positions[after] - positions[after - 1]);
  return backlash[after - 1] + share * (backlash[after] - backlash[after - 1]);
}
