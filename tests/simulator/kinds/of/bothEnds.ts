import { between, logBetween } from "../../wear.ts";
import type { Kind } from "../kind.ts";

/**
 * Both ends worn: the slide is driven against its stops or reversed at them under load. The push against each stop
 * comes through one flank, mostly, so each flank wears at its own end and a little at the other.
 */
export const bothEnds: Kind = {
  name: "both ends",
  wear: (random, { travel, engaged }) => {
    const depths = [0, 1].map(() => logBetween(random, 0.03, 0.35));
    const reaches = [0, 1].map(() => Math.max(0.3 * engaged, between(random, 0.05, 0.35) * travel));
    const sharpness = between(random, 1, 3);
    const mixed = between(random, 0, 0.5);
    const atStart = (place: number) =>
      depths[0] * Math.exp(-((Math.max(0, place + engaged / 2) / reaches[0]) ** sharpness));
    const atEnd = (place: number) =>
      depths[1] * Math.exp(-((Math.max(0, travel + engaged / 2 - place) / reaches[1]) ** sharpness));
    return [
      (place) => (1 - mixed) * atStart(place) + mixed * atEnd(place),
      (place) => mixed * atStart(place) + (1 - mixed) * atEnd(place),
    ];
  },
};
