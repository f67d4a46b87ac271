/**
 * Shares of a whole, rounded to so many decimals so that they still add up to it: each is rounded down, and what is
 * then missing goes to the largest remainders.
 */
export function roundedShares<Name extends string>(
  shares: Readonly<Record<Name, number>>,
  decimals: number,
): Readonly<Record<Name, number>> {
  const whole = 10 ** decimals;
  const parts = Object.entries<number>(shares).map(([name, share]) => {
    const down = Math.floor(share * whole);
    return { name, down, remainder: share * whole - down };
  });
  const missing = Math.round(whole - parts.reduce((sum, { down }) => sum + down, 0));
  const raised = [...parts].sort((a, b) => b.remainder - a.remainder).slice(0, missing);
  return Object.fromEntries(
    parts.map((part) => [part.name, (part.down + (raised.includes(part) ? 1 : 0)) / whole]),
  ) as Record<Name, number>;
}
