/** Lines at 45°, one pixel of the page wide. */
export interface Hatching {
  /** Distance from one line to the next along the x axis, in pixels of the page. */
  readonly step: number;
  readonly colour: string;
  readonly opacity?: number;
  /** What the lines are drawn on; nothing where it shows through. */
  readonly ground?: string;
}

const made = new Map<string, CanvasPattern>();

/** A pattern to fill or stroke with, as fine as the screen is. @throws where the browser has no canvas to draw it on */
export function hatching(wanted: Hatching): CanvasPattern {
  const key = JSON.stringify([wanted, devicePixelRatio]);
  const pattern = made.get(key) ?? drawPattern(wanted);
  made.set(key, pattern);
  return pattern;
}

function drawPattern({ step, colour, opacity = 1, ground }: Hatching): CanvasPattern {
  const tile = document.createElement("canvas");
  tile.width = tile.height = Math.round(step * devicePixelRatio);
  const context = tile.getContext("2d");
  if (context === null) throw new Error("There is no canvas to draw a pattern on.");
  const scale = tile.width / step;
  context.scale(scale, scale);
  if (ground !== undefined) {
    context.fillStyle = ground;
    context.fillRect(0, 0, step, step);
  }
  context.strokeStyle = colour;
  context.globalAlpha = opacity;
  // With the lines next to it, whose edges reach into the tile's corners.
  for (const shift of [-step, 0, step]) {
    context.moveTo(shift - step, 2 * step);
    context.lineTo(shift + 2 * step, -step);
  }
  context.stroke();
  const pattern = context.createPattern(tile, "repeat");
  if (pattern === null) throw new Error("A pattern has at least one pixel.");
  pattern.setTransform(new DOMMatrix().scale(1 / scale));
  return pattern;
}
