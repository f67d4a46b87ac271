import { mean, median } from "simple-statistics";
import type { Corrected } from "../correct/corrections.ts";
import { drawEndFloat, type EndFloat } from "../correct/endFloat.ts";
import { SAME_PLACE } from "../correct/samePlace.ts";
import type { Station } from "../correct/stations.ts";
import type { ProfileDraws, ProfileModel } from "../profile/draws.ts";
import { seededRandom } from "../statistics/random.ts";
import type { Extremes } from "./decision.ts";
import type { Settings } from "./settings.ts";

/** A sample of the posterior of profile and end float; lengths in millimetres. */
export interface PosteriorSample {
  readonly stations: readonly Station[];
  readonly profile: ProfileDraws;
  readonly endFloat: EndFloat;
  /** One for each draw of the profile. */
  readonly extremes: readonly Extremes[];
  /** One standard deviation of a reading. */
  readonly repeatability: number;
}

/** What sampling needs besides the stations. */
export interface SamplingInput {
  readonly settings: Settings;
  readonly corrected: Corrected;
  /** Readings of the end float, in millimetres. */
  readonly endFloat: readonly number[] | undefined;
  /** Part of every reading, in millimetres. */
  readonly drivePlay: number;
}

/** One seed for every survey: the same readings give the same answer. */
const SEED = 20260314;

/** Draws the profile and the end float, and takes the extremes of every draw. */
export function samplePosterior(
  stations: readonly Station[],
  input: SamplingInput,
  model: ProfileModel,
): PosteriorSample {
  const { settings, corrected, drivePlay } = input;
  const random = seededRandom(SEED);
  const resolution = corrected.resolution.step;
  const profile = model({ ...settings, stations, resolution, roundings: corrected.roundings }, random);
  const endFloat = drawEndFloat(input.endFloat, profile, resolution, random);
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
    repeatability: median(profile.draws.map((draw) => draw.repeatability)),
  };
}

/** How the fitted profile passes the stations; lengths in millimetres. */
export interface StationFit {
  /** Median of the profile at each station. */
  readonly fitted: readonly number[];
  /**
   * What stations add to lost motion that repeats there do not show: the chance that there is such an effect, and its
   * standard deviation where there is.
   */
  readonly stationEffect: { readonly chance: number; readonly deviation: number };
}

/** The fit of a sample at its stations. A station beyond the travel takes the profile at the travel's end. */
export function fitAtStations({
  stations,
  profile,
}: Pick<PosteriorSample, "stations" | "profile">): StationFit {
  const { positions, draws } = profile;
  const fitted = stations.map(({ position }) => {
    const at = positions.findIndex((each) => each >= position - SAME_PLACE);
    const index = at < 0 ? positions.length - 1 : at;
    return median(draws.map((draw) => draw.backlash[index]));
  });
  const effects = draws.map((draw) => draw.stationEffect).filter((effect) => effect > 0);
  return {
    fitted,
    stationEffect: {
      chance: effects.length / draws.length,
      deviation: effects.length === 0 ? 0 : mean(effects),
    },
  };
}
