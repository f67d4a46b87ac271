import { profilePicture } from "../../../picture/profilePicture.ts";
import { profileSvg } from "../../../picture/profileSvg.ts";
import { figure } from "../../document/figure.ts";
import type { SectionMaker } from "../reported.ts";

/** Lost motion along the travel, drawn. */
export const profile: SectionMaker = ({ assessment, slide }) => {
  const picture = profilePicture(assessment, slide.units);
  return {
    title: "Lost motion along the travel",
    whole: true,
    content: figure(profileSvg(picture), picture.description),
  };
};
