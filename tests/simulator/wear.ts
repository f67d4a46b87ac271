import type { Random } from "../../src/analysis/statistics/random.ts";

/** Wear of the screw as a share of its deepest wear, against the place along the screw as a share of the travel. */
export type Wear = (share: number) => number;

export interface Shape {
  readonly name: string;
  readonly weight: number;
  readonly make: (random: Random) => Wear;
}

/** Every shape of wear in the mixture. The functions are not those that the analysis fits. */
export const SHAPES: readonly Shape[] = [
  { name: "none", weight: 10, make: () => () => 0 },
  { name: "even", weight: 12, make: () => () => 1 },
  {
    name: "bump",
    weight: 20,
    make: (random) => bump(between(random, 0.12, 0.88), between(random, 0.08, 0.3)),
  },
  { name: "plateau", weight: 16, make: plateau },
  { name: "worn end", weight: 14, make: wornEnd },
  { name: "taper", weight: 10, make: taper },
  { name: "two patches", weight: 8, make: twoPatches },
  { name: "steep with tail", weight: 10, make: steepWithTail },
];

export function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random();
}

/** Evenly spread on a logarithmic scale. */
export function logBetween(random: Random, low: number, high: number): number {
  return low * (high / low) ** random();
}

/** A bell of the given standard deviation. */
function bump(centre: number, width: number): Wear {
  return (at) => Math.exp(-0.5 * ((at - centre) / width) ** 2);
}

/** From 0 at 0 to 1 at 1 with level ends (Hermite's cubic). */
export function step(share: number): number {
  const t = Math.min(1, Math.max(0, share));
  return t * t * (3 - 2 * t);
}

function plateau(random: Random): Wear {
  const length = between(random, 0.15, 0.6);
  const from = between(random, 0.05, 0.95 - length);
  const up = between(random, 0.01, 0.06);
  const down = between(random, 0.01, 0.06);
  return (at) => step((at - from + up / 2) / up) * step((from + length + down / 2 - at) / down);
}

function mirrored(wear: Wear, random: Random): Wear {
  return random() < 0.5 ? wear : (at) => wear(1 - at);
}

function wornEnd(random: Random): Wear {
  const reach = between(random, 0.12, 0.5);
  const edge = between(random, 0.03, 0.3);
  return mirrored((at) => step((reach + edge / 2 - at) / edge), random);
}

function taper(random: Random): Wear {
  return mirrored((at) => Math.min(1, Math.max(0, at)), random);
}

function twoPatches(random: Random): Wear {
  const first = bump(between(random, 0.1, 0.4), between(random, 0.04, 0.12));
  const second = bump(between(random, 0.6, 0.9), between(random, 0.04, 0.12));
  const share = between(random, 0.4, 1);
  return mirrored((at) => Math.max(first(at), share * second(at)), random);
}

function steepWithTail(random: Random): Wear {
  const from = between(random, 0.1, 0.5);
  const rise = between(random, 0.01, 0.04);
  const tail = between(random, 0.1, 0.4);
  return mirrored(
    (at) => (at < from ? step((at - from + rise) / rise) : Math.exp(-(at - from) / tail)),
    random,
  );
}
