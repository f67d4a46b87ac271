import type { Point } from "../linesAbove.ts";
import type { Palette } from "../palette.ts";
import { LABEL_SIZE, TICK_SIZE } from "../profileFrame.ts";
import { element, pathThrough, textElement } from "../svg.ts";
import type { ScrewPicture } from "./screwPicture.ts";
import { type ScrewFrame, threadOutlines } from "./screwThread.ts";

/** The colours of a drawn screw. */
export type ScrewColours = Pick<Palette, "paper" | "ink" | "paleInk" | "nut" | "screw" | "screwBody">;

/** Thickness of the nut above and below the screw, in pixels. */
export const NUT_WALL = 18;
const TICK_LENGTH = 5;
const AXIS_LABEL = 42;
const CLIP_ID = "screw-outline";
const SECTION_ID = "section-of-the-nut";

/** Root, flanks and crests, each lighter than the one below. Needs `screwClip` in the definitions. */
export function drawnScrew(picture: ScrewPicture, frame: ScrewFrame, colours: ScrewColours): string {
  const outlines = threadOutlines(picture, frame);
  const { depth, crestTop, crestBottom, left, right } = frame;
  const closed = (points: readonly Point[]): string => `${pathThrough(points)}Z`;
  const edge = { stroke: colours.screw, "stroke-width": 0.6, "stroke-linejoin": "round" };
  return element(
    "g",
    { "clip-path": `url(#${CLIP_ID})` },
    element("rect", {
      x: left,
      y: crestTop + depth,
      width: right - left,
      height: crestBottom - crestTop - 2 * depth,
      fill: colours.screw,
      "fill-opacity": 0.85,
    }),
    element("path", {
      ...edge,
      d: outlines.map(({ flanks }) => closed(flanks)).join(""),
      fill: colours.screwBody,
    }),
    element("path", {
      ...edge,
      d: outlines.map(({ crest }) => closed(crest)).join(""),
      fill: colours.paper,
    }),
  );
}

/** Clips threads at the screw's ends. */
export function screwClip({ crestTop, crestBottom, left, right }: ScrewFrame): string {
  const box = { x: left, y: crestTop - 1, width: right - left, height: crestBottom - crestTop + 2 };
  return element("clipPath", { id: CLIP_ID }, element("rect", box));
}

/** The nut in section, with the screw visible inside. Needs `nutSection` in the definitions. */
export function nutWalls(
  from: number,
  to: number,
  { crestTop, crestBottom }: Pick<ScrewFrame, "crestTop" | "crestBottom">,
  colours: ScrewColours,
): string {
  const box = { x: from, width: to - from };
  const wall = { ...box, height: NUT_WALL, stroke: colours.nut, "stroke-width": 1.5 };
  return element(
    "g",
    {},
    ...[crestTop - NUT_WALL, crestBottom].flatMap((y) => [
      element("rect", { ...box, y, height: NUT_WALL, fill: colours.paper }),
      element("rect", { ...wall, y, fill: `url(#${SECTION_ID})` }),
    ]),
  );
}

/** The hatching of a part in section. */
export function nutSection(colours: ScrewColours): string {
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
    element("line", { x1: 0, y1: 0, x2: 0, y2: size, stroke: colours.nut, "stroke-width": 1.5 }),
  );
}

/**
 * The axis of positions, with ticks over the travel only.
 *
 * @param level its vertical position, in pixels
 * @returns its drawing and its lower edge, in pixels
 */
export function screwAxis(
  { axis: { ticks, label }, travel }: ScrewPicture,
  { x, right }: ScrewFrame,
  colours: ScrewColours,
  level: number,
) {
  const style = { size: TICK_SIZE, fill: colours.paleInk, anchor: "middle" } as const;
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    element("line", { x1, y1, x2, y2, stroke: colours.paleInk });
  const shown = ticks.filter(({ at }) => at >= travel.from && at <= travel.to);
  const markup = element(
    "g",
    { "font-variant-numeric": "tabular-nums" },
    line(x(travel.from), level, x(travel.to), level),
    ...[travel.from, travel.to].map((end) => line(x(end), level - TICK_LENGTH, x(end), level + TICK_LENGTH)),
    ...shown.flatMap((tick) => [
      line(x(tick.at), level, x(tick.at), level + TICK_LENGTH),
      textElement(x(tick.at), level + TICK_LENGTH + TICK_SIZE + 2, tick.label, style),
    ]),
    textElement(right, level + AXIS_LABEL, label, {
      size: LABEL_SIZE,
      fill: colours.paleInk,
      anchor: "end",
    }),
  );
  return { bottom: level + AXIS_LABEL + 3, markup };
}
