import type { ReactiveController, ReactiveControllerHost } from "lit";
import { NearViewport } from "../../ui/nearViewport.ts";
import { afterPaint } from "../../ui/scheduling.ts";
import { chartPalette, watchPalette } from "./chartPalette.ts";
import type { DrawnProfile, Shown } from "./drawProfile.ts";

/** What of the chart follows from the data and the reader, not from the page. */
export type Wanted = Pick<Shown, "picture" | "at">;

/** Draws the chart on the canvas of its host, after the next paint: the verdict in words comes first. */
export class ChartCanvas implements ReactiveController {
  /** The chart; null until it has been drawn. */
  chart: DrawnProfile | null = null;

  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #wanted: () => Wanted | null;
  readonly #viewport: NearViewport;
  #unwatch: (() => void) | null = null;
  #isAsked = false;
  /** Whether the chart is out of date. */
  #isStale = false;

  /** @param wanted what is to be drawn now; null if there is nothing */
  constructor(host: ReactiveControllerHost & HTMLElement, wanted: () => Wanted | null) {
    this.#host = host;
    this.#wanted = wanted;
    this.#viewport = new NearViewport(host, () => this.#isStale && this.draw());
    host.addController(this);
  }

  hostConnected(): void {
    this.#unwatch = watchPalette(() => this.draw());
    this.draw();
  }

  hostDisconnected(): void {
    this.#unwatch?.();
    this.chart?.destroy();
    this.chart = null;
  }

  /** Draws what is wanted by the time it is drawn. Far from the viewport the chart does not follow what is typed. */
  draw(): void {
    this.#isStale = this.chart !== null && !this.#viewport.isNear;
    if (this.#isStale || this.#isAsked) return;
    this.#isAsked = true;
    afterPaint(() => void this.#draw());
  }

  async #draw(): Promise<void> {
    this.#isAsked = false;
    const { drawProfile } = await import("./drawProfile.ts");
    const wanted = this.#wanted();
    const canvas = this.#host.shadowRoot?.querySelector("canvas");
    if (wanted === null || !canvas?.isConnected) return;
    const shown = { ...wanted, palette: chartPalette(), fonts: getComputedStyle(canvas).fontFamily };
    if (this.chart !== null) return this.chart.show(shown);
    this.chart = drawProfile(canvas, shown);
    this.#host.requestUpdate();
  }
}
