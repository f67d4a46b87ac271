import type { AssessedSurvey } from "../assess.ts";
import type { ProfileDraw } from "../profile/draws.ts";
import { type Random, seededRandom } from "../statistics/random.ts";
import { drawErrors, type ReadingError, withoutError } from "./indicatorError.ts";

/** Every draw of one survey meets so many of the other, which steadies the ends of intervals. */
const ROUNDS = 4;
/** A seed of its own: which draws meet must not depend on those that made them. */
const SEED = 20260402;

/** One draw of a survey with the error of its indicator. */
export interface Sample {
  readonly draw: ProfileDraw;
  /** Lost motion as it is, of lost motion of this draw as read. */
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
 * Joint draws of two surveys. Their readings are independent but for the indicator, so any draw of one may meet any
 * of the other.
 *
 * @param playApart drive play to be taken off either survey's lost motion, in millimetres
 */
export function pairsOf(
  from: AssessedSurvey,
  to: AssessedSurvey,
  playApart: { readonly from: number; readonly to: number },
): readonly Pair[] {
  const random = seededRandom(SEED);
  const use = ({ survey, assessment }: AssessedSurvey) => ({ survey, greatest: assessment.greatest.value });
  return Array.from({ length: ROUNDS }, () => {
    const [first, second] = [shuffled(from, random), shuffled(to, random)];
    return first.slice(0, second.length).map((index, i): Pair => {
      const errors = drawErrors(use(from), use(to), random);
      return {
        from: sampleOf(from, index, errors.from, playApart.from),
        to: sampleOf(to, second[i], errors.to, playApart.to),
      };
    });
  }).flat();
}

function sampleOf(
  { profile, endFloat }: AssessedSurvey,
  index: number,
  error: ReadingError,
  playApart: number,
): Sample {
  const draw = profile.draws[index];
  const trueOf = (lostMotion: number): number => withoutError(lostMotion, error) - playApart;
  return {
    draw,
    trueOf,
    tight: trueOf(draw.tight.backlash),
    loose: trueOf(draw.loose.backlash),
    endFloat: withoutError(endFloat.draws[index], error),
  };
}

/** The draws' indices in an order of chance (Fisher and Yates; Durstenfeld 1964). */
function shuffled({ profile }: AssessedSurvey, random: Random): readonly number[] {
  const order = profile.draws.map((_, index) => index);
  for (let i = order.length - 1; i > 0; i--) {
    const other = Math.floor(random() * (i + 1));
    [order[i], order[other]] = [order[other], order[i]];
  }
  return order;
}
