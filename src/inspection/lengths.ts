import { fromMillimetres, roundTo, type Units } from "./units.ts";

/** Writes lengths given in millimetres in the reader's unit, with no more digits than the readings support. */
export interface Lengths {
  readonly units: Units;
  /** A lost motion or another small length: `0.21 mm`. */
  lostMotion(millimetres: number): string;
  /** The same without its unit, for columns and axes: `0.21`. */
  figure(millimetres: number): string;
  /** A place as it was stated: `37.5 mm`. */
  position(millimetres: number): string;
  /** A place that was worked out, to the nearest millimetre or twentieth of an inch: `about 137 mm` less the word. */
  spot(millimetres: number): string;
}

/** Decimals that show steps of the given size: 0.01 → 2, 0.005 → 3, 0.02 → 2. */
export function decimalsFor(step: number): number {
  return Math.min(6, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}

/** What the figures are shown to where no resolution is known: 0.01 mm or 0.001 in. */
const USUAL_STEP = { mm: 0.01, in: 0.001 } as const;

/**
 * @param units the unit to write in
 * @param resolution the smallest step of the readings in millimetres, when known
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
