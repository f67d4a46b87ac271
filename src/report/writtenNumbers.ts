import { isPlain } from "../inspection/parts.ts";
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
    if (!isPlain(value)) return value;
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, changed(part)]));
  };
  return changed(source) as Source;
}

/** JSON has no infinities: a number that is not finite is a fault of the analysis. */
export function finite(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`The result holds ${value}.`);
  return roundTo(value, DECIMALS);
}
