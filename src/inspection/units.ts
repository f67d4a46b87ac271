/** The units an inspection may be written in. Inside the program every length is in millimetres. */
export type Units = "mm" | "in";

/** Exact by definition (international yard and pound agreement, 1959). */
export const MILLIMETRES_PER_INCH = 25.4;

/** Millimetres in one of the given unit. */
export function millimetresPer(units: Units): number {
  return units === "in" ? MILLIMETRES_PER_INCH : 1;
}

/** A length in the given units, in millimetres. */
export function toMillimetres(length: number, units: Units): number {
  return length * millimetresPer(units);
}

/** A length in millimetres, in the given units. */
export function fromMillimetres(length: number, units: Units): number {
  return length / millimetresPer(units);
}

/** Rounds to the given number of decimals, ties away from zero, without floating-point error. */
export function roundTo(value: number, decimals: number): number {
  if (!Number.isFinite(value)) return value;
  const shifted = Number(`${Math.abs(value)}e${decimals}`);
  const rounded = Number.isNaN(shifted)
    ? Number(Math.abs(value).toFixed(decimals))
    : Number(`${Math.round(shifted)}e-${decimals}`);
  return value < 0 ? -rounded || 0 : rounded;
}
