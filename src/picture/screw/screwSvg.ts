import { LIGHT_PALETTE } from "../palette.ts";
import { LABEL_SIZE } from "../profileFrame.ts";
import { svgDocument } from "../svgDocument.ts";
import { drawnScrew, nutSection, nutWalls, screwAxis, screwClip } from "./screwDrawing.ts";
import { screwFrame } from "./screwFrame.ts";
import { nutLabel, screwLabels } from "./screwLabels.ts";
import type { ScrewPicture } from "./screwPicture.ts";

const WIDTH = 960;
/** Room for the title, in pixels. */
const TITLE_ROOM = 34;

/** The picture of a screw as a self-contained SVG document for paper or screen, described for screen readers. */
export function screwSvg(picture: ScrewPicture): string {
  const frame = screwFrame(picture, WIDTH, TITLE_ROOM);
  const labels = screwLabels(picture, frame, LIGHT_PALETTE, nutLabel(picture, frame, LIGHT_PALETTE));
  const axis = screwAxis(picture, frame, LIGHT_PALETTE, labels.bottom);
  return svgDocument(
    picture,
    {
      width: WIDTH,
      height: axis.bottom + LABEL_SIZE / 2,
      defs: [screwClip(frame), nutSection(LIGHT_PALETTE)],
    },
    drawnScrew(picture, frame, LIGHT_PALETTE),
    picture.nut === null
      ? ""
      : nutWalls(frame.x(picture.nut.from), frame.x(picture.nut.to), frame, LIGHT_PALETTE),
    labels.markup,
    axis.markup,
  );
}
