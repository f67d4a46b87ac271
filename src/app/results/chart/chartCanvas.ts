import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { ProfilePicture } from "../../../picture/profilePicture.ts";
import { afterPaint } from "../../ui/afterPaint.ts";
import { NearViewport } from "../../ui/nearViewport.ts";
import { CAN_DRAW_IN_WORKER, type ChartOn, chartInWorker, chartOnPage } from "./chartOn.ts";
import { look, watchLook } from "./look.ts";
import type { Places } from "./places.ts";
import type { Shown } from "./shown.ts";

/** The canvas of a chart: has the picture drawn on it as it changes, in the size and the colours of the page. */
export class ChartCanvas implements ReactiveController {
  /** Where things came to be on the drawing; null until there is one. */
  places: Places | null = null;
  /** A canvas that was drawn on belongs to who drew on it: with another key another one is to be put there. */
  key = 0;

  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #picture: () => ProfilePicture | null;
  readonly #screen: NearViewport;
  readonly #roomWatch = new ResizeObserver(([canvas]) => this.#measure(canvas));
  #unwatch: (() => void) | null = null;
  #canvas: HTMLCanvasElement | null = null;
  #drawn: ChartOn | null = null;
  #isAside = CAN_DRAW_IN_WORKER;
  /** The room that the drawing has; null until it is laid out. */
  #room: Pick<Shown, "width" | "height" | "fonts"> | null = null;
  /** Whether what is drawn is no more what is to be shown. */
  #isStale = false;

  /** @param picture tells what is to be drawn, as far as it is shown; null where there is nothing */
  constructor(host: ReactiveControllerHost & HTMLElement, picture: () => ProfilePicture | null) {
    this.#host = host;
    this.#picture = picture;
    this.#screen = new NearViewport(host, () => this.#isStale && this.draw());
    host.addController(this);
  }

  hostConnected(): void {
    this.#unwatch = watchLook(() => this.draw());
  }

  hostDisconnected(): void {
    this.#unwatch?.();
    this.#renew();
  }

  hostUpdated(): void {
    if (this.#there !== this.#canvas) this.draw();
  }

  /** Draws what is to be shown now, on the canvas that is there now. */
  draw(): void {
    const canvas = this.#there;
    const picture = this.#picture();
    if (picture === null || canvas === null || !this.#host.isConnected) return;
    if (this.#canvas !== canvas) this.#prepare(canvas);
    // Out of sight it need not follow what is typed.
    this.#isStale = !this.#screen.isNear && this.places !== null;
    if (this.#isStale || this.#room === null || this.#room.width === 0) return;
    this.#drawn?.show({ ...this.#room, picture, look: look(), ratio: devicePixelRatio });
  }

  get #there(): HTMLCanvasElement | null {
    return this.#host.shadowRoot?.querySelector("canvas") ?? null;
  }

  /** Measured when it is laid out anyway: to ask at another time would have the whole page laid out once more. */
  #measure(laidOut: ResizeObserverEntry | undefined): void {
    if (laidOut === undefined) return;
    const { width, height } = laidOut.contentRect;
    const { fontFamily } = getComputedStyle(laidOut.target);
    this.#room = { width: Math.floor(width), height: Math.floor(height), fonts: fontFamily };
    this.draw();
  }

  /** What stands in words is there first: to hand a canvas over takes its time. */
  #prepare(canvas: HTMLCanvasElement): void {
    this.#leave();
    this.#canvas = canvas;
    this.#roomWatch.observe(canvas);
    afterPaint(() => this.#begin(canvas));
  }

  #begin(canvas: HTMLCanvasElement): void {
    if (this.#canvas !== canvas) return;
    const tell = (places: Places) => {
      const isElsewhere = JSON.stringify(places) !== JSON.stringify(this.places);
      this.places = places;
      if (isElsewhere) this.#host.requestUpdate();
    };
    const fail = () => {
      this.#isAside = false;
      this.#renew();
    };
    this.#drawn = this.#isAside ? chartInWorker(canvas, tell, fail) : chartOnPage(canvas, tell);
    this.draw();
  }

  #renew(): void {
    this.#leave();
    this.key += 1;
    this.#host.requestUpdate();
  }

  #leave(): void {
    this.#drawn?.destroy();
    this.#drawn = null;
    this.#canvas = null;
    this.#roomWatch.disconnect();
    this.#room = null;
    this.places = null;
  }
}
