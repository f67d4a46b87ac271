/**
 * How a picture is set: as a sheet of its own, with its title drawn; or as part of a text that names it, across a
 * page or in a narrow column, where letters stay as large.
 */
export type Setting = "sheet" | "wide" | "narrow";

/** Across, and down to the first plot, in pixels. */
interface Margins {
  readonly width: number;
  readonly top: number;
}

/** Room for the label of the axis, and on a sheet for the title over it. */
export const MARGINS: Readonly<Record<Setting, Margins>> = {
  sheet: { width: 960, top: 96 },
  wide: { width: 960, top: 60 },
  narrow: { width: 400, top: 60 },
};

/** From the edges to a plot: to the left the labels of the ticks, to the right half of the last one. */
export const SIDES = { left: 64, right: 28 };
