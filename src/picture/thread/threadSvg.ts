import type { ProfilePoint } from "../../thread/profile.ts";
import type { Point } from "../linesAbove.ts";
import { LIGHT_PALETTE as COLOUR } from "../palette.ts";
import { LABEL_SIZE } from "../profileFrame.ts";
import { element, pathThrough, textElement } from "../svg.ts";
import { svgDocument } from "../svgDocument.ts";
import { type ThreadFrame, threadFrame } from "./threadFrame.ts";
import type { ThreadPicture } from "./threadPicture.ts";

const WIDTH = 960;
const TITLE_ROOM = 52;
const HATCH_ID = "section-of-the-nut-thread";
const CLIP_ID = "what-is-drawn-of-the-thread";
const ARROW = 7;
const MARK_COLOURS = { screw: COLOUR.screw, nut: COLOUR.nut, pitch: COLOUR.ink, wires: COLOUR.ink } as const;

/**
 * The drawing of a thread as a self-contained SVG document, to scale.
 *
 * @param width in pixels; letters keep their size, so that a narrow drawing shows fewer threads
 * @param isTitled false where a text beside it gives the title
 */
export function threadSvg(picture: ThreadPicture, width = WIDTH, isTitled = true): string {
  const frame = threadFrame(picture, width, isTitled ? TITLE_ROOM : 0);
  return svgDocument(
    picture,
    { width, height: frame.height, defs: [hatch(), clip(frame)], isTitled },
    element("g", { "clip-path": `url(#${CLIP_ID})` }, screwBody(picture, frame), nutBody(picture, frame)),
    wire(picture, frame),
    levels(frame),
    pitchMark(picture, frame),
    angleMark(picture, frame),
    tipMark(picture, frame),
  );
}

function hatch(): string {
  const size = 7;
  return element(
    "pattern",
    {
      id: HATCH_ID,
      width: size,
      height: size,
      patternUnits: "userSpaceOnUse",
      patternTransform: "rotate(45)",
    },
    element("line", { x1: 0, y1: 0, x2: 0, y2: size, stroke: COLOUR.nut, "stroke-width": 1.4 }),
  );
}

function clip({ left, right, top, bottom }: ThreadFrame): string {
  const box = { x: left, y: top, width: right - left, height: bottom - top };
  return element("clipPath", { id: CLIP_ID }, element("rect", box));
}

/** A profile repeated over a number of pitches, in pixels. */
function outline(
  profile: readonly ProfilePoint[],
  pitch: number,
  from: number,
  to: number,
  { x, y }: ThreadFrame,
): readonly Point[] {
  const count = to - from + 1;
  return Array.from({ length: count }, (_, index) => (from + index) * pitch).flatMap((shift) =>
    profile.map((point) => ({ x: x(point.x + shift), y: y(point.radius) })),
  );
}

function screwBody({ screw, pitch }: ThreadPicture, frame: ThreadFrame): string {
  const line = outline(screw, pitch, -1, frame.grooves, frame);
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return "";
  const floor = frame.bottom + 10;
  const body = [{ x: first.x, y: floor }, ...line, { x: last.x, y: floor }];
  return element("path", {
    d: `${pathThrough(body)}Z`,
    fill: COLOUR.screwBody,
    stroke: COLOUR.screw,
    "stroke-width": 1.6,
    "stroke-linejoin": "round",
  });
}

/** The nut over all grooves but the last, cut off in the middle of a crest of the screw. */
function nutBody({ nut, pitch }: ThreadPicture, frame: ThreadFrame): string {
  const line = outline(nut, pitch, -1, frame.grooves - 2, frame);
  const [first, last] = [line[0], line.at(-1)];
  if (first === undefined || last === undefined) return "";
  const ceiling = frame.top;
  const d = `${pathThrough([{ x: first.x, y: ceiling }, ...line, { x: last.x, y: ceiling }])}Z`;
  const edge = { stroke: COLOUR.nut, "stroke-width": 1.6, "stroke-linejoin": "round" };
  return [
    element("path", { d, fill: COLOUR.paper }),
    element("path", { d, fill: `url(#${HATCH_ID})`, ...edge }),
  ].join("");
}

