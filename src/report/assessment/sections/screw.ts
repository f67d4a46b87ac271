import { evennessOf } from "../../../picture/evenness.ts";
import { screwPicture } from "../../../picture/screw/screwPicture.ts";
import { screwSvg } from "../../../picture/screw/screwSvg.ts";
import { figure } from "../../document/pieces.ts";
import type { SectionMaker } from "../reported.ts";

/** The screw with the wear that the readings show, and the nut where it binds first. */
export const screw: SectionMaker = ({ assessment, slide, lengths }) => {
  const bindsAt = evennessOf(assessment, lengths) === "uneven" ? assessment.tightSpot.position : undefined;
  const picture = screwPicture(assessment, slide, bindsAt);
  return {
    title: "Wear of the screw",
    as: "drawing",
    content: figure(screwSvg(picture), picture.description),
  };
};
