import { gammaln } from "simple-statistics";

/** Chance that a ratio of two variances exceeds the value (Fisher's F); `above` and `below` are degrees of freedom. */
export function fDistributionTail(ratio: number, above: number, below: number): number {
  if (ratio === Number.POSITIVE_INFINITY) return 0;
  return incompleteBeta(below / (below + above * ratio), below / 2, above / 2);
}

const TERMS = 300;
const TOLERANCE = 1e-14;

/**
 * The regularised incomplete beta function (NIST Digital Library of Mathematical Functions, 8.17), by its continued
 * fraction (8.17.22) evaluated after Lentz.
 */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  // The fraction converges fast on one side of the mean; the other side follows from its complement (8.17.4).
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(
    gammaln(a + b) - gammaln(a) - gammaln(b) + a * Math.log(x) + b * Math.log1p(-x) - Math.log(a),
  );
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m < TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d);
    c = 1 + even / c;
    fraction *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d);
    c = 1 + odd / c;
    fraction *= c * d;
    if (Math.abs(c * d - 1) < TOLERANCE) break;
  }
  return front * fraction;
}
