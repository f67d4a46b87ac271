import type { Random } from "../../../../src/analysis/statistics/random.ts";
import type { Flank } from "../../leastEngaged.ts";
import { between, logBetween, step } from "../../wear.ts";
import type { Kind, Screw } from "../kind.ts";

/** Wear of a stretch, level within it, that rises and falls over the given lengths at its edges, mm. */
export function stretch(
  from: number,
  to: number,
  depth: number,
  edges: readonly [rise: number, fall: number],
): Flank {
  return (place) => depth * step((place - from) / edges[0]) * step((to - place) / edges[1]);
}

function somewhere(random: Random, { travel }: Screw): Flank {
  const length = between(random, 0.15, 0.55) * travel;
  const from = between(random, -0.1, 0.95) * travel;
  const edge = () => between(random, 0.02, 0.25) * travel;
  return stretch(from, from + length, logBetween(random, 0.02, 0.3), [edge(), edge()]);
}

/** Each flank loaded in a region of its own: cut in one direction here, driven back at speed against a drag there. */
export const flanksApart: Kind = {
  name: "flanks apart",
  wear: (random, screw) => [somewhere(random, screw), somewhere(random, screw)],
};
