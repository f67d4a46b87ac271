import type { ProfileFrame } from "./profileFrame.ts";
import type { ProfilePicture } from "./profilePicture.ts";
import { pathThrough } from "./svg.ts";

/** Half the width of a cross, and the length of an arrow beside it, in pixels. */
const CROSS = 3.5;
const ARROW = 9;

/**
 * The marks of struck readings, one path each: a cross; outside the plot, a cross at its edge with an arrow towards the
 * reading.
 */
export function struckMarks(
  { struck }: ProfilePicture,
  frame: Pick<ProfileFrame, "plot" | "at">,
): readonly string[] {
  const { plot } = frame;
  const [top, bottom] = [plot.y + CROSS, plot.y + plot.height - CROSS];
  return struck.map(frame.at).map(({ x, y: wanted }) => {
    const y = Math.min(Math.max(wanted, top), bottom);
    const cross =
      pathThrough([
        { x: x - CROSS, y: y - CROSS },
        { x: x + CROSS, y: y + CROSS },
      ]) +
      pathThrough([
        { x: x - CROSS, y: y + CROSS },
        { x: x + CROSS, y: y - CROSS },
      ]);
    if (wanted === y) return cross;
    const [tip, tail] = wanted < y ? [y - CROSS, y - CROSS + ARROW] : [y + CROSS, y + CROSS - ARROW];
    const side = x + 2.5 * CROSS;
    const back = tip + Math.sign(tail - tip) * 4;
    const arrow =
      pathThrough([
        { x: side, y: tail },
        { x: side, y: tip },
      ]) +
      pathThrough([
        { x: side - 3, y: back },
        { x: side, y: tip },
        { x: side + 3, y: back },
      ]);
    return cross + arrow;
  });
}
