import { drawIndex, normals, type Random } from "../random.ts";
import { CHARACTERS, dimensionsOf, EVEN_CHANCE, wornBy } from "./characters.ts";
import type { Wear } from "./patch.ts";

/** A shape of wear, or none, with the logarithm of its evidence. */
export interface Particle {
  /** Index into the characters; their number for a profile that is even. */
  readonly character: number;
  /** Where in the character's unit cube. */
  readonly u: Float64Array;
  readonly log: number;
}

export const EVEN = CHARACTERS.length;

export function wearOf({ character, u }: Pick<Particle, "character" | "u">): Wear | undefined {
  const known = CHARACTERS[character];
  return known && wornBy(known, u);
}

/** Prior draws looked at for each particle kept. */
const SCREENED = 4;
/** Share of the particles that must still count when the readings are given more weight. */
const KEPT = 0.5;
/** Moves of every particle after each rise. */
const MOVES = 3;

/**
 * Shapes of wear of every character, drawn from their posterior: sequential Monte Carlo from prior to posterior by
 * tempering (Del Moral, Doucet and Jasra 2006), with moves along differences between particles of one character
 * (ter Braak 2006) and with single numbers drawn afresh. Characters that explain the readings badly die out.
 *
 * @param score logarithm of the evidence of a shape; of an even profile without one
 */
export function temper(size: number, score: (wear: Wear | undefined) => number, random: Random): Particle[] {
  const normal = normals(random);
  const weights = [...CHARACTERS.map(({ weight }) => weight), EVEN_CHANCE];
  const sizes = [...CHARACTERS.map(dimensionsOf), 0];
  let particles: Particle[] = Array.from({ length: SCREENED * size }, () => {
    const character = drawIndex(weights, random);
    const u = Float64Array.from({ length: sizes[character] }, random);
    return { character, u, log: score(wearOf({ character, u })) };
  });
  let heat = 0;
  while (heat < 1) {
    const step = nextStep(particles, heat, KEPT * size);
    const greatest = particles.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
    particles = resample(
      particles,
      particles.map(({ log }) => Math.exp(step * (log - greatest))),
      size,
      random,
    );
    heat += step;
    const kin = byCharacter(particles);
    for (let move = 0; move < MOVES; move++) {
      for (let i = 0; i < size; i++) {
        const { character, log } = particles[i];
        if (character === EVEN) continue;
        const u = proposed(particles[i].u, kin[character], random, normal);
        if (u === undefined) continue;
        const next = score(wearOf({ character, u }));
        if (Math.log(1 - random()) < heat * (next - log)) particles[i] = { character, u, log: next };
      }
    }
  }
  return particles;
}

export function byCharacter<Item extends Pick<Particle, "character">>(particles: readonly Item[]): Item[][] {
  const kin: Item[][] = Array.from({ length: EVEN + 1 }, () => []);
  for (const particle of particles) kin[particle.character].push(particle);
  return kin;
}

/** How far the readings' weight can rise so that enough particles still count. */
function nextStep(particles: readonly Particle[], heat: number, wanted: number): number {
  const greatest = particles.reduce((most, { log }) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  const effective = (step: number): number => {
    let sum = 0;
    let squares = 0;
    for (const { log } of particles) {
      const weight = Math.exp(step * (log - greatest));
      sum += weight;
      squares += weight * weight;
    }
    return (sum * sum) / squares;
  };
  const left = 1 - heat;
  if (effective(left) >= wanted) return left;
  let low = 0;
  let high = left;
  for (let i = 0; i < 16; i++) {
    const middle = 0.5 * (low + high);
    if (effective(middle) >= wanted) low = middle;
    else high = middle;
  }
  return Math.max(low, 1e-4);
}

/** Systematic resampling. */
export function resample<Item>(
  items: readonly Item[],
  weights: readonly number[],
  size: number,
  random: Random,
): Item[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const chosen: Item[] = [];
  let at = 0;
  let sum = weights[0];
  const offset = random();
  for (let i = 0; i < size; i++) {
    const mark = ((i + offset) / size) * total;
    while (sum < mark && at < items.length - 1) {
      at++;
      sum += weights[at];
    }
    chosen.push(items[at]);
  }
  return chosen;
}

/** A change along the difference of two others, or of one number drawn afresh; undefined outside the cube. */
function proposed(
  u: Float64Array,
  kin: readonly Pick<Particle, "u">[],
  random: Random,
  normal: () => number,
): Float64Array | undefined {
  if (random() < 0.2) {
    const next = u.slice();
    next[Math.floor(random() * next.length)] = random();
    return next;
  }
  const a = kin[Math.floor(random() * kin.length)].u;
  const b = kin[Math.floor(random() * kin.length)].u;
  return along(u, a, b, 0, random, normal).values;
}

/**
 * A step along the difference of two others (ter Braak 2006): now and then the whole difference, else a share that
 * suits the number of dimensions, with a little blur.
 *
 * @param others how many numbers outside the cube move with these
 * @returns the share, and where it leads; undefined outside the cube
 */
export function along(
  u: Float64Array,
  a: Float64Array,
  b: Float64Array,
  others: number,
  random: Random,
  normal: () => number,
): { readonly size: number; readonly values: Float64Array | undefined } {
  const usual = 2.38 / Math.sqrt(2 * (u.length + others));
  const size = random() < 0.1 ? 1 : usual * Math.exp(0.7 * normal() - 0.5);
  const values = u.slice();
  for (let i = 0; i < values.length; i++) {
    values[i] += size * (a[i] - b[i]) + 0.002 * normal();
    if (values[i] < 0 || values[i] >= 1) return { size, values: undefined };
  }
  return { size, values };
}
