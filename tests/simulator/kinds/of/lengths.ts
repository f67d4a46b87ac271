import type { Flank } from "../../leastEngaged.ts";
import { between, logBetween } from "../../wear.ts";
import { type Kind, scaledTo } from "../kind.ts";
import { strokesOf, worked } from "./habitualStrokes.ts";

/** The work of each flank by itself, at as many places as given, over light wear of all. */
function workOf(places: number): Kind["wear"] {
  return (random, screw) => {
    const flank = (depth: number): Flank => {
      const worn = scaledTo(depth, worked(strokesOf(random, screw, places), screw.engaged), screw);
      const light = between(random, 0, 0.02);
      return (place) => light + worn(place);
    };
    return [flank(logBetween(random, 0.03, 0.35)), flank(logBetween(random, 0.01, 0.1))];
  };
}

/** A long travel with a short nut: a bed or a planer's rail, worked at many places. */
export const longTravel: Kind = {
  name: "long travel, short nut",
  travel: [700, 1500],
  engaged: [25, 45],
  wear: workOf(5),
};

/** A short travel with a long nut, which meets little thread that another position does not: a compound or cross slide. */
export const longNut: Kind = {
  name: "short travel, long nut",
  travel: [40, 120],
  engaged: [40, 90],
  engagedShare: 1.2,
  wear: workOf(2),
};
