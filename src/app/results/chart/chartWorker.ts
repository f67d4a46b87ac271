import { type DrawnProfile, drawProfile } from "./drawProfile.ts";
import type { Shown } from "./shown.ts";

/** The canvas comes once, with the first that is to be drawn on it. */
export interface ToDraw {
  readonly canvas: OffscreenCanvas | null;
  readonly shown: Shown;
}

let drawn: DrawnProfile | null = null;

/** Each message is answered with where things came to be on the drawing. */
self.onmessage = ({ data: { canvas, shown } }: MessageEvent<ToDraw>) => {
  if (canvas !== null) drawn = drawProfile(canvas, shown);
  if (drawn !== null) self.postMessage(drawn.show(shown));
};
