import type { Flank } from "../../leastEngaged.ts";
import { between, logBetween } from "../../wear.ts";
import { type Kind, scaledTo } from "../kind.ts";
import { strokesOf, worked } from "./habitualStrokes.ts";

/** Wear after a screw was turned end for end: what was worn lies mirrored, and on the other flank. */
export function turned([first, second]: readonly [Flank, Flank], travel: number): readonly [Flank, Flank] {
  return [(place) => second(travel - place), (place) => first(travel - place)];
}

/** A screw turned end for end part of the way through its life, at work of the same kind before and after. */
export const turnedEndForEnd: Kind = {
  name: "turned end for end",
  wear: (random, screw) => {
    const curve = worked(strokesOf(random, screw, 1 + Math.floor(random() * 2)), screw.engaged);
    const depth = logBetween(random, 0.03, 0.4);
    const cut = between(random, 0.5, 0.95);
    const all = [scaledTo(cut * depth, curve, screw), scaledTo((1 - cut) * depth, curve, screw)] as const;
    const before = turned(all, screw.travel);
    const share = between(random, 0.2, 0.8);
    return [
      (place) => share * before[0](place) + (1 - share) * all[0](place),
      (place) => share * before[1](place) + (1 - share) * all[1](place),
    ];
  },
};
