/** Further than the traces of binary fractions reach. */
const TRACE = 1e-7;

/** Rounds as inch standards print their tables: to so many decimals, ties to the even digit. */
export function roundedAsPrinted(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  const shifted = value * scale;
  const below = Math.floor(shifted);
  const rest = shifted - below;
  const isTie = Math.abs(rest - 0.5) < TRACE;
  const up = isTie ? below % 2 !== 0 : rest > 0.5;
  return (below + (up ? 1 : 0)) / scale;
}
