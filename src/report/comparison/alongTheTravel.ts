import type { ComparedSurvey, Comparison } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";

/** Places along the travel at which the profiles are told. */
const PLACES = 9;

export const ALONG_HEADINGS = ["position", "before", "after", "change", "95 %"] as const;

/** Both profiles and their difference at places along the travel, as `ALONG_HEADINGS` names them. */
export function alongTheTravelRows(
  { from, to, difference }: Comparison,
  lengths: Lengths,
): readonly (readonly string[])[] {
  return Array.from({ length: PLACES }, (_, i) => {
    const point = difference[Math.round((i * (difference.length - 1)) / (PLACES - 1))];
    if (point === undefined) return [];
    const { position, change, low, high } = point;
    return [
      lengths.spot(position),
      lengths.figure(backlashAt(from, position)),
      lengths.figure(backlashAt(to, position)),
      lengths.figure(change),
      `${lengths.figure(low)} to ${lengths.figure(high)}`,
    ];
  });
}

/** The profile's median at the kept position that is nearest. */
function backlashAt({ assessment: { profile } }: ComparedSurvey, position: number): number {
  const nearest = profile.reduce((best, point) =>
    Math.abs(point.position - position) < Math.abs(best.position - position) ? point : best,
  );
  return nearest.backlash;
}
