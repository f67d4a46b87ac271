import type { Point } from "../linesAbove.ts";
import { LIGHT_PALETTE as COLOUR } from "../palette.ts";
import { type LabelRequest, placeLabels } from "../placeLabels.ts";
import { profileAxes } from "../profileAxes.ts";
import { LABEL_SIZE } from "../profileFrame.ts";
import {
  alongLevel,
  alongLine,
  LINE_HEIGHT,
  LINE_SAMPLE,
  sampled,
  square,
  textWidth,
} from "../profileLabels.ts";
import { type Attributes, element, pathThrough, textElement } from "../svg.ts";
import { svgDocument } from "../svgDocument.ts";
import { comparisonFrame, type PlotFrame } from "./comparisonFrame.ts";
import type { BandedLine, ComparisonPicture, SurveyLine } from "./comparisonPicture.ts";

/** The earlier profile is dashed and grey, the later one drawn through: colour alone tells nothing. */
const BEFORE: Attributes = { stroke: COLOUR.screw, "stroke-width": 2, "stroke-dasharray": "3 4" };
const AFTER: Attributes = { stroke: COLOUR.ink, "stroke-width": 2.5 };

/** The picture of a comparison as a self-contained SVG document, described for screen readers. */
export function comparisonSvg(picture: ComparisonPicture): string {
  const { width, height, profiles, change } = comparisonFrame(picture);
  const { xAxis, yAxis, changeAxis, before, after, limit } = picture;
  return svgDocument(
    picture,
    { width, height },
    outsideWorkingRange(picture, profiles),
    profileAxes({ xAxis, yAxis }, profiles),
    band(before, profiles, COLOUR.screwBody),
    band(after, profiles, COLOUR.band),
    ...readings(before, profiles, COLOUR.screw),
    ...readings(after, profiles, COLOUR.ink),
    line(before, profiles, BEFORE),
    line(after, profiles, AFTER),
    level(limit.y, profiles, { stroke: COLOUR.limit, "stroke-width": 1.75, "stroke-dasharray": "9 5" }),
    ...labels(picture, profiles),
    profileAxes({ xAxis, yAxis: changeAxis }, change),
    band(picture.change, change, COLOUR.band),
    level(0, change, { stroke: COLOUR.paleInk, "stroke-width": 1 }),
    line(picture.change, change, AFTER),
    ...placed(
      [wishAlong(picture.change, change, COLOUR.ink)],
      [picture.change.points.map(change.at)],
      change,
    ),
  );
}

function band({ band }: BandedLine, frame: PlotFrame, fill: string): string {
  const upper = band.map(({ x, high }) => frame.at({ x, y: high }));
  const lower = band.map(({ x, low }) => frame.at({ x, y: low })).reverse();
  return element("path", { d: `${pathThrough([...upper, ...lower])}Z`, fill, "fill-opacity": 0.7 });
}

function line({ points }: BandedLine, frame: PlotFrame, look: Attributes): string {
  return element("path", {
    d: pathThrough(points.map(frame.at)),
    fill: "none",
    "stroke-linejoin": "round",
    ...look,
  });
}

function level(amount: number, { plot, y }: PlotFrame, look: Attributes): string {
  return element("line", { x1: plot.x, y1: y(amount), x2: plot.x + plot.width, y2: y(amount), ...look });
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

/** A label with the places where it may stand. */
interface Wish {
  readonly text: string;
  readonly fill: string;
  readonly candidatesFor: (width: number) => LabelRequest["candidates"];
}

/** The names of the limit and of both profiles, each beside its line. */
function labels({ before, after, limit }: ComparisonPicture, frame: PlotFrame): readonly string[] {
  const { plot } = frame;
  const limitLine = [plot.x, plot.x + plot.width].map((x) => ({ x, y: frame.y(limit.y) }));
  return placed(
    [
      { text: limit.label, fill: COLOUR.limit, candidatesFor: alongLevel(frame.y(limit.y), plot) },
      wishAlong(after, frame, COLOUR.ink),
      wishAlong(before, frame, COLOUR.screw),
    ],
    [before.points.map(frame.at), after.points.map(frame.at), limitLine],
    frame,
  );
}

function wishAlong({ label, points }: BandedLine, frame: PlotFrame, fill: string): Wish {
  return { text: label, fill, candidatesFor: alongLine(points.map(frame.at), frame.plot) };
}

/** The labels where they cover least of the lines. */
function placed(
  wishes: readonly Wish[],
  lines: readonly (readonly Point[])[],
  { plot }: PlotFrame,
): readonly string[] {
  const requests = wishes.map(({ text, candidatesFor }): LabelRequest => {
    const width = textWidth(text);
    return { width, height: LINE_HEIGHT, candidates: candidatesFor(width) };
  });
  const obstacles = lines.flatMap((each) => sampled(each).map((point) => square(point, LINE_SAMPLE)));
  return placeLabels(requests, obstacles, plot).flatMap((box, i) => {
    const wish = wishes[i];
    if (box === null || wish === undefined) return [];
    const style = { size: LABEL_SIZE, fill: wish.fill, anchor: "middle", rim: COLOUR.paper } as const;
    return [textElement(box.x + box.width / 2, box.y + LABEL_SIZE, wish.text, style)];
  });
}
