import type { Interval } from "../../../analysis/decide/settings.ts";
import type { Box } from "../../../picture/placeLabels.ts";
import type { Point } from "../../../picture/profilePicture.ts";

/** Where on a drawing what it shows came to be. */
export interface Places {
  /** The part within the axes, in pixels. */
  readonly plot: Box;
  /** From where to where the axes reach, in the reader's unit. */
  readonly x: Interval;
  readonly y: Interval;
}

/** Where a place of the picture is on the drawing, in pixels. */
export function pixelOf({ plot, x, y }: Places, point: Point): Point {
  return {
    x: plot.x + ((point.x - x.from) / (x.to - x.from)) * plot.width,
    y: plot.y + ((y.to - point.y) / (y.to - y.from)) * plot.height,
  };
}

/** The position that is so many pixels across the drawing, in the reader's unit. */
export function positionAt({ plot, x }: Places, across: number): number {
  return x.from + ((across - plot.x) / plot.width) * (x.to - x.from);
}
