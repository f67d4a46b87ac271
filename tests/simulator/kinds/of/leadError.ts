import { normals } from "../../../../src/analysis/statistics/random.ts";
import { between, logBetween } from "../../wear.ts";
import type { Kind } from "../kind.ts";
import { stretch } from "./flanksApart.ts";
import { gaussianProcess } from "./smoothRandom.ts";

/**
 * Lead error and wear. Lead error moves both flanks of the thread the same way, so it adds to one gap what it takes
 * from the other: a single thread feels nothing of it, a nut of many threads loses clearance where the lead changes
 * within its length. Here it is added to one flank and taken from the other.
 */
export const leadError: Kind = {
  name: "lead error and wear",
  wear: (random, { travel, lead }) => {
    const normal = normals(random);
    const drift = (0.02 / 300) * normal();
    const wave = logBetween(random, 0.002, 0.02);
    const slow = gaussianProcess(random, between(random, 0.1, 0.5) * travel);
    const drunken = random() < 0.5 ? 0 : logBetween(random, 0.001, 0.006);
    const phase = between(random, 0, 2 * Math.PI);
    const off = (place: number) =>
      drift * place + wave * slow(place) + drunken * Math.sin((2 * Math.PI * place) / lead + phase);
    const from = between(random, 0, 0.8) * travel;
    const to = from + between(random, 0.15, 0.6) * travel;
    const edge = between(random, 0.05, 0.3) * travel;
    const worn = stretch(from, to, logBetween(random, 0.01, 0.25), [edge, edge]);
    const share = between(random, 0.2, 0.8);
    return [(place) => share * worn(place) + off(place), (place) => (1 - share) * worn(place) - off(place)];
  },
};
