import type { Interval } from "../analysis/decide/settings.ts";
import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { LABEL_SIZE, type ProfileFrame, TICK_SIZE } from "./profileFrame.ts";
import { textWidth } from "./profileLabels.ts";
import type { ProfilePicture } from "./profilePicture.ts";
import { element, pathThrough, textElement } from "./svg.ts";

const TICK_LENGTH = 5;
const ARROW = 7;
/** Height of the dimension line of the working range above the plot, in pixels. */
const DIMENSION_HEIGHT = 14;

/** Grid, ticks and the labels of both axes. */
export function profileAxes(
  { xAxis, yAxis }: Pick<ProfilePicture, "xAxis" | "yAxis">,
  frame: Pick<ProfileFrame, "plot" | "x" | "y">,
): string {
  const { plot } = frame;
  const bottom = plot.y + plot.height;
  const right = plot.x + plot.width;
  const tickStyle = { size: TICK_SIZE, fill: COLOUR.paleInk };
  const labelStyle = { size: LABEL_SIZE, fill: COLOUR.paleInk };
  return element(
    "g",
    { "font-variant-numeric": "tabular-nums" },
    ...yAxis.ticks.flatMap(({ at, label }) => {
      const y = frame.y(at);
      return [
        element("line", { x1: plot.x, y1: y, x2: right, y2: y, stroke: COLOUR.grid }),
        textElement(plot.x - 10, y + TICK_SIZE * 0.35, label, { ...tickStyle, anchor: "end" }),
      ];
    }),
    ...xAxis.ticks.flatMap(({ at, label }) => {
      const x = frame.x(at);
      return [
        element("line", { x1: x, y1: bottom, x2: x, y2: bottom + TICK_LENGTH, stroke: COLOUR.paleInk }),
        textElement(x, bottom + TICK_LENGTH + TICK_SIZE + 2, label, { ...tickStyle, anchor: "middle" }),
      ];
    }),
    element("line", { x1: plot.x, y1: bottom, x2: right, y2: bottom, stroke: COLOUR.paleInk }),
    textElement(24, plot.y - 36, yAxis.label, labelStyle),
    textElement(right, bottom + 42, xAxis.label, { ...labelStyle, anchor: "end" }),
  );
}

/** The working range as a dimension over the plot; the travel outside it is grey. */
export function workingRangeMarks({ workingRange }: ProfilePicture, frame: ProfileFrame): string {
  if (workingRange === null) return "";
  const { plot } = frame;
  const [from, to] = [frame.x(workingRange.from), frame.x(workingRange.to)];
  const right = plot.x + plot.width;
  const outside = (x: number, width: number): string =>
    width <= 0 ? "" : element("rect", { ...plot, x, width, fill: COLOUR.outside });
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    element("line", { x1, y1, x2, y2, stroke: COLOUR.paleInk, "stroke-width": 0.75 });
  const level = plot.y - DIMENSION_HEIGHT;
  return element(
    "g",
    {},
    outside(plot.x, from - plot.x),
    outside(to, right - to),
    line(from, level - ARROW, from, plot.y + plot.height),
    line(to, level - ARROW, to, plot.y + plot.height),
    line(from, level, to, level),
    arrow(from, level, 1),
    arrow(to, level, -1),
    dimensionText(workingRange.label, { from, to }, level, right),
  );
}

function arrow(tip: number, level: number, inward: 1 | -1): string {
  const back = tip + inward * ARROW;
  const corners = [
    { x: back, y: level - ARROW / 2 },
    { x: tip, y: level },
    { x: back, y: level + ARROW / 2 },
  ];
  return element("path", { d: `${pathThrough(corners)}Z`, fill: COLOUR.paleInk });
}

/** The text in the dimension line if there is room, else beside it. */
function dimensionText(words: string, { from, to }: Interval, level: number, right: number): string {
  const style = { size: LABEL_SIZE, fill: COLOUR.paleInk, rim: COLOUR.paper };
  const baseline = level + LABEL_SIZE * 0.35;
  const width = textWidth(words);
  if (to - from > width + 4 * ARROW) {
    return textElement((from + to) / 2, baseline, words, { ...style, anchor: "middle" });
  }
  return right - to > width + ARROW
    ? textElement(to + ARROW, baseline, words, style)
    : textElement(from - ARROW, baseline, words, { ...style, anchor: "end" });
}
