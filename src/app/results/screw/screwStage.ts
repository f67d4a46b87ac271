import { svg } from "lit";
import type { Interval } from "../../../analysis/decide/settings.ts";
import {
  drawnScrew,
  NUT_WALL,
  nutSection,
  nutWalls,
  screwAxis,
  screwClip,
} from "../../../picture/screw/screwDrawing.ts";
import { screwFrame } from "../../../picture/screw/screwFrame.ts";
import { screwLabels } from "../../../picture/screw/screwLabels.ts";
import type { ScrewPicture } from "../../../picture/screw/screwPicture.ts";
import type { ScrewFrame } from "../../../picture/screw/screwThread.ts";
import { element } from "../../../picture/svg.ts";
import { PAGE_COLOURS } from "../../ui/pageColours.ts";

const MARGIN = 8;
/** Height of the bars that show where a nut would bind. */
const BAR = 9;

/** The still part of the drawing, and where the moving parts go. Pixels. */
export interface ScrewStage {
  readonly width: number;
  readonly height: number;
  readonly frame: ScrewFrame;
  /** The level of the scale of positions. */
  readonly scale: number;
  /** Markup of the screw with its labels and scale, and of the nut about zero. */
  readonly still: string;
  readonly nut: string;
  /** The box of the nut about its middle. */
  readonly reach: { readonly half: number; readonly top: number; readonly bottom: number };
}

/** Draws the screw for a width in pixels. @param nutLength in the reader's unit */
export function screwStage(picture: ScrewPicture, nutLength: number, width: number): ScrewStage {
  const frame = screwFrame(picture, width, 0, MARGIN);
  const labels = screwLabels(picture, frame, PAGE_COLOURS);
  const scale = labels.bottom + BAR + 4;
  const axis = screwAxis(picture, frame, PAGE_COLOURS, scale);
  const half = (frame.x(nutLength) - frame.x(0)) / 2;
  const { crestTop, crestBottom } = frame;
  return {
    width,
    height: axis.bottom + 4,
    frame,
    scale,
    still:
      element("defs", {}, screwClip(frame)) +
      drawnScrew(picture, frame, PAGE_COLOURS) +
      labels.markup +
      axis.markup,
    nut:
      element("defs", {}, nutSection(PAGE_COLOURS)) +
      nutWalls(-half, half, frame, PAGE_COLOURS) +
      grip(crestTop),
    reach: { half, top: crestTop - NUT_WALL, bottom: crestBottom + NUT_WALL },
  };
}

/** Two arrowheads over the nut show that it can be dragged either way. */
function grip(crestTop: number): string {
  const y = crestTop - NUT_WALL / 2;
  return element(
    "g",
    { stroke: PAGE_COLOURS.nut, "stroke-width": 2, fill: PAGE_COLOURS.paper, "stroke-linejoin": "round" },
    element("rect", { x: -15, y: y - 9, width: 30, height: 18, rx: 4 }),
    element("path", { d: `M-4 ${y - 4}L-9 ${y}L-4 ${y + 4}M4 ${y - 4}L9 ${y}L4 ${y + 4}`, fill: "none" }),
  );
}

/** The moving parts: the nut at a position, and bars on the scale where it would bind, in the reader's unit. */
export function movingParts(stage: ScrewStage, at: number, binds: readonly Interval[]) {
  const { frame, scale } = stage;
  return svg`
    <defs>
      <pattern id="would-bind" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V6" stroke="var(--limit)" stroke-width="3" />
      </pattern>
    </defs>
    ${binds.map(({ from, to }) => {
      const [start, end] = [frame.x(from), frame.x(to)];
      return svg`<rect
        x=${start}
        y=${scale - BAR}
        width=${Math.max(1, end - start)}
        height=${BAR}
        fill="url(#would-bind)"
        stroke="var(--limit)"
      />`;
    })}
    <g class="nut" transform="translate(${frame.x(at).toFixed(2)} 0)" .innerHTML=${stage.nut}></g>`;
}
