/** The colours of every picture and of the page, by their meaning. Text colours have contrast AA on `paper`. */
export interface Palette {
  /** The background. */
  readonly paper: string;
  /** Layout blue: the profile, the readings, headings and text. */
  readonly ink: string;
  /** Paler ink: axes, tick labels, secondary text. */
  readonly paleInk: string;
  /** Lines of the grid. */
  readonly grid: string;
  /** The 95 % band about the profile. */
  readonly band: string;
  /** The area outside the working range. */
  readonly outside: string;
  /** Brass: the nut, and the lost motion left after adjusting it. */
  readonly nut: string;
  /** Steel: the screw. */
  readonly screw: string;
  /** The body of the screw, between its outlines. */
  readonly screwBody: string;
  /** The limit, and the hatching above it. */
  readonly limit: string;
}

export const LIGHT_PALETTE: Palette = {
  paper: "#ffffff",
  ink: "#123a6b",
  paleInk: "#50647d",
  grid: "#e3e9f0",
  band: "#cfdff2",
  outside: "#f1f3f6",
  nut: "#856009",
  screw: "#5b6570",
  screwBody: "#d3d8dd",
  limit: "#b8221b",
};

export const DARK_PALETTE: Palette = {
  paper: "#10151c",
  ink: "#a9cdf8",
  paleInk: "#93a4b8",
  grid: "#26303c",
  band: "#213f63",
  outside: "#181e26",
  nut: "#dcb352",
  screw: "#a7b2bd",
  screwBody: "#414b56",
  limit: "#ff8a7e",
};
