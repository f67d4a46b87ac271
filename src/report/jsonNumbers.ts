import { isPlainObject } from "../inspection/plainData.ts";
import { roundTo } from "../inspection/units.ts";

/** Finer than any reading, coarse enough to hide the traces of binary fractions. */
export const DECIMALS = 6;

/** The object with each number of its own replaced; what is not a number stays. */
export function mapNumbers<Source extends object>(source: Source, change: (value: number) => number): Source {
  return Object.fromEntries(
    Object.entries(source).map(([key, value]) => [key, typeof value === "number" ? change(value) : value]),
  ) as Source;
}

/** The same in every part of it, lists and objects alike. */
export function throughout<Source>(source: Source, change: (value: number) => number): Source {
  const changed = (value: unknown): unknown => {
    if (typeof value === "number") return change(value);
    if (Array.isArray(value)) return value.map(changed);
    if (!isPlainObject(value)) return value;
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, changed(part)]));
  };
  return changed(source) as Source;
}

/** JSON has no infinities: a number that is not finite is a fault of the analysis. */
export function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`The result holds ${value}.`);
  return roundTo(value, DECIMALS);
}

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
