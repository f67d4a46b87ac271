import type { Point } from "./linesAbove.ts";
import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { LABEL_SIZE, TICK_SIZE } from "./profileFrame.ts";
import { screwLabels } from "./screwLabels.ts";
import type { ScrewPicture } from "./screwPicture.ts";
import { type ScrewFrame, threadOutlines } from "./screwThread.ts";
import { element, pathThrough, textElement } from "./svg.ts";
import { svgDocument } from "./svgDocument.ts";

const WIDTH = 960;
const MARGIN = 24;
const HEIGHT = 64;
/** The screw's upper edge: under what is written above it, where there is anything. */
const TOP = { labelled: 118, bare: 62 };
const LEAST_DEPTH = 5;
const MOST_DEPTH = 12;
/** Thickness of the nut above and below the screw. */
const NUT_WALL = 18;
const AXIS_ROOM = 52;
const TICK_LENGTH = 5;
const CLIP_ID = "what-is-drawn-of-the-screw";
const SECTION_ID = "section-of-the-nut";

/** The picture of a screw as a self-contained SVG document for paper or screen, described for screen readers. */
export function screwSvg(picture: ScrewPicture): string {
  const frame = frameFor(picture);
  const labels = screwLabels(picture, frame, { left: MARGIN, right: WIDTH - MARGIN });
  const height = labels.bottom + AXIS_ROOM;
  return svgDocument(
    picture,
    { width: WIDTH, height, defs: [clip(frame), nutSection()] },
    screw(picture, frame),
    nut(picture, frame),
    labels.markup,
    axis(picture, frame, labels.bottom),
  );
}

function frameFor({ axis, thread, spots, nut }: ScrewPicture): ScrewFrame {
  const scale = (WIDTH - 2 * MARGIN) / (axis.to - axis.from);
  const top = spots.length > 0 || nut !== null ? TOP.labelled : TOP.bare;
  return {
    crestTop: top,
    crestBottom: top + HEIGHT,
    depth: Math.min(MOST_DEPTH, Math.max(LEAST_DEPTH, (thread.pitch * scale) / 2)),
    x: (position) => MARGIN + (position - axis.from) * scale,
  };
}

/** Root, flanks and crests, each lighter than the one below it. */
function screw(picture: ScrewPicture, frame: ScrewFrame): string {
  const outlines = threadOutlines(picture, frame);
  const { depth, crestTop, crestBottom } = frame;
  const closed = (points: readonly Point[]): string => `${pathThrough(points)}Z`;
  const edge = { stroke: COLOUR.screw, "stroke-width": 0.6, "stroke-linejoin": "round" };
  return element(
    "g",
    { "clip-path": `url(#${CLIP_ID})` },
    element("rect", {
      x: MARGIN,
      y: crestTop + depth,
      width: WIDTH - 2 * MARGIN,
      height: crestBottom - crestTop - 2 * depth,
      fill: COLOUR.screw,
      "fill-opacity": 0.85,
    }),
    element("path", {
      ...edge,
      d: outlines.map(({ flanks }) => closed(flanks)).join(""),
      fill: COLOUR.screwBody,
    }),
    element("path", { ...edge, d: outlines.map(({ crest }) => closed(crest)).join(""), fill: COLOUR.paper }),
  );
}

/** Cut open, so that the screw is seen within it. */
function nut(picture: ScrewPicture, { x, crestTop, crestBottom }: ScrewFrame): string {
  if (picture.nut === null) return "";
  const [from, to] = [x(picture.nut.from), x(picture.nut.to)];
  const box = { x: from, width: to - from };
  const wall = { ...box, height: NUT_WALL, stroke: COLOUR.nut, "stroke-width": 1.5 };
  return element(
    "g",
    {},
    ...[crestTop - NUT_WALL, crestBottom].flatMap((y) => [
      element("rect", { ...box, y, height: NUT_WALL, fill: COLOUR.paper }),
      element("rect", { ...wall, y, fill: `url(#${SECTION_ID})` }),
    ]),
  );
}

/** The axis bears figures over the travel only: beyond it there is no position of the slide. */
function axis({ axis: { ticks, label }, travel }: ScrewPicture, { x }: ScrewFrame, level: number): string {
  const style = { size: TICK_SIZE, fill: COLOUR.paleInk, anchor: "middle" } as const;
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    element("line", { x1, y1, x2, y2, stroke: COLOUR.paleInk });
  const shown = ticks.filter(({ at }) => at >= travel.from && at <= travel.to);
  return element(
    "g",
    { "font-variant-numeric": "tabular-nums" },
    line(x(travel.from), level, x(travel.to), level),
    ...[travel.from, travel.to].map((end) => line(x(end), level - TICK_LENGTH, x(end), level + TICK_LENGTH)),
    ...shown.flatMap((tick) => [
      line(x(tick.at), level, x(tick.at), level + TICK_LENGTH),
      textElement(x(tick.at), level + TICK_LENGTH + TICK_SIZE + 2, tick.label, style),
    ]),
    textElement(WIDTH - MARGIN, level + 42, label, {
      size: LABEL_SIZE,
      fill: COLOUR.paleInk,
      anchor: "end",
    }),
  );
}

function clip({ crestTop, crestBottom }: ScrewFrame): string {
  const box = { x: MARGIN, y: crestTop - 1, width: WIDTH - 2 * MARGIN, height: crestBottom - crestTop + 2 };
  return element("clipPath", { id: CLIP_ID }, element("rect", box));
}

/** Hatched as a part cut open is on a drawing. */
function nutSection(): string {
  const size = 6;
  return element(
    "pattern",
    {
      id: SECTION_ID,
      width: size,
      height: size,
      patternUnits: "userSpaceOnUse",
      patternTransform: "rotate(45)",
    },
    element("line", { x1: 0, y1: 0, x2: 0, y2: size, stroke: COLOUR.nut, "stroke-width": 1.5 }),
  );
}
