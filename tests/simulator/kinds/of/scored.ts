import { between, logBetween } from "../../wear.ts";
import type { Kind } from "../kind.ts";
import { stretch } from "./flanksApart.ts";

/**
 * Scored by swarf: several narrow patches with sharp edges, each on one flank, over light wear of all. Only those that
 * are longer than the nut show.
 */
export const scored: Kind = {
  name: "scored",
  wear: (random, { travel, engaged }) => {
    const patches = Array.from({ length: 2 + Math.floor(random() * 5) }, () => {
      const length = engaged * between(random, 0.3, 2.2);
      const from = between(random, 0, 1) * travel - length / 2;
      const edge = between(random, 0.5, 0.2 * length);
      return {
        flank: random() < 0.7 ? 0 : 1,
        wear: stretch(from, from + length, logBetween(random, 0.02, 0.2), [edge, edge]),
      };
    });
    const light = between(random, 0, 0.03);
    const flank = (which: number) => (place: number) =>
      patches.reduce((sum, each) => (each.flank === which ? sum + each.wear(place) : sum), light);
    return [flank(0), flank(1)];
  },
};
