import type { Palette } from "../../../picture/palette.ts";
import type { ProfilePicture } from "../../../picture/profilePicture.ts";

/** What is drawn, and in which look. Its axes reach as far as it is shown. */
export interface Shown {
  readonly picture: ProfilePicture;
  readonly look: Palette;
  /** Fonts in the order of preference, as in CSS. */
  readonly fonts: string;
  /** Of the drawing, in pixels of the page. */
  readonly width: number;
  readonly height: number;
  /** How many pixels the screen has to one of the page. */
  readonly ratio: number;
}
