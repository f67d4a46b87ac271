import type { Palette } from "../../picture/palette.ts";
import type { ProfilePicture } from "../../picture/profilePicture.ts";

/** What is drawn, and in which colours. */
export interface Shown {
  readonly picture: ProfilePicture;
  readonly look: Palette;
}
