import { LIGHT_PALETTE as COLOUR } from "../palette.ts";
import type { Box } from "../placeLabels.ts";
import { AXIS_ROOM, type PlotFrame, plotFrame } from "../plotFrame.ts";
import { bandPath, LIMIT_LINE, labelAlong, levelLine, linePath, placedLabels } from "../plotParts.ts";
import { profileAxes } from "../profileAxes.ts";
import { LABEL_SIZE } from "../profileFrame.ts";
import { alongLevel } from "../profileLabels.ts";
import { MARGINS, type Setting, SIDES } from "../setting.ts";
import { type Attributes, element, textElement } from "../svg.ts";
import { svgDocument } from "../svgDocument.ts";
import type { ComparisonPicture, SurveyLine } from "./comparisonPicture.ts";

/** The earlier profile is dashed and grey, the later one solid: the difference does not rest on colour alone. */
const BEFORE: Attributes = { stroke: COLOUR.screw, "stroke-width": 2, "stroke-dasharray": "3 4" };
const AFTER: Attributes = { stroke: COLOUR.ink, "stroke-width": 2.5 };

/** The picture of a comparison as a self-contained SVG document, described for screen readers. */
export function comparisonSvg(picture: ComparisonPicture, setting: Setting = "sheet"): string {
  const { width, height, profiles, change } = comparisonFrame(picture, setting);
  const { before, after, limit } = picture;
  return svgDocument(
    picture,
    { width, height, isTitled: setting === "sheet" },
    outsideWorkingRange(picture, profiles),
    profileAxes(profiles, profiles),
    bandPath(before, profiles, COLOUR.screwBody),
    bandPath(after, profiles, COLOUR.band),
    ...readings(before, profiles, COLOUR.screw),
    ...readings(after, profiles, COLOUR.ink),
    linePath(before.points, profiles, BEFORE),
    linePath(after.points, profiles, AFTER),
    levelLine(limit.y, profiles, LIMIT_LINE),
    ...labels(picture, profiles),
    profileAxes(change, change),
    bandPath(picture.change, change, COLOUR.band),
    levelLine(0, change, { stroke: COLOUR.paleInk, "stroke-width": 1 }),
    linePath(picture.change.points, change, AFTER),
    ...placedLabels(
      [labelAlong(picture.change, change, COLOUR.ink)],
      [picture.change.points.map(change.at)],
      change,
    ),
  );
}

function outsideWorkingRange({ workingRange }: ComparisonPicture, { plot, x }: PlotFrame): string {
  if (workingRange === null) return "";
  const [from, to] = [x(workingRange.from), x(workingRange.to)];
  const grey = (left: number, width: number): string =>
    width <= 0 ? "" : element("rect", { ...plot, x: left, width, fill: COLOUR.outside });
  const words = textElement((from + to) / 2, plot.y - 8, workingRange.label, {
    size: LABEL_SIZE,
    fill: COLOUR.paleInk,
    anchor: "middle",
  });
  return grey(plot.x, from - plot.x) + grey(to, plot.x + plot.width - to) + words;
}

function readings({ readings }: SurveyLine, frame: PlotFrame, stroke: string): readonly string[] {
  return readings
    .map(frame.at)
    .map(({ x, y }) =>
      element("circle", { cx: x, cy: y, r: 2.5, fill: COLOUR.paper, stroke, "stroke-width": 1 }),
    );
}

/** Labels of the limit and of both profiles, each beside its line. */
function labels({ before, after, limit }: ComparisonPicture, frame: PlotFrame): readonly string[] {
  const { plot } = frame;
  const limitLine = [plot.x, plot.x + plot.width].map((x) => ({ x, y: frame.y(limit.y) }));
  return placedLabels(
    [
      { text: limit.label, fill: COLOUR.limit, candidatesFor: alongLevel(frame.y(limit.y), plot) },
      labelAlong(after, frame, COLOUR.ink),
      labelAlong(before, frame, COLOUR.screw),
    ],
    [before.points.map(frame.at), after.points.map(frame.at), limitLine],
    frame,
  );
}

/** The two plots of a comparison, in pixels. */
interface ComparisonFrame {
  readonly width: number;
  readonly height: number;
  readonly profiles: PlotFrame;
  readonly change: PlotFrame;
}

const PROFILES_HEIGHT: Readonly<Record<Setting, number>> = { sheet: 270, wide: 270, narrow: 230 };
const CHANGE_HEIGHT: Readonly<Record<Setting, number>> = { sheet: 170, wide: 170, narrow: 150 };
/** Between the plots, in pixels: ticks and axis label of the upper one, axis label of the lower one. */
const BETWEEN = 112;

/** The layout: the profiles, and below them the change on the same axis of positions. */
function comparisonFrame({ xAxis, yAxis, changeAxis }: ComparisonPicture, setting: Setting): ComparisonFrame {
  const { width, top } = MARGINS[setting];
  const across = { x: SIDES.left, width: width - SIDES.left - SIDES.right };
  const profiles: Box = { ...across, y: top, height: PROFILES_HEIGHT[setting] };
  const below = profiles.y + profiles.height + BETWEEN;
  const change: Box = { ...across, y: below, height: CHANGE_HEIGHT[setting] };
  return {
    width,
    height: change.y + change.height + AXIS_ROOM,
    profiles: plotFrame(profiles, xAxis, yAxis),
    change: plotFrame(change, xAxis, changeAxis),
  };
}
