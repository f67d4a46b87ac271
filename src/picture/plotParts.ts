import type { Point } from "./linesAbove.ts";
import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { type LabelRequest, placeLabels } from "./placeLabels.ts";
import type { PlotFrame } from "./plotFrame.ts";
import { LABEL_SIZE } from "./profileFrame.ts";
import { alongLine, LINE_HEIGHT, LINE_SAMPLE, sampled, square, textWidth } from "./profileLabels.ts";
import type { BandPoint, LabelledLine } from "./profilePicture.ts";
import { type Attributes, element, pathThrough, textElement } from "./svg.ts";

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

export function linePath(points: readonly Point[], frame: PlotFrame, look: Attributes): string {
  return element("path", {
    d: pathThrough(points.map(frame.at)),
    fill: "none",
    "stroke-linejoin": "round",
    ...look,
  });
}

/** A line at one amount all across the plot. */
export function levelLine(amount: number, { plot, y }: PlotFrame, look: Attributes): string {
  return element("line", { x1: plot.x, y1: y(amount), x2: plot.x + plot.width, y2: y(amount), ...look });
}

/** A label with the places where it may stand. */
export interface Wish {
  readonly text: string;
  readonly fill: string;
  readonly candidatesFor: (width: number) => LabelRequest["candidates"];
}

/** A line's label somewhere beside it. */
export function wishAlong({ label, points }: LabelledLine, frame: PlotFrame, fill: string): Wish {
  return { text: label, fill, candidatesFor: alongLine(points.map(frame.at), frame.plot) };
}

/**
 * The labels where they cover least of the lines.
 *
 * @param lines in pixels
 */
export function placedLabels(
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
