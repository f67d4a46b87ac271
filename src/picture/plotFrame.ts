import { type Axis, withRoomFor } from "./axis.ts";
import type { Point } from "./linesAbove.ts";
import type { Box } from "./placeLabels.ts";

/** A plot with its axes, and functions from the reader's unit to pixels. */
export interface PlotFrame {
  readonly plot: Box;
  readonly xAxis: Axis;
  readonly yAxis: Axis;
  x(along: number): number;
  y(amount: number): number;
  at(point: Point): Point;
}

/** Room under a plot for tick labels and the axis label, in pixels. */
export const AXIS_ROOM = 56;

/** The frame of a plot, with as many ticks along it as there is room for. */
export function plotFrame(plot: Box, xAxis: Axis, yAxis: Axis): PlotFrame {
  const x = (along: number): number => plot.x + ((along - xAxis.from) / (xAxis.to - xAxis.from)) * plot.width;
  const y = (amount: number): number =>
    plot.y + plot.height - ((amount - yAxis.from) / (yAxis.to - yAxis.from)) * plot.height;
  return {
    plot,
    xAxis: withRoomFor(xAxis, plot.width),
    yAxis,
    x,
    y,
    at: (point) => ({ x: x(point.x), y: y(point.y) }),
  };
}
