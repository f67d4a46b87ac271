import { EDITION } from "../../../records/edition.ts";
import { afterPaint } from "../../ui/afterPaint.ts";
import type { ToDraw } from "./chartWorker.ts";
import ChartWorker from "./chartWorker.ts?worker";
import type { DrawnProfile } from "./drawProfile.ts";
import type { Places } from "./places.ts";
import type { Shown } from "./shown.ts";

/** What draws on a canvas, and tells later where things came to be on it. */
export interface ChartOn {
  show(next: Shown): void;
  /** The canvas cannot be drawn on again. */
  destroy(): void;
}

/** Whether the browser can draw on a canvas in a worker. One file holds the library once, and draws where it is. */
export const CAN_DRAW_IN_WORKER =
  EDITION !== "file" && "transferControlToOffscreen" in HTMLCanvasElement.prototype;

/**
 * Draws in a worker, so that typing never waits for it.
 *
 * @param tell is given where things came to be, after each drawing
 * @param fail is called when the worker cannot be run: then another canvas is to be drawn on here
 */
export function chartInWorker(
  canvas: HTMLCanvasElement,
  tell: (places: Places) => void,
  fail: () => void,
): ChartOn {
  const worker = new ChartWorker();
  worker.onmessage = ({ data }: MessageEvent<Places>) => tell(data);
  worker.onerror = () => {
    worker.terminate();
    fail();
  };
  let handed: OffscreenCanvas | null = canvas.transferControlToOffscreen();
  return {
    show(shown) {
      const message: ToDraw = { canvas: handed, shown };
      worker.postMessage(message, handed === null ? [] : [handed]);
      handed = null;
    },
    destroy: () => worker.terminate(),
  };
}

/** Draws on the page itself, in the frame after the one that is being made: what is told in words comes first. */
export function chartOnPage(canvas: HTMLCanvasElement, tell: (places: Places) => void): ChartOn {
  let drawn: DrawnProfile | null = null;
  let next: Shown | null = null;
  let isAsked = false;
  let isOver = false;

  const draw = async (): Promise<void> => {
    isAsked = false;
    const { drawProfile } = await import("./drawProfile.ts");
    if (next === null || isOver) return;
    drawn ??= drawProfile(canvas, next);
    tell(drawn.show(next));
  };
  return {
    show(shown) {
      next = shown;
      if (!isAsked) afterPaint(() => void draw());
      isAsked = true;
    },
    destroy() {
      isOver = true;
      drawn?.destroy();
    },
  };
}
