import type { Palette } from "../../picture/palette.ts";
import type { ProfilePicture } from "../../picture/profilePicture.ts";

/** What is drawn, and in which colours. Its axes reach as far as it is shown. */
export interface Shown {
  readonly picture: ProfilePicture;
  readonly look: Palette;
}
