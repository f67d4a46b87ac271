import type { Axis } from "../axis.ts";
import type { Point } from "../linesAbove.ts";
import type { Box } from "../placeLabels.ts";
import type { ComparisonPicture } from "./comparisonPicture.ts";

/** One of the two plots, one above the other with the same positions. */
export interface PlotFrame {
  readonly plot: Box;
  x(position: number): number;
  y(amount: number): number;
  at(point: Point): Point;
}

export interface ComparisonFrame {
  readonly width: number;
  readonly height: number;
  readonly profiles: PlotFrame;
  readonly change: PlotFrame;
}

const WIDTH = 960;
const PROFILES: Box = { x: 64, y: 96, width: 868, height: 270 };
const CHANGE: Box = { x: 64, y: 478, width: 868, height: 170 };
/** Room under a plot for tick labels and the axis label. */
const AXIS_ROOM = 56;

/** Lays out the drawing of a comparison. */
export function comparisonFrame({ xAxis, yAxis, changeAxis }: ComparisonPicture): ComparisonFrame {
  return {
    width: WIDTH,
    height: CHANGE.y + CHANGE.height + AXIS_ROOM,
    profiles: plotFrame(PROFILES, xAxis, yAxis),
    change: plotFrame(CHANGE, xAxis, changeAxis),
  };
}

function plotFrame(plot: Box, xAxis: Axis, yAxis: Axis): PlotFrame {
  const x = (position: number): number =>
    plot.x + ((position - xAxis.from) / (xAxis.to - xAxis.from)) * plot.width;
  const y = (amount: number): number =>
    plot.y + plot.height - ((amount - yAxis.from) / (yAxis.to - yAxis.from)) * plot.height;
  return { plot, x, y, at: (point) => ({ x: x(point.x), y: y(point.y) }) };
}