function wire({ wire: placed, pitch }: ThreadPicture, { x, y, scale, grooves }: ThreadFrame): string {
  if (placed === null) return "";
  const centre = { x: x((grooves - 1) * pitch), y: y(placed.centre) };
  const arm = 6;
  const line = { stroke: COLOUR.ink, "stroke-width": 1 };
  return element(
    "g",
    {},
    element("circle", {
      cx: centre.x,
      cy: centre.y,
      r: placed.radius * scale,
      fill: COLOUR.paper,
      "fill-opacity": 0.85,
      stroke: COLOUR.ink,
      "stroke-width": 1.8,
    }),
    element("line", { x1: centre.x - arm, y1: centre.y, x2: centre.x + arm, y2: centre.y, ...line }),
    element("line", { x1: centre.x, y1: centre.y - arm, x2: centre.x, y2: centre.y + arm, ...line }),
  );
}

/** A line at the level of each diameter, and its label in the column beside the drawing. */
function levels({ labels, right, labelX }: ThreadFrame): string {
  return element(
    "g",
    { "font-variant-numeric": "tabular-nums" },
    ...labels.flatMap(({ text, of, from, y }) => {
      const colour = MARK_COLOURS[of];
      const line = { stroke: colour, "stroke-width": 1, fill: "none" };
      const bend = { x: Math.max(from.x, right), y: from.y };
      const points = [from, bend, { x: labelX - 5, y }];
      return [
        element("path", {
          d: pathThrough(points),
          ...line,
          ...(of === "pitch" ? { "stroke-dasharray": "12 4 2 4" } : {}),
        }),
        textElement(labelX, y + LABEL_SIZE * 0.35, text, { size: LABEL_SIZE, fill: colour, weight: 500 }),
      ];
    }),
  );
}

/** From the middle of one crest of the screw to the next, above the nut. */
function pitchMark({ pitch, pitchLabel }: ThreadPicture, { x, top }: ThreadFrame): string {
  const [from, to] = [x(-pitch / 2), x(pitch / 2)];
  const y = top - 9;
  return element(
    "g",
    {},
    ...[from, to].map((at) =>
      element("line", { x1: at, y1: y - 6, x2: at, y2: top, stroke: COLOUR.ink, "stroke-width": 1 }),
    ),
    dimensionLine(from, to, y),
    textElement((from + to) / 2, y - 6, pitchLabel, {
      size: LABEL_SIZE,
      fill: COLOUR.ink,
      anchor: "middle",
      rim: COLOUR.paper,
    }),
  );
}

/** The flank's angle, at the wire's groove: against an upright through the flank at the pitch line. */
function angleMark(
  { pitch, pitchRadius, halfAngle, angleLabel }: ThreadPicture,
  { x, y, scale, grooves }: ThreadFrame,
): string {
  if (halfAngle === 0) return "";
  const at = { x: x((grooves - 1) * pitch - pitch / 4), y: y(pitchRadius) };
  const reach = pitch * scale * 0.24;
  const line = { stroke: COLOUR.ink, "stroke-width": 1 };
  return element(
    "g",
    {},
    element("line", { x1: at.x, y1: at.y, x2: at.x, y2: at.y + reach, ...line }),
    textElement(at.x - 6, at.y + reach, angleLabel, {
      size: LABEL_SIZE,
      fill: COLOUR.ink,
      anchor: "end",
      rim: COLOUR.screwBody,
    }),
  );
}

/** The flat at the root of the wire's groove, which the tool's tip leaves. */
function tipMark({ screw, pitch, tipLabel }: ThreadPicture, { x, y, grooves, bottom }: ThreadFrame): string {
  if (tipLabel === null) return "";
  const core = Math.min(...screw.map(({ radius }) => radius));
  const half = Math.max(...screw.filter(({ radius }) => radius === core).map((point) => point.x));
  const middle = (grooves - 1) * pitch;
  const level = Math.min(y(core) + 12, bottom - LABEL_SIZE - 8);
  return element(
    "g",
    {},
    dimensionLine(x(middle - half), x(middle + half), level),
    textElement(x(middle), level + LABEL_SIZE + 3, tipLabel, {
      size: LABEL_SIZE,
      fill: COLOUR.ink,
      anchor: "middle",
      rim: COLOUR.screwBody,
    }),
  );
}

/** A level line between two places with an arrow at each end. */
function dimensionLine(from: number, to: number, y: number): string {
  const head = (tip: number, towards: number): string =>
    `M${tip} ${y}L${tip + towards * ARROW} ${y - ARROW / 2.6}L${tip + towards * ARROW} ${y + ARROW / 2.6}Z`;
  return [
    element("line", { x1: from, y1: y, x2: to, y2: y, stroke: COLOUR.ink, "stroke-width": 1 }),
    element("path", { d: `${head(from, 1)}${head(to, -1)}`, fill: COLOUR.ink }),
  ].join("");
}
