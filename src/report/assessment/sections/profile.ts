import { profilePicture } from "../../../picture/profilePicture.ts";
import { profileSvg } from "../../../picture/profileSvg.ts";
import { figure } from "../../document/pieces.ts";
import type { SectionMaker } from "../reported.ts";

/** Lost motion along the travel, drawn. The worn screw has a drawing of its own. */
export const profile: SectionMaker = ({ assessment, slide }) => {
  const picture = { ...profilePicture(assessment, slide.units), wornZones: [] };
  return { title: "Lost motion along the travel", as: "drawing", content: figure(profileSvg(picture)) };
};
