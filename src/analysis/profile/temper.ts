import { drawIndex, normals, type Random } from "../statistics/random.ts";
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

/**
 * Logarithm of the evidence of a shape; of an even profile without one.
 *
 * @param least what is surely less than this may be given as less than anything
 */
export type Scoring = (wear: Wear | undefined, least?: number) => number;

/** Prior draws looked at for each particle kept. */
const SCREENED = 3;
/** Share of the particles that must still count when the readings are given more weight. */
const KEPT = 0.4;
/** Moves of every particle after each rise. */
const MOVES = 3;

/**
 * Shapes of wear of every character, drawn from their posterior: sequential Monte Carlo from prior to posterior by
 * tempering (Del Moral, Doucet and Jasra 2006), with moves along differences between particles of one character
 * (ter Braak 2006) and with single numbers drawn afresh. Characters that explain the readings badly die out.
 *
 */
export function temper(size: number, score: Scoring, random: Random): Particle[] {
  const normal = normals(random);
  const chances = [...CHARACTERS.map(({ weight }) => weight), EVEN_CHANCE];
  const sizes = [...CHARACTERS.map(dimensionsOf), 0];
  let particles: Particle[] = Array.from({ length: SCREENED * size }, () => {
    const character = drawIndex(chances, random);
    const u = new Float64Array(sizes[character]);
    for (let i = 0; i < u.length; i++) u[i] = random();
    return { character, u, log: score(wearOf({ character, u })) };
  });
  const scratch = sizes.map((dimensions) => new Float64Array(dimensions));
  let heat = 0;
  while (heat < 1) {
    const shortfalls = shortfallsOf(particles);
    const step = nextStep(shortfalls, heat, KEPT * size);
    const weights = shortfalls.map((shortfall) => Math.exp(step * shortfall));
    particles = resample(particles, weights, size, random);
    heat += step;
    const kin = byCharacter(particles);
    for (let move = 0; move < MOVES; move++) {
      for (let i = 0; i < size; i++) {
        const { character, u: from, log: before } = particles[i];
        if (character === EVEN) continue;
        const u = scratch[character];
        if (!propose(from, kin[character], u, random, normal)) continue;
        const least = before + Math.log(1 - random()) / heat;
        const log = score(wearOf({ character, u }), least);
        if (log < least) continue;
        particles[i] = { character, u: u.slice(), log };
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

/** How far each particle's score lies from the greatest: 0 or less. */
function shortfallsOf(particles: readonly Particle[]): Float64Array {
  const logs = new Float64Array(particles.length);
  for (let i = 0; i < logs.length; i++) logs[i] = particles[i].log;
  const greatest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  for (let i = 0; i < logs.length; i++) logs[i] -= greatest;
  return logs;
}

/** How far the readings' weight can rise so that enough particles still count. */
function nextStep(shortfalls: Float64Array, heat: number, wanted: number): number {
  const enough = (step: number): boolean => {
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < shortfalls.length; i++) {
      const weight = Math.exp(step * shortfalls[i]);
      sum += weight;
      squares += weight * weight;
    }
    return sum * sum >= wanted * squares;
  };
  let high = 1 - heat;
  if (enough(high)) return high;
  let low = 0;
  for (let i = 0; i < 10; i++) {
    const middle = 0.5 * (low + high);
    if (enough(middle)) low = middle;
    else high = middle;
  }
  return Math.max(low, 1e-4);
}

/** Systematic resampling. */
export function resample<Item>(
  items: readonly Item[],
  weights: ArrayLike<number>,
  size: number,
  random: Random,
): Item[] {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i];
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

/** Writes a change along the difference of two others, or of one number drawn afresh; false outside the cube. */
function propose(
  from: Float64Array,
  kin: readonly Pick<Particle, "u">[],
  into: Float64Array,
  random: Random,
  normal: () => number,
): boolean {
  if (random() < 0.2) {
    into.set(from);
    into[Math.floor(random() * into.length)] = random();
    return true;
  }
  const a = kin[Math.floor(random() * kin.length)].u;
  const b = kin[Math.floor(random() * kin.length)].u;
  return along(from, a, b, 0, into, random, normal) !== undefined;
}

/** Furthest that a number is moved besides, so that particles which are all alike still move. */
const BLUR = 0.0035;

/**
 * A step along the difference of two others (ter Braak 2006): now and then the whole difference, else a share that
 * suits the number of dimensions, with a little blur.
 *
 * @param others how many numbers outside the cube move with these
 * @param into where the step leads
 * @returns the share; undefined if it leads outside the cube
 */
export function along(
  from: Float64Array,
  a: Float64Array,
  b: Float64Array,
  others: number,
  into: Float64Array,
  random: Random,
  normal: () => number,
): number | undefined {
  const usual = 2.38 / Math.sqrt(2 * (from.length + others));
  const size = random() < 0.1 ? 1 : usual * Math.exp(0.7 * normal() - 0.5);
  for (let i = 0; i < from.length; i++) {
    const value = from[i] + size * (a[i] - b[i]) + BLUR * (2 * random() - 1);
    if (value < 0 || value >= 1) return undefined;
    into[i] = value;
  }
  return size;
}
