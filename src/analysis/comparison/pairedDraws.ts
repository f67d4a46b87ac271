import { shuffle } from "simple-statistics";
import type { AssessedSurvey } from "../assess.ts";
import type { ProfileDraw } from "../profile/draws.ts";
import { type Random, seededRandom } from "../statistics/random.ts";
import { drawErrors, type ReadingError, withoutError } from "./indicatorError.ts";

/** Each draw of one survey is paired with this many of the other, for steadier ends of intervals. */
const ROUNDS = 4;
/** A separate seed: the pairing must be independent of the sampling. */
const SEED = 20260402;

/** One draw of a survey with the error of its indicator. */
export interface Sample {
  readonly draw: ProfileDraw;
  /** True lost motion from lost motion of this draw as read, in millimetres. */
  readonly trueOf: (lostMotion: number) => number;
  readonly tight: number;
  readonly loose: number;
  readonly endFloat: number;
}

export interface Pair {
  readonly from: Sample;
  readonly to: Sample;
}

/**
 * Joint draws of two surveys. Their readings are independent except for the indicator, so any draw of one can be paired
 * with any of the other.
 *
 * @param drivePlay to subtract from each survey's lost motion, in millimetres
 */
export function pairsOf(
  from: AssessedSurvey,
  to: AssessedSurvey,
  drivePlay: { readonly from: number; readonly to: number },
): readonly Pair[] {
  const random = seededRandom(SEED);
  const use = ({ survey, assessment }: AssessedSurvey) => ({ survey, greatest: assessment.greatest.value });
  return Array.from({ length: ROUNDS }, () => {
    const [first, second] = [shuffledIndices(from, random), shuffledIndices(to, random)];
    return first.slice(0, second.length).map((index, i): Pair => {
      const errors = drawErrors(use(from), use(to), random);
      return {
        from: sampleOf(from, index, errors.from, drivePlay.from),
        to: sampleOf(to, second[i], errors.to, drivePlay.to),
      };
    });
  }).flat();
}

function sampleOf(
  { profile, endFloat }: AssessedSurvey,
  index: number,
  error: ReadingError,
  drivePlay: number,
): Sample {
  const draw = profile.draws[index];
  const trueOf = (lostMotion: number): number => withoutError(lostMotion, error) - drivePlay;
  return {
    draw,
    trueOf,
    tight: trueOf(draw.tight.backlash),
    loose: trueOf(draw.loose.backlash),
    endFloat: withoutError(endFloat.draws[index], error),
  };
}

function shuffledIndices({ profile }: AssessedSurvey, random: Random): readonly number[] {
  return shuffle([...profile.draws.keys()], random);
}
