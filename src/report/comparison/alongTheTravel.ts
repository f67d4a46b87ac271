import type { ComparedSurvey, Comparison } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import type { ComparisonPart } from "./compared.ts";

/** Places along the travel in the table. */
const PLACES = 9;

/** Both profiles and their difference as figures, at even steps. */
export const alongTheTravel: ComparisonPart = ({ comparison, lengths }) => ({
  title: `Lost motion along the travel (${lengths.units})`,
  blocks: [
    {
      kind: "table",
      caption: "Both profiles, and the change with its 95 % interval.",
      columns: ["Position", "Before", "After", "Change", "95 %"].map((name) => ({ name, holds: "figures" })),
      rows: rowsOf(comparison, lengths).map((cells) => ({ cells })),
    },
  ],
});

function rowsOf({ from, to, difference }: Comparison, lengths: Lengths): readonly (readonly string[])[] {
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

/** The profile's median at the nearest position that it is given for. */
function backlashAt({ assessment: { profile } }: ComparedSurvey, position: number): number {
  const nearest = profile.reduce((best, point) =>
    Math.abs(point.position - position) < Math.abs(best.position - position) ? point : best,
  );
  return nearest.backlash;
}
