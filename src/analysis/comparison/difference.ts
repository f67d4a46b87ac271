import type { AssessedSurvey } from "../assess.ts";
import { estimateOf } from "../statistics/estimate.ts";
import type { ChangePoint } from "./comparison.ts";
import type { Pair } from "./pairs.ts";

/** Steps of the common grid of positions along the travel. */
const STEPS = 100;

/** The change along the travel, with its pointwise band, at positions that both surveys' profiles are brought to. */
export function differenceOf(
  from: AssessedSurvey,
  to: AssessedSurvey,
  pairs: readonly Pair[],
): readonly ChangePoint[] {
  const { travel } = to.assessment.settings;
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const position = travel.from + ((travel.to - travel.from) * step) / STEPS;
    const before = placeAmong(from.profile.positions, position);
    const after = placeAmong(to.profile.positions, position);
    const { value, low, high } = estimateOf(
      pairs.map(
        (pair) =>
          pair.to.trueOf(valueAt(pair.to.draw.backlash, after)) -
          pair.from.trueOf(valueAt(pair.from.draw.backlash, before)),
      ),
    );
    return { position, change: value, low, high };
  });
}

/** Whether some one change lies within the band all along the travel. */
export function isSameEverywhere(difference: readonly ChangePoint[]): boolean {
  return Math.max(...difference.map(({ low }) => low)) <= Math.min(...difference.map(({ high }) => high));
}

/** A place between two kept positions: the index of the first, and how far it lies towards the second. */
interface Place {
  readonly index: number;
  readonly share: number;
}

function placeAmong(positions: Float64Array, position: number): Place {
  const next = positions.findIndex((each) => each >= position);
  if (next === 0) return { index: 0, share: 0 };
  if (next === -1) return { index: positions.length - 2, share: 1 };
  const before = positions[next - 1];
  return { index: next - 1, share: (position - before) / (positions[next] - before) };
}

function valueAt(backlash: Float64Array, { index, share }: Place): number {
  return backlash[index] + share * (backlash[index + 1] - backlash[index]);
}
