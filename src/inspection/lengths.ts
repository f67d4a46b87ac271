import { fromMillimetres, roundTo, type Units } from "./units.ts";

/** Writes lengths given in millimetres in the reader's unit, with as many digits as the readings support. */
export interface Lengths {
  readonly units: Units;
  /** A lost motion or another small length: `0.21 mm`. */
  lostMotion(millimetres: number): string;
  /** The same without its unit, for columns and axes: `0.21`. */
  figure(millimetres: number): string;
  /** A position as it was stated: `37.5 mm`. */
  position(millimetres: number): string;
  /** A computed position, to the nearest millimetre or twentieth of an inch: `137 mm`. */
  spot(millimetres: number): string;
}

/** Decimals that show steps of the given size: 0.01 → 2, 0.005 → 3, 0.02 → 2. */
export function decimalsFor(step: number): number {
  return Math.min(6, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}

/** The step that lengths are rounded to if no resolution is known. */
const USUAL_STEP = { mm: 0.01, in: 0.001 } as const;

/**
 * Writers of lengths in a unit.
 *
 * @param units the unit to write in
 * @param resolution graduation of the readings in millimetres, if known
 */
export function lengthsIn(units: Units, resolution?: number): Lengths {
  const usual = decimalsFor(USUAL_STEP[units]);
  const decimals =
    resolution === undefined || resolution <= 0
      ? usual
      : Math.min(usual + 1, Math.max(usual, decimalsFor(fromMillimetres(resolution, units))));
  const figure = (millimetres: number): string =>
    roundTo(fromMillimetres(millimetres, units), decimals).toFixed(decimals);
  const place = (value: number): string => `${roundTo(value, units === "in" ? 4 : 3)} ${units}`;
  return {
    units,
    figure,
    lostMotion: (millimetres) => `${figure(millimetres)} ${units}`,
    position: (millimetres) => place(fromMillimetres(millimetres, units)),
    spot: (millimetres) => {
      const value = fromMillimetres(millimetres, units);
      return place(units === "in" ? Math.round(value * 20) / 20 : Math.round(value));
    },
  };
}
