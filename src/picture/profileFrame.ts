import type { Point } from "./linesAbove.ts";
import type { Box } from "./placeLabels.ts";
import type { ProfilePicture } from "./profilePicture.ts";

/** The layout of the drawing, in pixels. */
export interface ProfileFrame {
  readonly width: number;
  readonly height: number;
  readonly plot: Box;
  /** The body of the screw drawn under the plot; null where no wear is shown. */
  readonly screw: Box | null;
  x(position: number): number;
  y(lostMotion: number): number;
  at(point: Point): Point;
}

export const TITLE_SIZE = 20;
export const LABEL_SIZE = 14;
export const TICK_SIZE = 13;

const WIDTH = 960;
const PLOT: Box = { x: 64, y: 96, width: 868, height: 320 };
/** Room under the plot for tick labels and the axis label. */
const AXIS_ROOM = 56;
const SCREW = { height: 20, labelRoom: 36 };

/** Lays out the drawing of a profile, with room for the screw under it if it has worn zones. */
export function profileFrame({ xAxis, yAxis, wornZones }: ProfilePicture): ProfileFrame {
  const bottom = PLOT.y + PLOT.height;
  const screw =
    wornZones.length === 0
      ? null
      : { x: PLOT.x, y: bottom + AXIS_ROOM, width: PLOT.width, height: SCREW.height };
  const x = (position: number): number =>
    PLOT.x + ((position - xAxis.from) / (xAxis.to - xAxis.from)) * PLOT.width;
  const y = (lostMotion: number): number =>
    bottom - ((lostMotion - yAxis.from) / (yAxis.to - yAxis.from)) * PLOT.height;
  return {
    width: WIDTH,
    height: bottom + AXIS_ROOM + (screw === null ? 0 : SCREW.height + SCREW.labelRoom),
    plot: PLOT,
    screw,
    x,
    y,
    at: (point) => ({ x: x(point.x), y: y(point.y) }),
  };
}
