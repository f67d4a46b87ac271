import type { ScrewPicture } from "./screwPicture.ts";
import type { ScrewFrame } from "./screwThread.ts";

/** Free space on either side of the screw, in pixels. */
const MARGIN = 24;
const HEIGHT = 64;
/** Upper edge of the screw, with and without labels above it. */
const TOP = { labelled: 84, bare: 28 };
const LEAST_DEPTH = 5;
const MOST_DEPTH = 12;

/**
 * Lays out the drawing of a screw.
 *
 * @param width of the whole drawing, in pixels
 * @param above free space above the drawing, in pixels
 * @param margin free space on either side of the screw, in pixels
 */
export function screwFrame(
  { axis, thread, spots, nut }: ScrewPicture,
  width: number,
  above: number,
  margin = MARGIN,
): ScrewFrame {
  const scale = (width - 2 * margin) / (axis.to - axis.from);
  const crestTop = above + (spots.length > 0 || nut !== null ? TOP.labelled : TOP.bare);
  return {
    left: margin,
    right: width - margin,
    crestTop,
    crestBottom: crestTop + HEIGHT,
    depth: Math.min(MOST_DEPTH, Math.max(LEAST_DEPTH, (thread.pitch * scale) / 2)),
    x: (position) => margin + (position - axis.from) * scale,
  };
}
