import type { AssessedSurvey } from "../assess.ts";
import { estimateOf } from "../statistics/estimate.ts";
import { interpolationAt } from "../statistics/interpolation.ts";
import type { ChangePoint } from "./comparison.ts";
import type { Pair } from "./pairedDraws.ts";

/** Steps of the common grid along the travel. */
const STEPS = 100;

/** The change along the travel with its pointwise band, on a grid of positions common to both surveys. */
export function differenceOf(
  from: AssessedSurvey,
  to: AssessedSurvey,
  pairs: readonly Pair[],
): readonly ChangePoint[] {
  const { travel } = to.assessment.settings;
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const position = travel.from + ((travel.to - travel.from) * step) / STEPS;
    const before = interpolationAt(from.profile.positions, position);
    const after = interpolationAt(to.profile.positions, position);
    const { value, low, high } = estimateOf(
      pairs.map(
        (pair) =>
          pair.to.trueOf(after(pair.to.draw.backlash)) - pair.from.trueOf(before(pair.from.draw.backlash)),
      ),
    );
    return { position, change: value, low, high };
  });
}

/** Whether one and the same change lies within the band all along the travel. */
export function isSameEverywhere(difference: readonly ChangePoint[]): boolean {
  return Math.max(...difference.map(({ low }) => low)) <= Math.min(...difference.map(({ high }) => high));
}
