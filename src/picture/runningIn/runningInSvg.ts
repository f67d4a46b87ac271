import type { Point } from "../linesAbove.ts";
import { LIGHT_PALETTE as COLOUR } from "../palette.ts";
import type { Box } from "../placeLabels.ts";
import { AXIS_ROOM, type PlotFrame, plotFrame } from "../plotFrame.ts";
import {
  bandPath,
  LIMIT_LINE,
  type LineLabel,
  labelAlong,
  levelLine,
  linePath,
  placedLabels,
} from "../plotParts.ts";
import { profileAxes } from "../profileAxes.ts";
import { alongLevel, alongLine } from "../profileLabels.ts";
import { MARGINS, type Setting, SIDES } from "../setting.ts";
import { element, pathThrough } from "../svg.ts";
import { svgDocument } from "../svgDocument.ts";
import type { ReachedMark, RunningInPicture, SurveyMark } from "./runningInPicture.ts";

const HEIGHT: Readonly<Record<Setting, number>> = { sheet: 300, wide: 300, narrow: 230 };
/** Times closer than this are equal, in days or hours. */
const SAME_TIME = 1e-6;
const CAP = 4;
const RADIUS = 4;
const DIAMOND = 7;

/** The picture of running in as a self-contained SVG document, described for screen readers. */
export function runningInSvg(picture: RunningInPicture, setting: Setting = "sheet"): string {
  const { width, top } = MARGINS[setting];
  const plot: Box = {
    x: SIDES.left,
    y: top,
    width: width - SIDES.left - SIDES.right,
    height: HEIGHT[setting],
  };
  const frame = plotFrame(plot, picture.xAxis, picture.yAxis);
  const { trend, limit, surveys, reached } = picture;
  return svgDocument(
    picture,
    { width, height: plot.y + plot.height + AXIS_ROOM, isTitled: setting === "sheet" },
    profileAxes(frame, frame),
    bandPath(trend, frame, COLOUR.band),
    lookAgainLine(picture, frame),
    ...trendLines(picture, frame),
    ...(limit === null ? [] : [levelLine(limit.y, frame, LIMIT_LINE)]),
    ...(limit === null || reached === null ? [] : reachedMark(reached, limit.y, frame)),
    ...surveys.map((each) => surveyMark(each, frame)),
    ...labels(picture, frame),
  );
}

/** Solid up to the last survey, dashed where it is extrapolated. */
function trendLines(
  { trend: { points }, lastSurveyAt }: RunningInPicture,
  frame: PlotFrame,
): readonly string[] {
  const last = points.findIndex(({ x }) => x >= lastSurveyAt - SAME_TIME);
  const [observed, extrapolated] = [points.slice(0, last + 1), points.slice(last)];
  const look = { stroke: COLOUR.ink, "stroke-width": 2.5 };
  return [
    linePath(observed, frame, look),
    linePath(extrapolated, frame, { ...look, "stroke-dasharray": "7 6" }),
  ];
}

function surveyMark({ x, y, low, high }: SurveyMark, frame: PlotFrame): string {
  const [across, from, to] = [frame.x(x), frame.y(low), frame.y(high)];
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    element("line", { x1, y1, x2, y2, stroke: COLOUR.ink, "stroke-width": 1.25 });
  return [
    line(across, from, across, to),
    line(across - CAP, from, across + CAP, from),
    line(across - CAP, to, across + CAP, to),
    element("circle", {
      cx: across,
      cy: frame.y(y),
      r: RADIUS,
      fill: COLOUR.paper,
      stroke: COLOUR.ink,
      "stroke-width": 2,
    }),
  ].join("");
}

/** Interval and median of the time at which the limit is reached, on the line of the limit. */
function reachedMark(
  { from, likeliest, to }: ReachedMark,
  level: number,
  frame: PlotFrame,
): readonly string[] {
  const { plot, y, x } = frame;
  const height = y(level);
  const right = to === null ? plot.x + plot.width : x(to);
  const bar = element("line", {
    x1: x(from),
    y1: height,
    x2: right,
    y2: height,
    stroke: COLOUR.limit,
    "stroke-width": 5,
    "stroke-opacity": 0.45,
  });
  return likeliest === null ? [bar] : [bar, diamond({ x: x(likeliest), y: height })];
}

function diamond({ x, y }: Point): string {
  const corners = [
    { x, y: y - DIAMOND },
    { x: x + DIAMOND, y },
    { x, y: y + DIAMOND },
    { x: x - DIAMOND, y },
  ];
  return element("path", { d: `${pathThrough(corners)}Z`, fill: COLOUR.limit });
}

function lookAgainLine({ lookAgain }: RunningInPicture, { plot, x }: PlotFrame): string {
  const across = x(lookAgain.x);
  return element("line", {
    x1: across,
    y1: plot.y,
    x2: across,
    y2: plot.y + plot.height,
    stroke: COLOUR.nut,
    "stroke-width": 1.5,
    "stroke-dasharray": "2 4",
  });
}

function labels(picture: RunningInPicture, frame: PlotFrame): readonly string[] {
  const { trend, limit, lookAgain, surveys } = picture;
  const { plot } = frame;
  const vertical = [plot.y, plot.y + plot.height].map((y) => ({ x: frame.x(lookAgain.x), y }));
  const level = limit === null ? [] : [plot.x, plot.x + plot.width].map((x) => ({ x, y: frame.y(limit.y) }));
  const lineLabels: readonly LineLabel[] = [
    ...(limit === null
      ? []
      : [{ text: limit.label, fill: COLOUR.limit, candidatesFor: alongLevel(frame.y(limit.y), plot) }]),
    { text: lookAgain.label, fill: COLOUR.nut, candidatesFor: besideVertical(vertical, plot) },
    labelAlong(trend, frame, COLOUR.ink),
  ];
  const marks = surveys.map(frame.at);
  return placedLabels(lineLabels, [trend.points.map(frame.at), level, vertical, marks], frame);
}

/** Label positions on either side of a vertical line. */
function besideVertical([top, bottom]: readonly Point[], plot: Box) {
  const line = Array.from({ length: 9 }, (_, index) => ({
    x: top?.x ?? plot.x,
    y: (top?.y ?? 0) + (((bottom?.y ?? 0) - (top?.y ?? 0)) * (9 - index)) / 10,
  }));
  return (width: number) =>
    [-1, 1].flatMap((side) =>
      alongLine(
        line.map(({ x, y }) => ({ x: x + side * (width / 2 + 8), y })),
        plot,
      )(width),
    );
}
