import { between, logBetween, step } from "../../wear.ts";
import type { Kind } from "../kind.ts";

/**
 * Steps: part of the screw stood under a guard and met no grit, or the nut was moved on its slide and has worked on two
 * lengths of thread one after the other, or both. Edges are as sharp as a guard's end.
 */
export const steps: Kind = {
  name: "steps",
  wear: (random, { travel, engaged }) => {
    const open = logBetween(random, 0.03, 0.35);
    const guarded = open * between(random, 0, 0.5);
    const guard = between(random, 0.15, 0.85) * travel;
    const edge = between(random, 0.3, 4);
    const from = random() < 0.5 ? 1 : -1;
    const shift = random() < 0.5 ? 0 : between(random, 0.1, 0.6) * travel;
    const later = between(random, 0.1, 1) * open;
    const share = between(random, 0.3, 0.7);
    const total = (place: number): number => {
      const grit = guarded + (open - guarded) * step(0.5 + (from * (place - guard)) / edge);
      const moved = shift === 0 ? 0 : later * step(0.5 + (place - (shift - engaged / 2)) / edge);
      return grit + moved;
    };
    return [(place) => share * total(place), (place) => (1 - share) * total(place)];
  },
};
