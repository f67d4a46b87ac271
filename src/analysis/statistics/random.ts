/** A source of random numbers, uniform on [0, 1). */
export type Random = () => number;

/**
 * A small seeded source (sfc32, from the public-domain PractRand suite, with its 12 warm-up rounds). The same seed gives
 * the same numbers everywhere.
 */
export function seededRandom(seed: number): Random {
  let a = seed | 0;
  let b = (seed >>> 3) | 0;
  let c = 0x9e3779b9 | 0;
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + sum) | 0;
    return (sum >>> 0) / 4294967296;
  };
  for (let round = 0; round < 12; round++) next();
  return next;
}

/** Standard normal numbers from a uniform source (Box and Muller 1958). */
export function normals(random: Random): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    const angle = 2 * Math.PI * random();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
}

/** An index drawn with chances proportional to the weights. */
export function drawIndex(weights: ArrayLike<number>, random: Random): number {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i];
  let left = random() * total;
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i];
    if (left < 0) return i;
  }
  return weights.length - 1;
}
