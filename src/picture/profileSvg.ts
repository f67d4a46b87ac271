import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { profileAxes, workingRangeMarks } from "./profileAxes.ts";
import { LABEL_SIZE, type ProfileFrame, profileFrame } from "./profileFrame.ts";
import { type LabelRole, nearestPoint, type PlacedLabel, profileLabels } from "./profileLabels.ts";
import type { ProfilePicture } from "./profilePicture.ts";
import { screwStrip } from "./screwStrip.ts";
import { sideBySide } from "./sideBySide.ts";
import { struckMarks } from "./struckMarks.ts";
import { element, pathThrough, textElement } from "./svg.ts";
import { svgDocument } from "./svgDocument.ts";

const HATCH_ID = "exceeding-the-limit";
const HATCH_STEP = 7;
/** Distance between readings of the same value at one station, in pixels. */
const READING_STEP = 6.5;

const LABEL_COLOUR: Readonly<Record<LabelRole, string>> = {
  limit: COLOUR.limit,
  spot: COLOUR.ink,
  median: COLOUR.paleInk,
  afterAdjusting: COLOUR.nut,
  worn: COLOUR.screw,
};

/** The picture of a profile as a self-contained SVG document for paper or screen, described for screen readers. */
export function profileSvg(picture: ProfilePicture): string {
  const frame = profileFrame(picture);
  const { width, height } = frame;
  return svgDocument(
    picture,
    { width, height, defs: [hatchPattern()] },
    workingRangeMarks(picture, frame),
    profileAxes(picture, frame),
    profileCurves(picture, frame),
    readingsAndSpots(picture, frame),
    ...profileLabels(picture, frame).map(label),
    screwStrip(picture, frame),
  );
}

/** From bottom to top: the band, the hatching, what adjusting leaves, the profile, the limit. */
function profileCurves(picture: ProfilePicture, frame: ProfileFrame): string {
  const { band, exceeding, limit, afterAdjusting, median } = picture;
  const { plot } = frame;
  const level = frame.y(limit.y);
  const upper = band.map(({ x, high }) => frame.at({ x, y: high }));
  const lower = band.map(({ x, low }) => frame.at({ x, y: low })).reverse();
  const line = { fill: "none", "stroke-linejoin": "round", "stroke-linecap": "round" };
  const hatched = exceeding.map((part) => {
    const top = part.map(frame.at);
    const foot = [top.at(-1), top[0]].flatMap((point) => (point ? [{ x: point.x, y: level }] : []));
    return element("path", { d: `${pathThrough([...top, ...foot])}Z`, fill: `url(#${HATCH_ID})` });
  });
  return [
    element("path", { d: `${pathThrough([...upper, ...lower])}Z`, fill: COLOUR.band, "fill-opacity": 0.75 }),
    ...hatched,
    ...(afterAdjusting === null
      ? []
      : [
          element("path", {
            ...line,
            d: pathThrough(afterAdjusting.points.map(frame.at)),
            stroke: COLOUR.nut,
            "stroke-width": 2.25,
            // Dotted, so that it differs from the profile without colour, too.
            "stroke-dasharray": "1 5",
          }),
        ]),
    element("path", {
      ...line,
      d: pathThrough(median.points.map(frame.at)),
      stroke: COLOUR.ink,
      "stroke-width": 2.5,
    }),
    element("line", {
      x1: plot.x,
      y1: level,
      x2: plot.x + plot.width,
      y2: level,
      stroke: COLOUR.limit,
      "stroke-width": 1.75,
      "stroke-dasharray": "9 5",
    }),
  ].join("");
}

/** Readings as open circles, struck ones as crosses, the tight and the loosest spot as filled circles. */
function readingsAndSpots(picture: ProfilePicture, frame: ProfileFrame): string {
  const circle = (cx: number, cy: number, filled: boolean): string =>
    element("circle", {
      cx,
      cy,
      r: filled ? 5.5 : 3.5,
      fill: filled ? COLOUR.ink : COLOUR.paper,
      stroke: filled ? COLOUR.paper : COLOUR.ink,
      "stroke-width": 1.5,
    });
  return [
    ...struckMarks(picture, frame).map((d) =>
      element("path", { d, stroke: COLOUR.paleInk, "stroke-width": 1.75, fill: "none" }),
    ),
    ...sideBySide(picture.readings.map(frame.at), READING_STEP).map(({ x, y }) => circle(x, y, false)),
    ...picture.spots.map(frame.at).map(({ x, y }) => circle(x, y, true)),
  ].join("");
}

function label({ role, text, box, leaderTo }: PlacedLabel): string {
  const colour = LABEL_COLOUR[role];
  const middle = box.x + box.width / 2;
  const words = textElement(middle, box.y + LABEL_SIZE, text, {
    size: LABEL_SIZE,
    fill: colour,
    anchor: "middle",
    weight: role === "spot" ? 600 : 400,
    rim: COLOUR.paper,
  });
  if (leaderTo === null) return words;
  const end = nearestPoint(leaderTo, box);
  const leader = { x1: leaderTo.x, y1: leaderTo.y, x2: end.x, y2: end.y, stroke: colour, "stroke-width": 1 };
  return element("line", leader) + words;
}

function hatchPattern(): string {
  return element(
    "pattern",
    {
      id: HATCH_ID,
      width: HATCH_STEP,
      height: HATCH_STEP,
      patternUnits: "userSpaceOnUse",
      patternTransform: "rotate(45)",
    },
    element("line", { x1: 0, y1: 0, x2: 0, y2: HATCH_STEP, stroke: COLOUR.limit, "stroke-width": 2.5 }),
  );
}
