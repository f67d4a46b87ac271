import { mean, median } from "simple-statistics";
import type { Chances } from "../assessment.ts";
import type { Corrected, LostMotion } from "../correct/corrections.ts";
import { type EndFloat, endFloatOf } from "../correct/endFloat.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { type Station, stationsOf } from "../correct/stations.ts";
import type { ProfileDraws, ProfileModel } from "../profile/draws.ts";
import { seededRandom } from "../statistics/random.ts";
import { chancesOf, type Extremes, endFloatLeft, type Margins, marginsOf, takenUp } from "./decision.ts";
import type { Settings } from "./settings.ts";

/** What the readings come to, draw by draw; lengths in millimetres. */
export interface PosteriorSample {
  readonly stations: readonly Station[];
  readonly profile: ProfileDraws;
  readonly endFloat: EndFloat;
  readonly extremes: readonly Extremes[];
  readonly margins: readonly Margins[];
  readonly chances: Chances;
  /** One standard deviation of a reading. */
  readonly repeatability: number;
}

/** What is judged beside the readings themselves. */
export interface SamplingInput {
  readonly settings: Settings;
  readonly corrected: Corrected;
  readonly endFloat: readonly number[] | undefined;
  /** Part of every reading, in millimetres. */
  readonly drivePlay: number;
}

/** One seed for every survey: the same readings give the same answer. */
const SEED = 20260314;

/** Draws the profile and the end float, and applies the rule of decision to every draw. */
export function samplePosterior(
  readings: readonly LostMotion[],
  given: SamplingInput,
  model: ProfileModel,
): PosteriorSample {
  const { settings, corrected, drivePlay } = given;
  const stations = stationsOf(readings);
  const random = seededRandom(SEED);
  const resolution = corrected.resolution.step;
  const profile = model({ ...settings, stations, resolution, roundings: corrected.roundings }, random);
  const endFloat = endFloatOf(given.endFloat, profile, resolution, random);
  const extremes = profile.draws.map(({ loose, tight }, i) => ({
    worst: loose.backlash - endFloat.draws[i] - drivePlay,
    tight: tight.backlash - endFloat.draws[i] - drivePlay,
    endFloat: endFloat.draws[i],
    drivePlay,
  }));
  return {
    stations,
    profile,
    endFloat,
    extremes,
    margins: extremes.map((each) => marginsOf(each, settings)),
    chances: chancesOf(extremes, settings),
    repeatability: median(profile.draws.map((draw) => draw.repeatability)),
  };
}

/**
 * Lost motion that is left where it is greatest, draw by draw, once a repair has removed its share and the end float
 * has been put right.
 *
 * @param repair what it removes, given the lost motion at the tight spot less end float
 */
export function worstLeft(
  { extremes }: Pick<PosteriorSample, "extremes">,
  settings: Settings,
  repair: (tight: number, settings: Settings) => number,
): readonly number[] {
  return extremes.map((each) =>
    Math.max(0, each.worst - repair(each.tight, settings) + endFloatLeft(each.endFloat, settings)),
  );
}

/** How much lost motion taking up the nut and putting the end float right removes everywhere, draw by draw. */
export function removedEverywhere(
  { extremes }: Pick<PosteriorSample, "extremes">,
  settings: Settings,
): readonly number[] {
  return extremes.map(
    (each) =>
      takenUp(each.tight, settings) + each.endFloat + each.drivePlay - endFloatLeft(each.endFloat, settings),
  );
}

/** What the checks see of a judgement: the fitted profile at the stations, and the scatter about it. */
export function checkInputOf({ stations, profile, repeatability }: PosteriorSample) {
  const { positions, draws } = profile;
  const fitted = stations.map(({ position }) => {
    const at = positions.findIndex((each) => each >= position - SAME_PLACE);
    const index = at < 0 ? positions.length - 1 : at;
    return median(draws.map((draw) => draw.backlash[index]));
  });
  const effects = draws.map((draw) => draw.stationEffect).filter((effect) => effect > 0);
  return {
    stations,
    repeatability,
    fitted,
    stationEffect: {
      chance: effects.length / draws.length,
      deviation: effects.length === 0 ? 0 : mean(effects),
    },
  };
}
