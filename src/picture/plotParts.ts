import type { Point } from "./linesAbove.ts";
import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { type LabelRequest, placeLabels } from "./placeLabels.ts";
import type { PlotFrame } from "./plotFrame.ts";
import { LABEL_SIZE } from "./profileFrame.ts";
import { alongLine, LINE_HEIGHT, LINE_SAMPLE, sampled, square, textWidth } from "./profileLabels.ts";
import type { BandPoint, LabelledLine } from "./profilePicture.ts";
import { type Attributes, element, pathThrough, textElement } from "./svg.ts";

/** A labelled line with its band. */
export interface BandedLine extends LabelledLine {
  /** The pointwise 95 % band about the line. */
  readonly band: readonly BandPoint[];
}

export const LIMIT_LINE: Attributes = {
  stroke: COLOUR.limit,
  "stroke-width": 1.75,
  "stroke-dasharray": "9 5",
};

/** The band about a line. */
export function bandPath({ band }: Pick<BandedLine, "band">, frame: PlotFrame, fill: string): string {
  const upper = band.map(({ x, high }) => frame.at({ x, y: high }));
  const lower = band.map(({ x, low }) => frame.at({ x, y: low })).reverse();
  return element("path", { d: `${pathThrough([...upper, ...lower])}Z`, fill, "fill-opacity": 0.7 });
}

/** A line through points in the reader's unit. */
export function linePath(points: readonly Point[], frame: PlotFrame, look: Attributes): string {
  return element("path", {
    d: pathThrough(points.map(frame.at)),
    fill: "none",
    "stroke-linejoin": "round",
    ...look,
  });
}

/** A horizontal line across the plot. */
export function levelLine(amount: number, { plot, y }: PlotFrame, look: Attributes): string {
  return element("line", { x1: plot.x, y1: y(amount), x2: plot.x + plot.width, y2: y(amount), ...look });
}

/** A label with the positions it may take, given its width in pixels. */
export interface LineLabel {
  readonly text: string;
  readonly fill: string;
  readonly candidatesFor: (width: number) => LabelRequest["candidates"];
}

/** The label of a line, with positions beside the line. */
export function labelAlong({ label, points }: LabelledLine, frame: PlotFrame, fill: string): LineLabel {
  return { text: label, fill, candidatesFor: alongLine(points.map(frame.at), frame.plot) };
}

/**
 * Draws the labels where they cover least of the lines; one without room is left out.
 *
 * @param lines in pixels
 */
export function placedLabels(
  labels: readonly LineLabel[],
  lines: readonly (readonly Point[])[],
  { plot }: PlotFrame,
): readonly string[] {
  const requests = labels.map(({ text, candidatesFor }): LabelRequest => {
    const width = textWidth(text);
    return { width, height: LINE_HEIGHT, candidates: candidatesFor(width) };
  });
  const obstacles = lines.flatMap((each) => sampled(each).map((point) => square(point, LINE_SAMPLE)));
  return placeLabels(requests, obstacles, plot).flatMap((box, i) => {
    const label = labels[i];
    if (box === null || label === undefined) return [];
    const style = { size: LABEL_SIZE, fill: label.fill, anchor: "middle", rim: COLOUR.paper } as const;
    return [textElement(box.x + box.width / 2, box.y + LABEL_SIZE, label.text, style)];
  });
}
