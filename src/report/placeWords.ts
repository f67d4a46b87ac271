import type { Assessment } from "../analysis/assessment.ts";
import { removedByTakeUp } from "../analysis/decide/decision.ts";
import type { Interval } from "../analysis/decide/settings.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "../picture/evenness.ts";
import type { NutPlace } from "../picture/screw/nutPlace.ts";
import { allOf, estimateWords } from "./words.ts";

/** What an assessment says about a place, each in at most a sentence. */
export interface PlaceWords {
  /** `0.18 mm, give or take 0.02`. */
  readonly lostMotion: string;
  /** What adjusting, or new nuts, would leave there. */
  readonly left: string;
  /** Where the nut would bind were it fitted to this place. */
  readonly binds: string;
}

/** What the assessment says about a place of the nut, in words. */
export function placeWords(place: NutPlace, assessment: Assessment, lengths: Lengths): PlaceWords {
  return {
    lostMotion: estimateWords(place.lostMotion, lengths),
    left: `${repair(place, assessment, lengths)}, about ${lengths.lostMotion(place.left)} of lost motion would be left here.`,
    binds: bindWords(place, assessment, lengths),
  };
}

function repair({ asItIs }: NutPlace, { settings }: Assessment, lengths: Lengths): string {
  if (!settings.adjustable) return "With new nuts on this screw";
  const amount = removedByTakeUp(asItIs.uniform, settings);
  if (lengths.figure(amount) === lengths.figure(0)) return "The nut has nothing to take up. As it is";
  return amount < removedByTakeUp(asItIs.uniform, { ...settings, takeUpLeft: Number.POSITIVE_INFINITY })
    ? `Taken up by the ${lengths.lostMotion(amount)} that the nut has left`
    : "Taken up as far as the tight spot lets it";
}

function bindWords({ fitting, bindsWhenFitted }: NutPlace, assessment: Assessment, lengths: Lengths): string {
  if (evennessOf(assessment, lengths) !== "uneven")
    return "The readings do not show a place where the nut would bind before others.";
  if (lengths.figure(fitting) === lengths.figure(0))
    return "The nut has no more than its running clearance here.";
  const fitted = assessment.settings.adjustable
    ? "Taken up until it fits here, it"
    : "A nut made to fit here";
  return bindsWhenFitted.length === 0
    ? `${fitted} would bind nowhere.`
    : `${fitted} would bind ${intervalWords(bindsWhenFitted, lengths)}.`;
}

/** `from about 0 mm to 60 mm and from 240 mm to 300 mm`. */
function intervalWords(intervals: readonly Interval[], lengths: Lengths): string {
  return allOf(intervals.map(({ from, to }) => `from ${lengths.spot(from)} to ${lengths.spot(to)}`));
}
