import { between, logBetween } from "../../wear.ts";
import type { Kind } from "../kind.ts";
import { stretch } from "./flanksApart.ts";
import { gaussianProcess } from "./smoothRandom.ts";

/** Worn everywhere but at one end, which the slide seldom reaches: the unworn thread may just fail to show. */
export const unwornEnd: Kind = {
  name: "unworn end",
  wear: (random, { travel, engaged }) => {
    const depth = logBetween(random, 0.03, 0.4);
    const end = travel + engaged * between(random, -1.2, 0.6);
    const edge = between(random, 0.1, 2) * engaged;
    const rough = between(random, 0, 0.15);
    const process = gaussianProcess(random, between(random, 0.1, 0.4) * travel);
    const worn = stretch(-travel, end, depth, [1, edge]);
    const share = between(random, 0.3, 0.7);
    const mirrored = random() < 0.5;
    const total = (place: number): number => {
      const at = mirrored ? travel - place : place;
      return worn(at) * Math.max(0, 1 + rough * process(at));
    };
    return [(place) => share * total(place), (place) => (1 - share) * total(place)];
  },
};
