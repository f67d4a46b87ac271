/**
 * The upper end of the 95 % interval of a share, of which so many cases out of so many were seen (Clopper and Pearson
 * 1934): the share at which no more than these would be seen once in forty times.
 *
 * @returns from 0 to 1; 1 where all cases were seen
 */
export function greatestShare(seen: number, cases: number): number {
  if (seen >= cases) return 1;
  let [low, high] = [seen / cases, 1];
  for (let i = 0; i < 60; i++) {
    const share = (low + high) / 2;
    if (chanceOfNoMore(seen, cases, share) > 0.025) low = share;
    else high = share;
  }
  return high;
}

/** The binomial distribution's chance of a count or less. */
function chanceOfNoMore(count: number, cases: number, share: number): number {
  let term = (1 - share) ** cases;
  let sum = term;
  for (let i = 0; i < count; i++) {
    term *= ((cases - i) / (i + 1)) * (share / (1 - share));
    sum += term;
  }
  return sum;
}
