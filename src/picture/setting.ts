/**
 * The layout of a picture: a sheet of its own with a title; or without a title, as wide as a page or in a narrow column,
 * with letters of the same size.
 */
export type Setting = "sheet" | "wide" | "narrow";

/** Width of the picture, and distance from its top to the first plot, in pixels. */
interface Margins {
  readonly width: number;
  readonly top: number;
}

/** The top has room for the axis label, and on a sheet for the title. */
export const MARGINS: Readonly<Record<Setting, Margins>> = {
  sheet: { width: 960, top: 96 },
  wide: { width: 960, top: 60 },
  narrow: { width: 400, top: 60 },
};

/** From the sides to a plot, in pixels: tick labels on the left, half of the last tick label on the right. */
export const SIDES = { left: 64, right: 28 };
